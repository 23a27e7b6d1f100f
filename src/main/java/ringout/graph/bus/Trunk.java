package ringout.graph.bus;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.model.Lead;

/**
 * The trunk of a bus segment and what hangs off it. With exactly two terminators in the circuit the trunk is the path
 * between them; otherwise it is the longest path. Stub limits are measured from this path. In a ring the way with the
 * fewest leads is taken.
 */
public final class Trunk {
    /**
     * What hangs off the trunk.
     *
     * @param hub the hub
     * @param attach the hub of the trunk it hangs at
     * @param lengthMm lead from there to here in mm, without the branch inside the unit
     * @param links leads from there to here
     * @param atEnd whether it hangs at an end of the trunk
     */
    public record Branch(int hub, int attach, double lengthMm, List<Integer> links, boolean atEnd) {}

    private final Buses buses;
    private final BusSegment segment;
    private final boolean terminated;
    private final List<Integer> hubs;
    private final List<Integer> links;
    private final double lengthMm;
    private final List<Branch> branches;

    private Trunk(Buses buses, BusSegment segment) {
        this.buses = buses;
        this.segment = segment;
        List<TerminatorAt> on = segment.on();
        this.terminated = on.size() == 2 && on.get(0).hub() != on.get(1).hub();
        int start = terminated ? on.get(0).hub() : farthest(segment.hubs().get(0));
        int end = terminated ? on.get(1).hub() : farthest(start);
        Spread spread = spread(start);
        this.links = Collections.unmodifiableList(spread.linksTo(end));
        this.hubs = Collections.unmodifiableList(spread.hubsTo(end));
        this.lengthMm = spread.lengthMm.getOrDefault(end, 0.0);
        this.branches = Collections.unmodifiableList(findBranches());
    }

    /** The trunk of a segment. */
    public static Trunk of(Buses buses, BusSegment segment) {
        return new Trunk(buses, segment);
    }

    private int farthest(int from) {
        Spread spread = spread(from);
        int best = from;
        for (int hub : segment.hubs()) {
            if (spread.lengthMm.getOrDefault(hub, 0.0) > spread.lengthMm.getOrDefault(best, 0.0)) {
                best = hub;
            }
        }
        return best;
    }

    private Spread spread(int... roots) {
        Spread spread = new Spread();
        Deque<Integer> queue = new ArrayDeque<>();
        for (int root : roots) {
            spread.lengthMm.put(root, 0.0);
            queue.add(root);
        }
        while (!queue.isEmpty()) {
            int hub = queue.remove();
            var graph = buses.graph();
            for (int end = graph.endSlot(hub), s = graph.firstSlot(hub); s < end; s = graph.nextSlot(s, end)) {
                int other = graph.slotVertex(s);
                if (!spread.lengthMm.containsKey(other)) {
                    double length = buses.lengthMm(graph.slotEdge(s)).or(0.0);
                    spread.lengthMm.put(other, spread.lengthMm.getOrDefault(hub, 0.0) + length);
                    spread.parent.put(other, graph.slotEdge(s));
                    queue.add(other);
                }
            }
        }
        return spread;
    }

    /** A breadth-first spread over the leads of the segment. */
    private final class Spread {
        private final Map<Integer, Double> lengthMm = new HashMap<>();
        private final Map<Integer, Integer> parent = new HashMap<>();

        List<Integer> linksTo(int hub) {
            List<Integer> way = new ArrayList<>();
            int at = hub;
            for (Integer link = parent.get(at); link != null; link = parent.get(at)) {
                way.add(link);
                at = buses.links().get(link).other(at);
            }
            Collections.reverse(way);
            return way;
        }

        List<Integer> hubsTo(int hub) {
            List<Integer> way = new ArrayList<>(List.of(hub));
            int at = hub;
            for (Integer link = parent.get(at); link != null; link = parent.get(at)) {
                at = buses.links().get(link).other(at);
                way.add(at);
            }
            Collections.reverse(way);
            return way;
        }

        int root(int hub) {
            return hubsTo(hub).get(0);
        }
    }

    private List<Branch> findBranches() {
        Spread spread = spread(hubs.stream().mapToInt(Integer::intValue).toArray());
        List<Branch> found = new ArrayList<>();
        for (int hub : segment.hubs()) {
            if (!hubs.contains(hub) && spread.lengthMm.containsKey(hub)) {
                int attach = spread.root(hub);
                boolean atEnd = attach == hubs.get(0) || attach == hubs.get(hubs.size() - 1);
                found.add(new Branch(hub, attach, spread.lengthMm.getOrDefault(hub, 0.0), spread.linksTo(hub), atEnd));
            }
        }
        return found;
    }

    /** Whether the trunk is the path between exactly two terminators. */
    public boolean terminated() {
        return terminated;
    }

    /** Hubs of the trunk from one end to the other. */
    public List<Integer> hubs() {
        return hubs;
    }

    /** Links of the trunk in the same order. */
    public List<Integer> links() {
        return links;
    }

    /** Length of the trunk in mm, leads without a length counted as zero. */
    public double lengthMm() {
        return lengthMm;
    }

    /** Everything off the trunk, hubs ascending. */
    public List<Branch> branches() {
        return branches;
    }

    /** Leads of the segment whose length is not given. */
    public List<Lead> withoutLength() {
        return segment.links().stream()
                .filter(link -> !buses.lengthMm(link).isKnown())
                .map(link -> buses.links().get(link).lead())
                .toList();
    }
}
