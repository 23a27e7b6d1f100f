package ringout.graph.index;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/**
 * Shortest distances by length from a set of sources to every vertex, and the paths. Directed edges are followed
 * forwards. O((n + m) log n).
 *
 * <p>Source: E. W. Dijkstra, A note on two problems in connexion with graphs, Numerische Mathematik 1 (1959).
 */
public final class ShortestPaths {
    private final IndexGraph graph;
    private final double[] distance;
    private final int[] parentEdge;

    private ShortestPaths(IndexGraph graph) {
        this.graph = graph;
        this.distance = new double[graph.vertexCount()];
        this.parentEdge = new int[graph.vertexCount()];
        Arrays.fill(distance, Double.POSITIVE_INFINITY);
        Arrays.fill(parentEdge, -1);
    }

    /**
     * {@return the shortest paths from the nearest of the sources}
     *
     * @param length of an edge, in any unit, not negative; infinite means impassable
     * @throws IllegalArgumentException if the length of a visited edge is negative or not a number
     */
    public static ShortestPaths from(IndexGraph graph, IntToDoubleFunction length, int... sources) {
        ShortestPaths paths = new ShortestPaths(graph);
        VertexHeap open = new VertexHeap(graph.vertexCount());
        for (int source : sources) {
            paths.distance[source] = 0;
            open.offer(source, 0);
        }
        while (!open.isEmpty()) {
            paths.relax(open.poll(), length, open);
        }
        return paths;
    }

    private void relax(int v, IntToDoubleFunction length, VertexHeap open) {
        for (int end = graph.endSlot(v), s = graph.firstSlot(v); s < end; s = graph.nextSlot(s, end)) {
            int edge = graph.slotEdge(s);
            double along = distance[v] + EdgeValues.notNegative(length, edge, "length");
            int w = graph.slotVertex(s);
            if (along < distance[w]) {
                distance[w] = along;
                parentEdge[w] = edge;
                open.offer(w, along);
            }
        }
    }

    /** {@return the length of the shortest path to the vertex, positive infinity if there is none} */
    public double distance(int vertex) {
        return distance[vertex];
    }

    /** {@return whether there is a path to the vertex} */
    public boolean reached(int vertex) {
        return distance[vertex] < Double.POSITIVE_INFINITY;
    }

    /**
     * {@return a shortest path from a source to the vertex}
     *
     * @throws IllegalArgumentException if there is none
     */
    public Walk pathTo(int vertex) {
        if (!reached(vertex)) {
            throw new IllegalArgumentException("vertex " + vertex + " was not reached");
        }
        return Walk.upFrom(graph, vertex, u -> parentEdge[u]).reversed();
    }
}
