package ringout.graph.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.Site;
import ringout.graph.Wiring;
import ringout.model.Step;

/** The steps of the procedure in their order, and which step makes which end of which lead. */
public final class BuildPlan {
    private final Wiring wiring;
    private final List<PlanStep> steps = new ArrayList<>();
    private final Map<LeadEnd, List<PlanStep>> made = new HashMap<>();

    private BuildPlan(Circuit circuit) {
        this.wiring = circuit.wiring();
        List<Step> rows = wiring.aircraft().record().steps();
        if (rows.isEmpty()) {
            return;
        }
        Items items = Items.of(circuit);
        for (int i = 0; i < rows.size(); i++) {
            Step row = rows.get(i);
            List<Item> named = row.objects().stream().map(items::find).toList();
            steps.add(new PlanStep(i, row, StepKind.of(row.action()), named));
        }
        for (PlanStep step : steps) {
            if (step.is(StepKind.MAKE)) {
                ends(items, step)
                        .forEach(end -> made.computeIfAbsent(end, key -> new ArrayList<>(1))
                                .add(step));
            }
        }
    }

    /** The plan of an aircraft; made once. */
    public static BuildPlan of(Circuit circuit) {
        return circuit.know(BuildPlan.class, BuildPlan::new);
    }

    /** Whether a procedure is written down at all. */
    public boolean begun() {
        return !steps.isEmpty();
    }

    /** All steps in their order. */
    public List<PlanStep> steps() {
        return steps;
    }

    /** Steps of a kind, in their order. */
    public List<PlanStep> steps(StepKind kind) {
        return steps.stream().filter(step -> step.is(kind)).toList();
    }

    /** Steps of which nobody said what is done. */
    public List<PlanStep> untold() {
        return steps.stream().filter(step -> step.kind().isEmpty()).toList();
    }

    /** A step by its id. */
    public Optional<PlanStep> step(String id) {
        return steps.stream()
                .filter(step -> step.step().id().strip().equalsIgnoreCase(id.strip()))
                .findFirst();
    }

    /** Ends of leads that a step names: both ends of a lead, and all that end on a plug or joint. */
    public static List<LeadEnd> ends(Items items, Wiring wiring, PlanStep step) {
        List<LeadEnd> ends = new ArrayList<>();
        for (Item item : step.items()) {
            if (item instanceof Item.OfLead lead) {
                items.rows(lead.id()).forEach(row -> ends.addAll(ends(wiring, row)));
            } else if (item instanceof Item.OfPlug on) {
                at(items, wiring, on.unit(), on.plug(), ends);
            } else if (item instanceof Item.OfPin on) {
                at(items, wiring, on.unit(), on.plug(), ends);
            } else if (item instanceof Item.OfUnit on && wiring.directory().isJoint(on.unit())) {
                at(items, wiring, on.unit(), 0, ends);
            }
        }
        return ends.stream().distinct().toList();
    }

    private List<LeadEnd> ends(Items items, PlanStep step) {
        return ends(items, wiring, step);
    }

    private static void at(Items items, Wiring wiring, int unit, int plug, List<LeadEnd> ends) {
        for (int row : items.rowsAt(unit, plug)) {
            ends(wiring, row).stream()
                    .filter(end -> end.unit() == unit && end.plug() == plug)
                    .forEach(ends::add);
        }
    }

    /** The ends of a row that point to something aboard. */
    public static List<LeadEnd> ends(Wiring wiring, int row) {
        List<LeadEnd> ends = new ArrayList<>(2);
        add(wiring.from(row), row, true, ends);
        add(wiring.to(row), row, false, ends);
        return ends;
    }

    private static void add(Site site, int row, boolean from, List<LeadEnd> ends) {
        if (site instanceof Site.OnPlug on) {
            ends.add(new LeadEnd(row, from, on.unit(), on.plug()));
        } else if (site instanceof Site.OnPin on) {
            ends.add(new LeadEnd(row, from, on.unit(), on.plug()));
        }
    }

    /** Steps that make an end, in their order. */
    public List<PlanStep> making(LeadEnd end) {
        return made.getOrDefault(end, List.of());
    }

    /** Whether a row is made when a step is done; an end that no step makes counts as made. */
    public boolean made(int row, int step) {
        return ends(wiring, row).stream()
                .map(this::making)
                .allMatch(steps -> steps.isEmpty() || steps.stream().anyMatch(making -> making.index() <= step));
    }

    /** Steps of a kind that name a unit, or one of its plugs or pins, in their order. */
    public List<PlanStep> naming(StepKind kind, int unit) {
        return steps(kind).stream().filter(step -> names(step, unit)).toList();
    }

    /** Whether a step names a unit, or one of its plugs or pins. */
    public static boolean names(PlanStep step, int unit) {
        return step.items().stream().anyMatch(item -> on(item, unit));
    }

    private static boolean on(Item item, int unit) {
        return (item instanceof Item.OfUnit of && of.unit() == unit)
                || (item instanceof Item.OfPlug plug && plug.unit() == unit)
                || (item instanceof Item.OfPin pin && pin.unit() == unit);
    }
}
