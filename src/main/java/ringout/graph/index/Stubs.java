package ringout.graph.index;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * What hangs off the trunk of a tree. A stub is a largest connected part of the tree without the trunk's vertices,
 * together with the edge that ties it to the trunk; its depth is the distance from the trunk to its farthest vertex.
 * O(size of the tree).
 */
public final class Stubs {
    private static final int ON_TRUNK = -1;

    private final BreadthFirst forest;
    private final double[] distance;
    private final int[] stubOf;
    private final List<Stub> stubs;

    private Stubs(BreadthFirst forest, double[] distance, int[] stubOf, List<Stub> stubs) {
        this.forest = forest;
        this.distance = distance;
        this.stubOf = stubOf;
        this.stubs = stubs;
    }

    /**
     * One stub.
     *
     * @param foot the vertex of the trunk it hangs from
     * @param firstEdge the edge that ties it to the foot
     * @param tip its vertex farthest from the trunk, the lowest number of equally far ones
     * @param depth distance from foot to tip, in the unit of the lengths
     * @param total length of all its edges together, in the same unit
     */
    public record Stub(int foot, int firstEdge, int tip, double depth, double total) {}

    /**
     * {@return the stubs off a trunk, along the trunk and then by number of their first edge}
     *
     * @param trunk a path in the tree, at least one vertex
     * @param length of an edge, in any unit, not negative
     * @throws IllegalArgumentException if the part of the graph the trunk lies in is not a tree
     */
    public static Stubs off(IndexGraph graph, Walk trunk, IntToDoubleFunction length) {
        BreadthFirst forest = BreadthFirst.from(graph, trunk.vertices());
        if (!Trees.isTree(graph, forest)) {
            throw new IllegalArgumentException("the graph around the trunk is not a tree");
        }
        double[] distance = Trees.distances(graph, forest, length);
        int[] stubOf = new int[graph.vertexCount()];
        Arrays.fill(stubOf, ON_TRUNK);
        List<Stub> stubs = new ArrayList<>();
        for (int i = 0; i < forest.reachedCount(); i++) {
            int v = forest.vertexAt(i);
            int edge = forest.parentEdge(v);
            if (edge < 0) {
                continue;
            }
            int parent = forest.parent(v);
            double step = length.applyAsDouble(edge);
            if (stubOf[parent] == ON_TRUNK) {
                stubOf[v] = stubs.size();
                stubs.add(new Stub(parent, edge, v, distance[v], step));
            } else {
                stubOf[v] = stubOf[parent];
                stubs.set(stubOf[v], grown(stubs.get(stubOf[v]), v, distance[v], step));
            }
        }
        return new Stubs(forest, distance, stubOf, List.copyOf(stubs));
    }

    private static Stub grown(Stub stub, int vertex, double distance, double step) {
        boolean farther = distance > stub.depth() || (distance == stub.depth() && vertex < stub.tip());
        return new Stub(
                stub.foot(),
                stub.firstEdge(),
                farther ? vertex : stub.tip(),
                farther ? distance : stub.depth(),
                stub.total() + step);
    }

    /** {@return all stubs} */
    public List<Stub> all() {
        return stubs;
    }

    /** {@return the number of the stub a vertex is in, -1 if it is on the trunk or not connected with it} */
    public int stubOf(int vertex) {
        return stubOf[vertex];
    }

    /** {@return the distance of a vertex from the trunk, 0 on it, positive infinity if not connected with it} */
    public double distance(int vertex) {
        return forest.reached(vertex) ? distance[vertex] : Double.POSITIVE_INFINITY;
    }

    /**
     * {@return the path from the trunk to a vertex}
     *
     * @throws IllegalArgumentException if the vertex is not connected with the trunk
     */
    public Walk pathTo(int vertex) {
        return forest.toRoot(vertex).reversed();
    }
}
