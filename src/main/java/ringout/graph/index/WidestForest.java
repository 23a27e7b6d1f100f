package ringout.graph.index;

import java.util.Arrays;

/**
 * Width of the widest path between any two vertices, after one pass over the edges from wide to narrow: the width at which
 * the two first come together (the bottleneck of a maximum spanning tree). Kept as a union tree by size without
 * compression, so that a question costs O(log n); built in O(n + m log n) for edges offered in that order.
 *
 * <p>Where the path itself is asked for, use {@link WidestPaths}.
 *
 * <p>Source: T. C. Hu, The maximum capacity route problem, Operations Research 9 (1961): a maximum spanning tree holds a
 * widest path between every two vertices.
 */
public final class WidestForest {
    private final int[] parent;
    private final int[] size;
    /** Capacity of the edge that tied a vertex to its parent, and when. */
    private final double[] width;

    private final int[] when;
    private int clock;
    private double narrowest = Double.POSITIVE_INFINITY;

    /** Every vertex alone. */
    public WidestForest(int vertexCount) {
        parent = new int[vertexCount];
        size = new int[vertexCount];
        width = new double[vertexCount];
        when = new int[vertexCount];
        Arrays.fill(size, 1);
        Arrays.fill(when, Integer.MAX_VALUE);
        Arrays.setAll(parent, v -> v);
    }

    /**
     * Offers the next edge; edges come from wide to narrow.
     *
     * @throws IllegalArgumentException if it is wider than one before it, or not a number from 0 up
     */
    public void offer(int a, int b, double capacity) {
        if (!(capacity >= 0 && capacity <= narrowest)) {
            throw new IllegalArgumentException("capacity " + capacity + " after " + narrowest);
        }
        narrowest = capacity;
        int ra = root(a);
        int rb = root(b);
        if (ra == rb) {
            return;
        }
        int high = size[ra] >= size[rb] ? ra : rb;
        int low = ra + rb - high;
        parent[low] = high;
        size[high] += size[low];
        width[low] = capacity;
        when[low] = clock++;
    }

    private int root(int vertex) {
        int v = vertex;
        while (parent[v] != v) {
            v = parent[v];
        }
        return v;
    }

    /** {@return the width of the widest path; infinite from a vertex to itself, 0 where no path leads} */
    public double width(int a, int b) {
        int u = a;
        int v = b;
        double least = Double.POSITIVE_INFINITY;
        while (u != v) {
            boolean climbU = when[u] <= when[v];
            int low = climbU ? u : v;
            if (parent[low] == low) {
                return 0;
            }
            least = width[low];
            u = climbU ? parent[u] : u;
            v = climbU ? v : parent[v];
        }
        return least;
    }

    /** {@return a vertex that stands for all that are joined with the given one, also by edges of width 0} */
    public int island(int vertex) {
        return root(vertex);
    }

    /** {@return whether a path of any width leads from one vertex to the other, also one of width 0} */
    public boolean joined(int a, int b) {
        return root(a) == root(b);
    }
}
