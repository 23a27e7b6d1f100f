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
    private static final int NONE = -1;

    private final IndexGraph graph;
    private final int[] position;

    // Indexed by position, not by vertex: neighbours in the search lie side by side in memory.
    private final int[] vertexAt;
    private final int[] parentAt;
    private final int[] parentEdgeAt;
    private final int[] lowAt;
    private final int[] subtreeEndAt;

    private final BitSet bridges = new BitSet();
    private final BitSet cutVertices = new BitSet();
    private int seen;

    private Lowlink(IndexGraph graph) {
        int n = graph.vertexCount();
        this.graph = graph;
        this.position = new int[n];
        this.vertexAt = new int[n];
        this.parentAt = new int[n];
        this.parentEdgeAt = new int[n];
        this.lowAt = new int[n];
        this.subtreeEndAt = new int[n];
        Arrays.fill(position, NONE);
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
        int[] cursorAt = new int[graph.vertexCount()];
        for (int root : firstRoots) {
            pass.explore(root, cursorAt);
        }
        for (int v = 0; v < graph.vertexCount(); v++) {
            pass.explore(v, cursorAt);
        }
        pass.classify();
        return pass;
    }

    private void explore(int root, int[] cursorAt) {
        if (position[root] != NONE) {
            return;
        }
        int at = enter(root, NONE, NONE, cursorAt);
        while (at != NONE) {
            int s = cursorAt[at];
            int end = graph.endSlot(vertexAt[at]);
            if (s >= end) {
                at = leave(at);
                continue;
            }
            cursorAt[at] = graph.nextSlot(s, end);
            int edge = graph.slotEdge(s);
            if (edge == parentEdgeAt[at]) {
                continue;
            }
            int there = position[graph.slotVertex(s)];
            if (there == NONE) {
                at = enter(graph.slotVertex(s), at, edge, cursorAt);
            } else if (there < lowAt[at]) {
                lowAt[at] = there;
            }
        }
    }

    private int enter(int vertex, int parent, int edge, int[] cursorAt) {
        int at = seen++;
        position[vertex] = at;
        vertexAt[at] = vertex;
        parentAt[at] = parent;
        parentEdgeAt[at] = edge;
        lowAt[at] = at;
        cursorAt[at] = graph.firstSlot(vertex);
        return at;
    }

    /** Closes a subtree and returns to its parent, NONE above a root. */
    private int leave(int at) {
        subtreeEndAt[at] = seen;
        int parent = parentAt[at];
        if (parent != NONE && lowAt[at] < lowAt[parent]) {
            lowAt[parent] = lowAt[at];
        }
        return parent;
    }

    private void classify() {
        int rootBranches = 0;
        for (int at = 0; at < vertexAt.length; at++) {
            int parent = parentAt[at];
            if (parent == NONE) {
                rootBranches = 0;
                continue;
            }
            if (lowAt[at] == at) {
                bridges.set(parentEdgeAt[at]);
            }
            // A root is a cut vertex only from its second branch on; elsewhere one closed branch is enough.
            if (lowAt[at] >= parent && (parentAt[parent] != NONE || ++rootBranches > 1)) {
                cutVertices.set(vertexAt[parent]);
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
        return vertexAt[index];
    }

    /** {@return the position of the vertex in the order of first visits} */
    public int position(int vertex) {
        return position[vertex];
    }

    /** {@return the position after the last vertex of the subtree that hangs from the vertex, itself included} */
    public int subtreeEnd(int vertex) {
        return subtreeEndAt[position[vertex]];
    }

    /** {@return the tree edge to the parent, -1 at a root} */
    public int parentEdge(int vertex) {
        return parentEdgeAt[position[vertex]];
    }

    /** {@return the parent in the depth-first tree, -1 at a root} */
    public int parent(int vertex) {
        int parent = parentAt[position[vertex]];
        return parent == NONE ? -1 : vertexAt[parent];
    }

    /** {@return whether the subtree of a vertex other than a root touches the rest of the graph at its parent only} */
    public boolean hangsFromParentOnly(int vertex) {
        int at = position[vertex];
        return parentAt[at] != NONE && lowAt[at] >= parentAt[at];
    }
}
