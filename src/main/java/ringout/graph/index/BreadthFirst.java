package ringout.graph.index;

import java.util.Arrays;
import java.util.BitSet;

/**
 * A breadth-first forest: every reached vertex with the edge it was first reached by, so that the walk back to its root
 * has the fewest edges possible. Directed edges are followed forwards. O(n + m).
 */
public final class BreadthFirst {
    private static final int UNREACHED = -1;

    private final IndexGraph graph;
    /** Two integers a vertex, side by side because they are met together: edge to the parent, then depth. */
    private final int[] links;
    /** Reached vertices, parents before children: the queue of the search, kept. */
    private final int[] order;

    private int reachedCount;

    private BreadthFirst(IndexGraph graph) {
        int n = graph.vertexCount();
        this.graph = graph;
        this.links = new int[2 * n];
        this.order = new int[n];
        Arrays.fill(links, UNREACHED);
    }

    /** {@return the forest that reaches every vertex, each tree rooted at the lowest vertex not reached before} */
    public static BreadthFirst everywhere(IndexGraph graph) {
        BreadthFirst forest = new BreadthFirst(graph);
        for (int v = 0; v < graph.vertexCount(); v++) {
            if (!forest.reached(v)) {
                int head = forest.reachedCount;
                forest.enter(v, -1, 0);
                forest.spread(head);
            }
        }
        return forest;
    }

    /** {@return the forest grown from all given roots at once; a vertex belongs to the root nearest in edges} */
    public static BreadthFirst from(IndexGraph graph, int... roots) {
        BreadthFirst forest = new BreadthFirst(graph);
        for (int root : roots) {
            if (!forest.reached(root)) {
                forest.enter(root, -1, 0);
            }
        }
        forest.spread(0);
        return forest;
    }

    private void enter(int vertex, int edge, int atDepth) {
        links[2 * vertex] = edge;
        links[2 * vertex + 1] = atDepth;
        order[reachedCount++] = vertex;
    }

    private void spread(int first) {
        for (int head = first; head < reachedCount; head++) {
            int v = order[head];
            int below = depth(v) + 1;
            for (int end = graph.endSlot(v), s = graph.firstSlot(v); s < end; s = graph.nextSlot(s, end)) {
                int w = graph.slotVertex(s);
                if (!reached(w)) {
                    enter(w, graph.slotEdge(s), below);
                }
            }
        }
    }

    /** {@return whether the search came to the vertex} */
    public boolean reached(int vertex) {
        return links[2 * vertex + 1] != UNREACHED;
    }

    /** {@return the number of vertices the search came to} */
    public int reachedCount() {
        return reachedCount;
    }

    /** {@return the i-th reached vertex; parents come before their children} */
    public int vertexAt(int i) {
        return order[i];
    }

    /** {@return the edge towards the root, or -1 at a root and at a vertex not reached} */
    public int parentEdge(int vertex) {
        return links[2 * vertex];
    }

    /** {@return the next vertex towards the root, or -1 at a root and at a vertex not reached} */
    public int parent(int vertex) {
        int edge = parentEdge(vertex);
        return edge < 0 ? -1 : graph.otherEnd(edge, vertex);
    }

    /** {@return the number of edges to the root, or -1 if the vertex was not reached} */
    public int depth(int vertex) {
        return links[2 * vertex + 1];
    }

    /** {@return the edges of the forest, as a new set} */
    public BitSet edges() {
        BitSet edges = new BitSet(graph.edgeBound());
        for (int v = 0; v < graph.vertexCount(); v++) {
            if (parentEdge(v) >= 0) {
                edges.set(parentEdge(v));
            }
        }
        return edges;
    }

    /**
     * {@return the walk from a vertex to its root}
     *
     * @throws IllegalArgumentException if the vertex was not reached
     */
    public Walk toRoot(int vertex) {
        if (!reached(vertex)) {
            throw new IllegalArgumentException("vertex " + vertex + " was not reached");
        }
        return Walk.upFrom(graph, vertex, this::parentEdge);
    }
}
