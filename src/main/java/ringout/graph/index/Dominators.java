package ringout.graph.index;

import java.util.Arrays;

/**
 * The dominators of a directed graph: vertex d dominates vertex v if every path from any root to v goes through d, so
 * that without d nothing reaches v. Roots act together: a vertex fed by two roots independently has no dominator.
 *
 * <p>To ask about edges as well, put a vertex in the middle of each. O(m log n) whatever the shape; the simpler iterative
 * method was not taken because it is quadratic on deep graphs.
 *
 * <p>Source: T. Lengauer and R. E. Tarjan, A fast algorithm for finding dominators in a flowgraph, ACM Transactions on
 * Programming Languages and Systems 1 (1979), the simple version.
 */
public final class Dominators {
    private static final int NONE = -1;

    /** Immediate dominator of each vertex, NONE if there is none or the vertex is not reached. */
    private final int[] immediate;

    /** Place of each reached vertex in the dominator tree, subtrees being ranges; NONE if not reached. */
    private final int[] position;

    private final int[] size;
    private final int[] vertexAt;

    private Dominators(int vertexCount, int[] vertex, int[] dominator) {
        int reached = vertex.length - 1;
        immediate = new int[vertexCount];
        position = new int[vertexCount];
        size = new int[vertexCount];
        vertexAt = new int[reached];
        Arrays.fill(immediate, NONE);
        Arrays.fill(position, NONE);
        int[] sizes = new int[reached + 1];
        for (int i = reached; i > 0; i--) {
            sizes[i]++;
            sizes[dominator[i]] += sizes[i];
        }
        int[] next = new int[reached + 1];
        for (int i = 1; i <= reached; i++) {
            int v = vertex[i];
            int above = dominator[i];
            position[v] = next[above];
            next[above] += sizes[i];
            next[i] = position[v] + 1;
            vertexAt[position[v]] = v;
            size[v] = sizes[i];
            immediate[v] = above == 0 ? NONE : vertex[above];
        }
    }

    /**
     * {@return the dominators of everything the roots reach}
     *
     * @throws IllegalArgumentException if the graph is undirected
     */
    public static Dominators of(IndexGraph graph, int... roots) {
        if (!graph.isDirected()) {
            throw new IllegalArgumentException("dominators are defined for a directed graph");
        }
        DominatorSearch search = new DominatorSearch(graph, roots);
        return new Dominators(graph.vertexCount(), search.vertices(), search.dominators());
    }

    /** {@return whether any root reaches the vertex} */
    public boolean reached(int vertex) {
        return position[vertex] != NONE;
    }

    /** {@return the dominator nearest to the vertex, other than itself, or -1 if it has none} */
    public int immediate(int vertex) {
        return immediate[vertex];
    }

    /** {@return the dominators of the vertex other than itself, the nearest first} */
    public int[] chain(int vertex) {
        int length = 0;
        for (int d = immediate[vertex]; d != NONE; d = immediate[d]) {
            length++;
        }
        int[] chain = new int[length];
        int d = vertex;
        for (int i = 0; i < length; i++) {
            d = immediate[d];
            chain[i] = d;
        }
        return chain;
    }

    /** {@return whether nothing reaches the second vertex without the first; a reached vertex dominates itself} */
    public boolean dominates(int dominator, int vertex) {
        return reached(dominator)
                && position[vertex] >= position[dominator]
                && position[vertex] < position[dominator] + size[dominator];
    }

    /** {@return everything the vertex dominates, itself first, as a new array; empty if it is not reached} */
    public int[] dominatedBy(int vertex) {
        return reached(vertex)
                ? Arrays.copyOfRange(vertexAt, position[vertex], position[vertex] + size[vertex])
                : new int[0];
    }
}
