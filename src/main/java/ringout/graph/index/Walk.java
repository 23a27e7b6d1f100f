package ringout.graph.index;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.function.IntUnaryOperator;

/**
 * A walk through a graph: vertices joined by edges, in order. A walk that ends where it starts is a cycle; its first
 * vertex is then named twice, first and last.
 */
public final class Walk {
    private final int[] vertices;
    private final int[] edges;

    private Walk(int[] vertices, int[] edges) {
        this.vertices = vertices;
        this.edges = edges;
    }

    /**
     * {@return the walk that starts at a vertex and takes the given edges one after the other}
     *
     * @throws IllegalArgumentException if an edge does not start where the one before it ends
     */
    public static Walk along(IndexGraph graph, int start, int... edges) {
        int[] vertices = new int[edges.length + 1];
        vertices[0] = start;
        for (int i = 0; i < edges.length; i++) {
            int here = vertices[i];
            if (graph.from(edges[i]) != here && graph.to(edges[i]) != here) {
                throw new IllegalArgumentException("edge " + edges[i] + " does not touch vertex " + here);
            }
            vertices[i + 1] = graph.otherEnd(edges[i], here);
        }
        return new Walk(vertices, edges.clone());
    }

    /** The walk from a vertex along parent edges until there is none (a negative entry). */
    static Walk upFrom(IndexGraph graph, int start, IntUnaryOperator parentEdge) {
        int length = 0;
        for (int v = start; parentEdge.applyAsInt(v) >= 0; v = graph.otherEnd(parentEdge.applyAsInt(v), v)) {
            length++;
        }
        int[] vertices = new int[length + 1];
        int[] edges = new int[length];
        vertices[0] = start;
        for (int i = 0; i < length; i++) {
            edges[i] = parentEdge.applyAsInt(vertices[i]);
            vertices[i + 1] = graph.otherEnd(edges[i], vertices[i]);
        }
        return new Walk(vertices, edges);
    }

    /** {@return the number of edges, one less than the number of vertices} */
    public int edgeCount() {
        return edges.length;
    }

    /** {@return the edge at a position from 0} */
    public int edge(int i) {
        return edges[i];
    }

    /** {@return the vertex before the edge at the same position, or the last vertex} */
    public int vertex(int i) {
        return vertices[i];
    }

    /** {@return the first vertex} */
    public int start() {
        return vertices[0];
    }

    /** {@return the last vertex} */
    public int end() {
        return vertices[edges.length];
    }

    /** {@return whether this is a cycle: at least one edge, and the end is the start} */
    public boolean isCycle() {
        return edges.length > 0 && start() == end();
    }

    /** {@return the edges in order, as a new array} */
    public int[] edges() {
        return edges.clone();
    }

    /** {@return the vertices in order, as a new array one longer than the edges} */
    public int[] vertices() {
        return vertices.clone();
    }

    /** {@return the same walk from its end to its start} */
    public Walk reversed() {
        return new Walk(reverse(vertices), reverse(edges));
    }

    /** {@return the sum of a weight over the edges, such as a length in the unit the weight is given in} */
    public double sum(IntToDoubleFunction weight) {
        double sum = 0;
        for (int edge : edges) {
            sum += weight.applyAsDouble(edge);
        }
        return sum;
    }

    private static int[] reverse(int[] array) {
        int[] reversed = new int[array.length];
        for (int i = 0; i < array.length; i++) {
            reversed[array.length - 1 - i] = array[i];
        }
        return reversed;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Walk walk && Arrays.equals(vertices, walk.vertices) && Arrays.equals(edges, walk.edges);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(vertices) + Arrays.hashCode(edges);
    }

    /** {@return vertices and edges in order, as in {@code 4 -[7]- 5 -[9]- 2}} */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder().append(start());
        for (int i = 0; i < edges.length; i++) {
            text.append(" -[").append(edges[i]).append("]- ").append(vertices[i + 1]);
        }
        return text.toString();
    }
}
