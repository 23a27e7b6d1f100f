package ringout.check.topology;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusLink;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.index.IndexGraph;

/**
 * Copper that joins two declared buses.
 *
 * <p>Why it matters: both buses become one, with four terminators, doubled addresses and one fault that takes both.
 *
 * <p>Condition: one piece of bus, joined by whole pairs, has members declared on two buses.
 *
 * <p>Does not see: units that pass messages between buses inside, which is not copper; buses nobody declared.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "T15",
        name = "buses-bridged",
        severity = Severity.S2,
        since = "0.1",
        needs = {"declared bus of each member"})
public final class BusesBridged implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Buses buses = Buses.of(at.circuit());
        TreeSet<String> undeclared = new TreeSet<>();
        boolean declared = buses.hubs().stream()
                .anyMatch(hub -> buses.declared(hub.index()).isPresent());
        for (BusSegment segment : buses.segments()) {
            if (segment.wired() && declared) {
                look(at, out, buses, segment, undeclared);
            }
        }
        if (!undeclared.isEmpty()) {
            out.cannotTell(
                    "declared bus of " + String.join(", ", undeclared),
                    "list each member with its bus",
                    2,
                    undeclared.toArray(new String[0]));
        }
    }

    private static void look(Situation at, Outcomes out, Buses buses, BusSegment segment, Set<String> undeclared) {
        List<BusHub> nodes = buses.nodes(segment);
        Map<String, Set<String>> byBus = new TreeMap<>();
        for (BusHub node : nodes) {
            buses.declared(node.index())
                    .ifPresentOrElse(
                            bus -> byBus.computeIfAbsent(bus, key -> new TreeSet<>())
                                    .add(buses.name(node)),
                            () -> undeclared.add(buses.name(node)));
        }
        if (byBus.size() > 1) {
            out.finding(draft(at, buses, segment, byBus));
        } else if (byBus.size() == 1
                && nodes.stream().allMatch(n -> buses.declared(n.index()).isPresent())) {
            out.looked();
        }
    }

    /** Links whose two ends lie nearest to members of different buses. */
    private static List<BusLink> bridges(Buses buses, BusSegment segment) {
        Map<Integer, String> nearest = new HashMap<>();
        Deque<Integer> open = new ArrayDeque<>();
        for (int hub : segment.hubs()) {
            buses.declared(hub).ifPresent(bus -> {
                nearest.put(hub, bus);
                open.add(hub);
            });
        }
        IndexGraph graph = buses.graph();
        while (!open.isEmpty()) {
            int hub = open.remove();
            for (int end = graph.endSlot(hub), s = graph.firstSlot(hub); s < end; s = graph.nextSlot(s, end)) {
                if (nearest.putIfAbsent(graph.slotVertex(s), nearest.getOrDefault(hub, "")) == null) {
                    open.add(graph.slotVertex(s));
                }
            }
        }
        List<BusLink> found = new ArrayList<>();
        for (int link : segment.links()) {
            BusLink candidate = buses.links().get(link);
            String from = nearest.getOrDefault(candidate.from(), "");
            if (!from.equals(nearest.getOrDefault(candidate.to(), ""))) {
                found.add(candidate);
            }
        }
        return found;
    }

    private static Draft draft(Situation at, Buses buses, BusSegment segment, Map<String, Set<String>> byBus) {
        List<BusLink> bridges = bridges(buses, segment);
        String names = String.join(" and ", byBus.keySet());
        List<String> ids =
                bridges.stream().map(link -> link.lead().id()).distinct().toList();
        List<String> sides = new ArrayList<>();
        byBus.forEach((bus, units) -> sides.add(bus + ": " + String.join(", ", units)));
        Draft draft = Draft.of(Severity.S2, "buses bridged: " + String.join(", ", ids) + " joins the buses " + names)
                .about(byBus.keySet().stream().map(bus -> "bus " + bus).toList())
                .path(trail(at, buses, bridges.get(0)))
                .sum(String.join("; ", sides) + "; all on one pair")
                .why("two buses in one: too many terminators, doubled addresses, one fault takes both")
                .meter("pull " + String.join(", ", ids) + ": H of one bus no longer conducts to H of the other")
                .fix("move " + String.join(", ", ids) + " to a socket of its own bus, or correct the declared bus")
                .cause(Termination.cause(buses, segment))
                .cause(cause(byBus.keySet()))
                .explains("A01", "A04", "A05", "T04", "T06", "T07", "T08", "T10", "T11", "T17");
        bridges.forEach(link -> draft.at(link.lead()));
        return draft;
    }

    private static Trail trail(Situation at, Buses buses, BusLink link) {
        return at.circuit()
                .trail(
                        buses.hubs().get(link.from()).leg(),
                        buses.hubs().get(link.to()).leg())
                .orElse(Trail.NONE);
    }

    /** The token that findings about buses joined by copper share. */
    static String cause(Iterable<String> buses) {
        return "bridge of " + String.join(" and ", buses);
    }
}
