package ringout.solve.network;

import java.util.Arrays;

/**
 * Which column of the factor waits for which, numbered so that every subtree is a range (postorder).
 *
 * <p>Positions count the order of elimination. The parent of a position is the first later position that its column
 * reaches; roots have parent -1. Source: J. W. H. Liu, The role of elimination trees in sparse factorization, SIAM
 * Journal on Matrix Analysis and Applications 11 (1990), 134-172. Almost linear time.
 */
final class EliminationTree {

    private static final int NONE = -1;

    /** Vertex eliminated at each position. */
    final int[] order;

    /** Position of each vertex. */
    final int[] position;

    /** Parent of each position, always larger, or -1. */
    final int[] parent;

    /** First child of each position, or -1. */
    final int[] firstChild;

    /** Next child of the same parent, or -1; children stand in ascending order. */
    final int[] nextSibling;

    private EliminationTree(int[] order, int[] position, int[] parent) {
        this.order = order;
        this.position = position;
        this.parent = parent;
        int n = order.length;
        firstChild = new int[n];
        nextSibling = new int[n];
        link(parent, firstChild, nextSibling);
    }

    /**
     * The tree of a graph eliminated in a given order, renumbered to a postorder of the same tree (same fill).
     *
     * @param graph the graph
     * @param order its vertices in order of elimination
     */
    static EliminationTree of(Adjacency graph, int[] order) {
        int n = graph.size;
        int[] parent = parents(graph, order, inverse(order));
        int[] post = postorder(parent);
        int[] rank = inverse(post);
        int[] newOrder = new int[n];
        int[] newParent = new int[n];
        for (int k = 0; k < n; k++) {
            int old = post[k];
            newOrder[k] = order[old];
            newParent[k] = parent[old] == NONE ? NONE : rank[parent[old]];
        }
        return new EliminationTree(newOrder, inverse(newOrder), newParent);
    }

    /** {@return the first position of the subtree of a position, which is a range that ends with it} */
    int firstBelow(int position) {
        int at = position;
        while (firstChild[at] >= 0) {
            at = firstChild[at];
        }
        return at;
    }

    /** {@return the number of positions on the longest way from a leaf to its root} */
    int height() {
        int[] depth = new int[parent.length];
        int height = 0;
        for (int k = parent.length - 1; k >= 0; k--) {
            depth[k] = parent[k] == NONE ? 1 : depth[parent[k]] + 1;
            height = Math.max(height, depth[k]);
        }
        return height;
    }

    private static int[] inverse(int[] permutation) {
        int[] inverse = new int[permutation.length];
        for (int k = 0; k < permutation.length; k++) {
            inverse[permutation[k]] = k;
        }
        return inverse;
    }

    private static int[] parents(Adjacency graph, int[] order, int[] position) {
        int n = order.length;
        int[] parent = new int[n];
        int[] ancestor = new int[n];
        Arrays.fill(parent, NONE);
        Arrays.fill(ancestor, NONE);
        for (int k = 0; k < n; k++) {
            int v = order[k];
            for (int p = graph.start[v]; p < graph.start[v + 1]; p++) {
                climb(position[graph.neighbour[p]], k, parent, ancestor);
            }
        }
        return parent;
    }

    /** From an earlier neighbour up to the root of what is known, shortening the way for the next time. */
    private static void climb(int from, int k, int[] parent, int[] ancestor) {
        int r = from;
        while (r < k) {
            int up = ancestor[r];
            ancestor[r] = k;
            if (up == NONE) {
                parent[r] = k;
                return;
            }
            r = up;
        }
    }

    private static void link(int[] parent, int[] first, int[] next) {
        Arrays.fill(first, NONE);
        Arrays.fill(next, NONE);
        for (int k = parent.length - 1; k >= 0; k--) {
            if (parent[k] != NONE) {
                next[k] = first[parent[k]];
                first[parent[k]] = k;
            }
        }
    }

    private static int[] postorder(int[] parent) {
        int n = parent.length;
        int[] first = new int[n];
        int[] next = new int[n];
        link(parent, first, next);
        int[] post = new int[n];
        int count = 0;
        for (int root = 0; root < n; root++) {
            if (parent[root] != NONE) {
                continue;
            }
            int k = leftmostLeaf(root, first);
            while (true) {
                post[count++] = k;
                if (k == root) {
                    break;
                }
                k = next[k] == NONE ? parent[k] : leftmostLeaf(next[k], first);
            }
        }
        return post;
    }

    private static int leftmostLeaf(int from, int[] first) {
        int k = from;
        while (first[k] != NONE) {
            k = first[k];
        }
        return k;
    }
}
