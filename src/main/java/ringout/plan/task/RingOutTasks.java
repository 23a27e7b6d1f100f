package ringout.plan.task;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.Item;
import ringout.graph.order.LeadEnd;
import ringout.graph.order.PlanStep;
import ringout.graph.order.StepKind;
import ringout.plan.order.Side;

/** Tests of leads no lid hides, and of whole buses. */
final class RingOutTasks {
    private final TaskList list;

    private RingOutTasks(TaskList list) {
        this.list = list;
    }

    /** Adds tests of the buses no step tests. {@return the tests of all buses} */
    static List<Integer> buses(TaskList list) {
        RingOutTasks tasks = new RingOutTasks(list);
        Buses buses = Buses.of(list.circuit);
        List<Integer> tests = new ArrayList<>();
        for (BusSegment segment : buses.segments()) {
            if (segment.wired() && !segment.on().isEmpty()) {
                tests.add(tasks.bus(buses, segment));
            }
        }
        return tests;
    }

    private int bus(Buses buses, BusSegment segment) {
        Set<Integer> units =
                buses.nodes(segment).stream().map(BusHub::unit).collect(Collectors.toCollection(LinkedHashSet::new));
        Set<String> leads = new LinkedHashSet<>();
        buses.links().stream()
                .filter(link -> units.contains(buses.hubs().get(link.from()).unit())
                        && buses.segment(buses.hubs().get(link.from())).equals(segment))
                .forEach(link -> link.leads().forEach(lead -> leads.add(lead.id())));
        List<LeadEnd> ends = new ArrayList<>();
        leads.forEach(id -> list.items.rows(id).forEach(row -> ends.addAll(BuildPlan.ends(list.wiring, row))));
        Optional<Integer> written = list.procedure.steps(StepKind.CHECK).stream()
                .filter(step -> step.step().attribute().or("").contains("ohm"))
                .filter(step -> ends.stream().anyMatch(end -> names(step, end)))
                .findFirst()
                .flatMap(step -> list.taskOf(step, StepKind.CHECK));
        String name = buses.name(segment);
        int task = written.orElseGet(() -> list.add(
                StepKind.CHECK,
                "the whole " + name + " in ohms: every plug mated, then the end plug pulled and into its lead",
                ends.isEmpty() ? "" : list.zone(ends.get(ends.size() - 1).unit()),
                Side.EITHER));
        for (LeadEnd end : ends) {
            int make = list.order.makes().getOrDefault(end, task);
            list.before(make, task, "it is a test of " + name, "test " + name + " again later", TaskList.AGAIN_MINUTES);
            for (int cover = 0; cover < list.covers.all().size(); cover++) {
                if (list.covers.hides(cover, end.unit(), end.plug())) {
                    list.underLid(task, list.wiring.plugName(end.unit(), end.plug()), cover);
                }
            }
        }
        return task;
    }

    private boolean names(PlanStep step, LeadEnd end) {
        return step.items().stream()
                .anyMatch(item -> item instanceof Item.OfPlug of && of.unit() == end.unit() && of.plug() == end.plug());
    }

    /**
     * Adds tests of the leads no joint under a lid and no step proves, those of a zone together.
     *
     * @param hidden joints under lids, which are proved there
     * @param late ends that are not to be made before the first power: their lead is tested with that end loose
     * @return the tests
     */
    static List<Integer> open(TaskList list, List<HiddenJoint> hidden, Set<LeadEnd> late) {
        Set<String> proved = new LinkedHashSet<>();
        hidden.forEach(joint -> proved.addAll(joint.leads()));
        for (PlanStep step : list.procedure.steps(StepKind.CHECK)) {
            step.items().stream()
                    .filter(Item.OfLead.class::isInstance)
                    .forEach(item -> proved.add(((Item.OfLead) item).id()));
        }
        Map<String, Map<String, List<Integer>>> byZone = new LinkedHashMap<>();
        list.order.makes().forEach((end, make) -> {
            String id = list.wiring.aircraft().leads().get(end.row()).id();
            if (!proved.contains(id) && !late.contains(end)) {
                String zone =
                        list.zone(BuildPlan.ends(list.wiring, end.row()).get(0).unit());
                byZone.computeIfAbsent(zone, key -> new LinkedHashMap<>())
                        .computeIfAbsent(id, key -> new ArrayList<>())
                        .add(make);
            }
        });
        List<Integer> tests = new ArrayList<>();
        byZone.forEach((zone, leads) -> {
            int task = list.add(
                    StepKind.CHECK,
                    String.join(", ", leads.keySet()) + ": latched, tugged, rung out",
                    zone,
                    Side.EITHER);
            leads.forEach((id, makes) -> makes.forEach(make -> list.before(
                    make, task, "it is a test of " + id, "test " + id + " again later", TaskList.AGAIN_MINUTES)));
            tests.add(task);
        });
        return tests;
    }
}
