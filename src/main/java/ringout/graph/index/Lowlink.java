package ringout.graph.index;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Bridges, cut vertices and the depth-first tree of an undirected graph, by one pass that carries for each vertex the
 * lowest position its subtree can reach without its parent edge. O(n + m), no recursion.
 *
 * <p>What is skipped on the way back is the parent <em>edge</em>, not the parent vertex: of two wires in parallel
 * neither is a bridge. A self-loop is never a bridge and does not make its vertex a cut vertex.
 *
 * <p>Source: J. Hopcroft and R. E. Tarjan, Algorithm 447: efficient algorithms for graph manipulation, Communications of
 * the ACM 16 (1973).
 */
public final class Lowlink {
    private static final int UNSEEN = -1;

    private final IndexGraph graph;
    /** Vertices in the order of their first visit. */
    private final int[] order;

    private final int[] position;
    private final int[] low;
    private final int[] subtreeEnd;
    private final int[] parentEdge;
    private final BitSet bridges = new BitSet();
    private final BitSet cutVertices = new BitSet();
    private int seen;

    private Lowlink(IndexGraph graph) {
        int n = graph.vertexCount();
        this.graph = graph;
        this.order = new int[n];
        this.position = new int[n];
        this.low = new int[n];
        this.subtreeEnd = new int[n];
        this.parentEdge = new int[n];
        Arrays.fill(position, UNSEEN);
    }

    /**
     * {@return the pass over the whole graph} Trees are rooted at the given vertices first, in their order, then at the
     * lowest vertex not yet seen. Rooted at a source, a subtree is what the source can lose.
     *
     * @throws IllegalArgumentException if the graph is directed
     */
    public static Lowlink of(IndexGraph graph, int... firstRoots) {
        graph.requireUndirected();
        Lowlink pass = new Lowlink(graph);
        int[] cursor = new int[graph.vertexCount()];
        for (int root : firstRoots) {
            pass.explore(root, cursor);
        }
        for (int v = 0; v < graph.vertexCount(); v++) {
            pass.explore(v, cursor);
        }
        pass.classify();
        return pass;
    }

    private void explore(int root, int[] cursor) {
        if (position[root] != UNSEEN) {
            return;
        }
        enter(root, -1, cursor);
        int v = root;
        while (v >= 0) {
            int s = cursor[v];
            int end = graph.endSlot(v);
            if (s >= end) {
                v = leave(v);
                continue;
            }
            cursor[v] = graph.nextSlot(s, end);
            int edge = graph.slotEdge(s);
            if (edge == parentEdge[v]) {
                continue;
            }
            int w = graph.slotVertex(s);
            if (position[w] == UNSEEN) {
                enter(w, edge, cursor);
                v = w;
            } else if (position[w] < low[v]) {
                low[v] = position[w];
            }
        }
    }

    private void enter(int vertex, int edge, int[] cursor) {
        order[seen] = vertex;
        position[vertex] = seen;
        low[vertex] = seen++;
        parentEdge[vertex] = edge;
        cursor[vertex] = graph.firstSlot(vertex);
    }

    /** Closes a subtree and returns to the parent, -1 above a root. */
    private int leave(int vertex) {
        subtreeEnd[vertex] = seen;
        if (parentEdge[vertex] < 0) {
            return -1;
        }
        int parent = graph.otherEnd(parentEdge[vertex], vertex);
        if (low[vertex] < low[parent]) {
            low[parent] = low[vertex];
        }
        return parent;
    }

    private void classify() {
        int rootBranches = 0;
        for (int v : order) {
            if (parentEdge[v] < 0) {
                rootBranches = 0;
                continue;
            }
            int parent = parent(v);
            if (low[v] == position[v]) {
                bridges.set(parentEdge[v]);
            }
            // A root is a cut vertex only from its second branch on; elsewhere one closed branch is enough.
            if (low[v] >= position[parent] && (parentEdge[parent] >= 0 || ++rootBranches > 1)) {
                cutVertices.set(parent);
            }
        }
    }

    /** {@return whether the graph falls apart without the edge} */
    public boolean isBridge(int edge) {
        return bridges.get(edge);
    }

    /** {@return whether the graph falls apart without the vertex} */
    public boolean isCutVertex(int vertex) {
        return cutVertices.get(vertex);
    }

    /** {@return all bridges, as a new set of edges} */
    public BitSet bridges() {
        return (BitSet) bridges.clone();
    }

    /** {@return all cut vertices, as a new set of vertices} */
    public BitSet cutVertices() {
        return (BitSet) cutVertices.clone();
    }

    /** {@return the blocks, that is the largest parts without a cut vertex of their own} */
    public Blocks blocks() {
        return Blocks.of(this);
    }

    /** {@return the graph the pass went over} */
    public IndexGraph graph() {
        return graph;
    }

    /** {@return the vertex at a position of the order of first visits; a subtree is a range of positions} */
    public int vertexAt(int index) {
        return order[index];
    }

    /** {@return the position of the vertex in the order of first visits} */
    public int position(int vertex) {
        return position[vertex];
    }

    /** {@return the position after the last vertex of the subtree that hangs from the vertex, itself included} */
    public int subtreeEnd(int vertex) {
        return subtreeEnd[vertex];
    }

    /** {@return the tree edge to the parent, -1 at a root} */
    public int parentEdge(int vertex) {
        return parentEdge[vertex];
    }

    /** {@return the parent in the depth-first tree, -1 at a root} */
    public int parent(int vertex) {
        return parentEdge[vertex] < 0 ? -1 : graph.otherEnd(parentEdge[vertex], vertex);
    }

    /** {@return whether the subtree of a vertex other than a root touches the rest of the graph at its parent only} */
    public boolean hangsFromParentOnly(int vertex) {
        return parentEdge[vertex] >= 0 && low[vertex] >= position[parent(vertex)];
    }
}
