package ringout.plan.task;

import java.util.List;
import java.util.Optional;
import ringout.graph.order.Act;
import ringout.graph.order.Item;
import ringout.graph.order.LeadEnd;
import ringout.graph.order.PlanStep;
import ringout.graph.order.StepKind;
import ringout.plan.order.Side;

/** The acts of the order of building as tasks with their zones: fits, ends of leads, lids, and what the steps do. */
final class Acts {
    private final TaskList list;
    private final String[] zones;
    private final Side[] sides;

    private Acts(TaskList list) {
        this.list = list;
        int count = list.order.acts().size();
        zones = new String[count];
        sides = new Side[count];
        java.util.Arrays.fill(zones, "");
        java.util.Arrays.fill(sides, Side.EITHER);
    }

    /** Adds them all, each under the number it has in the order of building, with what that order says of them. */
    static void addTo(TaskList list) {
        new Acts(list).add();
    }

    private void add() {
        list.order.fits().forEach((unit, act) -> zones[act] = list.zone(unit));
        list.order.makes().forEach(this::end);
        for (int cover = 0; cover < list.order.closes().size(); cover++) {
            lid(cover);
        }
        for (PlanStep step : list.procedure.steps()) {
            step(step);
        }
        for (int act = 0; act < zones.length; act++) {
            list.tasks.add(task(list.order.acts().get(act), act));
        }
        list.order
                .edges()
                .forEach(edge -> list.before(edge.first(), edge.then(), edge.why(), edge.cut(), edge.minutes()));
    }

    private void end(LeadEnd end, int act) {
        zones[act] = list.zone(end.unit());
        sides[act] = list.side(end.unit(), end.plug());
    }

    /** A lid is closed where the first thing it hides is, from the side that is reached from. */
    private void lid(int cover) {
        int act = list.order.closes().get(cover);
        int pin = list.covers.pins(cover).nextSetBit(0);
        if (pin >= 0) {
            int unit = list.wiring.unitOf(pin);
            zones[act] = list.zone(unit);
            sides[act] = list.side(unit, list.wiring.plugIndex(pin));
        }
    }

    private void step(PlanStep step) {
        StepKind kind = step.kind().orElse(StepKind.OTHER);
        for (int act : list.order.ofStep(step.index())) {
            boolean own = list.order.acts().get(act).kind() == kind && zones[act].isEmpty();
            if (kind == StepKind.SET) {
                zones[act] = TaskList.BENCH;
            } else if (own && (kind == StepKind.CHECK || kind == StepKind.PHOTO || kind == StepKind.FIT)) {
                zones[act] = list.unitOf(step).map(list::zone).orElse("");
                sides[act] = side(step);
            }
        }
    }

    /** The side of the first plug a step names. */
    private Side side(PlanStep step) {
        for (Item item : step.items()) {
            if (item instanceof Item.OfPlug of) {
                return list.side(of.unit(), of.plug());
            }
        }
        return Side.EITHER;
    }

    private Task task(Act act, int number) {
        Optional<PlanStep> step = act.step() < 0
                ? Optional.empty()
                : Optional.of(list.procedure.steps().get(act.step()));
        String id = step.map(one -> one.step().id()).orElse("");
        String what = step.filter(one -> own(act, number)).map(Acts::what).orElse(act.name());
        return new Task(
                act.kind(), what, zones[number], sides[number], id, act.step() < 0 ? Task.UNWRITTEN : act.step());
    }

    /** Whether an act is what a step says, and not a unit, lead or lid it names. */
    private boolean own(Act act, int number) {
        return act.step() >= 0
                && !list.order.fits().containsValue(number)
                && !list.order.makes().containsValue(number)
                && !list.order.closes().contains(number);
    }

    private static String what(PlanStep step) {
        List<String> objects = step.step().objects();
        String of = String.join(", ", objects);
        String attribute = step.step().attribute().or("");
        String says = step.step().says().known().map(words -> " " + words).orElse("");
        if (attribute.isEmpty()) {
            return of.isEmpty() ? "step " + step.step().id() : of + says;
        }
        return of.isEmpty() ? attribute + says : attribute + says + " (" + of + ")";
    }
}
