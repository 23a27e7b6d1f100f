package ringout.graph.index;

import java.util.Arrays;

/** Collects vertices and edges one by one and hands out their numbers, for callers that do not hold arrays. */
public final class IndexGraphBuilder {

    private int vertexCount;
    private int edgeCount;
    private int[] from = new int[16];
    private int[] to = new int[16];

    /** Starts with the given number of vertices and no edges. */
    public IndexGraphBuilder(int vertexCount) {
        this.vertexCount = vertexCount;
    }

    /** {@return adds a vertex and returns its number} */
    public int addVertex() {
        return vertexCount++;
    }

    /** {@return adds an edge and returns its number} */
    public int addEdge(int a, int b) {
        if (edgeCount == from.length) {
            from = Arrays.copyOf(from, 2 * edgeCount);
            to = Arrays.copyOf(to, 2 * edgeCount);
        }
        from[edgeCount] = a;
        to[edgeCount] = b;
        return edgeCount++;
    }

    /** {@return the number of vertices so far} */
    public int vertexCount() {
        return vertexCount;
    }

    /** {@return the number of edges so far} */
    public int edgeCount() {
        return edgeCount;
    }

    /** {@return the undirected graph of everything added so far; the builder may go on} */
    public IndexGraph undirected() {
        return IndexGraph.build(false, vertexCount, Arrays.copyOf(from, edgeCount), Arrays.copyOf(to, edgeCount));
    }

    /** {@return the directed graph of everything added so far, each edge from its first to its second end} */
    public IndexGraph directed() {
        return IndexGraph.build(true, vertexCount, Arrays.copyOf(from, edgeCount), Arrays.copyOf(to, edgeCount));
    }
}
