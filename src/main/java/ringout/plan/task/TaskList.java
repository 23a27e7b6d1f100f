package ringout.plan.task;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringout.check.form.Situation;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.order.Before;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.Covers;
import ringout.graph.order.Item;
import ringout.graph.order.Items;
import ringout.graph.order.LeadEnd;
import ringout.graph.order.PlanStep;
import ringout.graph.order.Precedence;
import ringout.graph.order.StepKind;
import ringout.model.Plug;
import ringout.plan.order.Side;

/** Tasks and links under construction, and where things are. */
final class TaskList {
    /** Asking the author of the procedure. Judgement. */
    static final double ASK_MINUTES = 15;

    /** Doing a test once more. Judgement. */
    static final double AGAIN_MINUTES = 5;

    static final double NEVER = Double.POSITIVE_INFINITY;

    /** Where units are set and addressed before they are fitted. */
    static final String BENCH = "bench";

    final Situation at;
    final Circuit circuit;
    final Wiring wiring;
    final BuildPlan procedure;
    final Precedence order;
    final Covers covers;
    final Items items;
    final List<Task> tasks = new ArrayList<>();
    final List<Before> links = new ArrayList<>();
    private final Set<Long> linked = new HashSet<>();

    TaskList(Circuit circuit) {
        this.circuit = circuit;
        at = new Situation(circuit);
        wiring = circuit.wiring();
        procedure = BuildPlan.of(circuit);
        order = Precedence.of(circuit);
        covers = Covers.of(circuit);
        items = Items.of(circuit);
    }

    /** Adds a task no step does. */
    int add(StepKind kind, String what, String zone, Side side) {
        tasks.add(new Task(kind, what, zone, side, "", Task.UNWRITTEN));
        return tasks.size() - 1;
    }

    /** Says that a task comes before another; of two reasons the one that costs more to do without stays. */
    void before(int first, int then, String why, String cut, double minutes) {
        if (first != then && linked.add((long) first << Integer.SIZE | then)) {
            links.add(new Before(first, then, why, cut, minutes));
        }
    }

    /** The same where nothing can be done without it. */
    void before(int first, int then, String why) {
        before(first, then, why, "", NEVER);
    }

    String zone(int unit) {
        return wiring.directory().isJoint(unit)
                ? wiring.directory().joint(unit).zone().or("")
                : wiring.directory().unit(unit).zone().or("");
    }

    /** How the aircraft must lie to reach a plug, where its type tells from which side it is reached. */
    Side side(int unit, int plug) {
        if (wiring.directory().isJoint(unit)) {
            return Side.EITHER;
        }
        Plug record = wiring.directory().type(unit).plugs().get(plug);
        String access = record.access().or("").strip().toLowerCase(java.util.Locale.ROOT);
        return switch (access) {
            case "below", "bottom", "underside" -> Side.BELLY_UP;
            case "above", "top" -> Side.UPRIGHT;
            default -> Side.EITHER;
        };
    }

    /** The unit a step, a test or a record names first; empty when it names nothing aboard. */
    Optional<Integer> unitOf(PlanStep step) {
        for (Item item : step.items()) {
            if (item instanceof Item.OfUnit of) {
                return Optional.of(of.unit());
            }
            if (item instanceof Item.OfPlug of) {
                return Optional.of(of.unit());
            }
            if (item instanceof Item.OfPin of) {
                return Optional.of(of.unit());
            }
            if (item instanceof Item.OfLead of) {
                List<LeadEnd> ends = BuildPlan.ends(wiring, items.rows(of.id()).get(0));
                if (!ends.isEmpty()) {
                    return Optional.of(ends.get(0).unit());
                }
            }
        }
        return Optional.empty();
    }

    /** Whether a step names a plug, its unit, one of its pins, or a lead on it. */
    boolean names(PlanStep step, int unit, int plug) {
        return step.items().stream().anyMatch(item -> names(item, unit, plug));
    }

    private boolean names(Item item, int unit, int plug) {
        if (item instanceof Item.OfUnit of) {
            return of.unit() == unit;
        }
        if (item instanceof Item.OfPlug of) {
            return of.unit() == unit && of.plug() == plug;
        }
        if (item instanceof Item.OfPin of) {
            return of.unit() == unit && of.plug() == plug;
        }
        return item instanceof Item.OfLead of
                && items.rows(of.id()).stream()
                        .flatMap(row -> BuildPlan.ends(wiring, row).stream())
                        .anyMatch(end -> end.unit() == unit && end.plug() == plug);
    }

    /** The task a step does, of a kind; a step that fits three units does three. */
    Optional<Integer> taskOf(PlanStep step, StepKind kind) {
        return order.ofStep(step.index()).stream()
                .filter(task -> tasks.get(task).kind() == kind)
                .findFirst();
    }

    /** What doing something after a lid was closed costs. */
    double reopening(int cover) {
        return covers.minutes(cover).orElse(NEVER);
    }

    /** Links a task to a lid that must not be closed before it. */
    void underLid(int task, String what, int cover) {
        before(
                task,
                order.closes().get(cover),
                covers.name(cover) + " hides " + what,
                "open " + covers.name(cover) + " again",
                reopening(cover));
    }
}
