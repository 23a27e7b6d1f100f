package ringout.graph.bus;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.index.BreadthFirst;
import ringout.graph.index.IndexGraph;
import ringout.graph.index.PathSearch;
import ringout.graph.index.Stubs;
import ringout.graph.index.Trees;
import ringout.graph.index.Walk;
import ringout.model.Datum;
import ringout.model.Lead;

/**
 * The trunk of a bus segment and what hangs off it. With exactly two terminators in the circuit the trunk is the path
 * between them; otherwise it is the longest path. Stub limits are measured from this path. In a ring the ways with the
 * fewest leads are taken. A lead without a length counts as zero and is named by {@link #withoutLength}.
 */
public final class Trunk {
    /**
     * What hangs off the trunk at one place: a lead and everything behind it.
     *
     * @param foot the hub of the trunk it hangs at
     * @param tip the hub farthest from the trunk
     * @param links leads from the foot to the tip
     * @param lengthMm their length together
     * @param totalMm length of all leads of this branch, side branches too
     * @param all all leads of this branch
     * @param hubs all hubs of this branch
     * @param atEnd whether it hangs at an end of the trunk
     */
    public record Branch(
            int foot,
            int tip,
            List<Integer> links,
            double lengthMm,
            double totalMm,
            List<Integer> all,
            List<Integer> hubs,
            boolean atEnd) {}

    /** So little that it only decides between ways of equal length: the one with more leads is the longer one. */
    private static final double TIE_MM = 1e-6;

    private final Buses buses;
    private final BusSegment segment;
    private final Map<Integer, Integer> numbers = new HashMap<>();
    private final IndexGraph tree;
    private final boolean terminated;
    private final Walk longest;
    private final Walk path;
    private final List<Branch> branches;

    Trunk(Buses buses, BusSegment segment) {
        this.buses = buses;
        this.segment = segment;
        for (int hub : segment.hubs()) {
            numbers.put(hub, numbers.size());
        }
        this.tree = tree();
        List<TerminatorAt> on = segment.on();
        this.terminated = on.size() == 2 && on.get(0).hub() != on.get(1).hub();
        this.longest = Trees.longestPath(tree, edge -> length(edge) + TIE_MM, 0);
        this.path = terminated
                ? new PathSearch(tree)
                        .fewestEdges(local(on.get(0).hub()), local(on.get(1).hub()))
                        .orElseThrow()
                : longest;
        this.branches = Collections.unmodifiableList(findBranches());
    }

    /** The longest way through a segment, whatever its terminators: the line a drawing lays it along. */
    public static Trunk longest(Buses buses, BusSegment segment) {
        return new Trunk(
                buses, new BusSegment(segment.index(), segment.name(), segment.hubs(), segment.links(), List.of()));
    }

    /** The segment with its hubs numbered from 0, without the leads that close rings. */
    private IndexGraph tree() {
        int count = segment.links().size();
        int[] from = new int[count];
        int[] to = new int[count];
        for (int i = 0; i < count; i++) {
            BusLink link = buses.links().get(segment.links().get(i));
            from[i] = local(link.from());
            to[i] = local(link.to());
        }
        IndexGraph whole = IndexGraph.undirected(segment.hubs().size(), from, to);
        return segment.rings() == 0
                ? whole
                : whole.onlyEdges(BreadthFirst.from(whole, 0).edges());
    }

    private int local(int hub) {
        Integer found = numbers.get(hub);
        return found == null ? -1 : found;
    }

    private double length(int edge) {
        return Math.max(0, buses.lengthMm(segment.links().get(edge)).or(0.0));
    }

    private List<Integer> links(int[] edges) {
        List<Integer> links = new ArrayList<>(edges.length);
        for (int edge : edges) {
            links.add(segment.links().get(edge));
        }
        return links;
    }

    private List<Branch> findBranches() {
        Stubs stubs = Stubs.off(tree, path, this::length);
        List<List<Integer>> hubs = new ArrayList<>();
        List<List<Integer>> all = new ArrayList<>();
        stubs.all().forEach(stub -> {
            hubs.add(new ArrayList<>());
            all.add(new ArrayList<>());
        });
        for (int v = 0; v < tree.vertexCount(); v++) {
            if (stubs.stubOf(v) >= 0) {
                hubs.get(stubs.stubOf(v)).add(segment.hubs().get(v));
            }
        }
        for (int e = 0; e < segment.links().size(); e++) {
            int stub = Math.max(stubs.stubOf(tree.from(e)), stubs.stubOf(tree.to(e)));
            if (tree.hasEdge(e) && stub >= 0) {
                all.get(stub).add(segment.links().get(e));
            }
        }
        List<Branch> found = new ArrayList<>();
        for (int i = 0; i < hubs.size(); i++) {
            found.add(branch(stubs, stubs.all().get(i), all.get(i), hubs.get(i)));
        }
        return found;
    }

    private Branch branch(Stubs stubs, Stubs.Stub stub, List<Integer> all, List<Integer> hubs) {
        return new Branch(
                segment.hubs().get(stub.foot()),
                segment.hubs().get(stub.tip()),
                List.copyOf(links(stubs.pathTo(stub.tip()).edges())),
                stub.depth(),
                stub.total(),
                List.copyOf(all),
                List.copyOf(hubs),
                stub.foot() == path.start() || stub.foot() == path.end());
    }

    /** Whether the trunk is the path between exactly two terminators. */
    public boolean terminated() {
        return terminated;
    }

    /** The two hubs farthest from each other: where the terminators belong. */
    public List<Integer> farEnds() {
        return List.of(segment.hubs().get(longest.start()), segment.hubs().get(longest.end()));
    }

    /** Whether the segment is one line from end to end, without branches or rings. */
    public boolean line() {
        return segment.rings() == 0 && longest.edgeCount() == segment.links().size();
    }

    /** Hubs of the trunk from one end to the other. */
    public List<Integer> hubs() {
        List<Integer> hubs = new ArrayList<>();
        for (int vertex : path.vertices()) {
            hubs.add(segment.hubs().get(vertex));
        }
        return hubs;
    }

    /** Links of the trunk in the same order. */
    public List<Integer> links() {
        return links(path.edges());
    }

    /** Length of the trunk in mm, leads without a length counted as zero. */
    public double lengthMm() {
        return path.sum(this::length);
    }

    /** Everything off the trunk, along the trunk. */
    public List<Branch> branches() {
        return branches;
    }

    /** Leads of the segment whose length is not given. */
    public List<Lead> withoutLength() {
        return withoutLength(segment.links());
    }

    /** Leads of some links whose length is not given. */
    public List<Lead> withoutLength(List<Integer> links) {
        List<Lead> bare = new ArrayList<>();
        for (int link : links) {
            Datum<Double> length = buses.lengthMm(link);
            if (!length.isKnown()) {
                bare.add(buses.links().get(link).lead());
            }
        }
        return bare;
    }
}
