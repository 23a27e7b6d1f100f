package ringout.graph.index;

import java.util.Arrays;

/**
 * The blocks (biconnected components) of an undirected graph: every edge in exactly one block, two edges in the same
 * block exactly if a simple cycle goes through both. A bridge is a block of one edge, and so is a self-loop.
 *
 * <p>No stack of edges is needed: an edge belongs to the block in which its deeper end joins the depth-first tree.
 */
public final class Blocks {
    private static final int HIDDEN = -1;

    private final int[] blockOf;
    private final int[] starts;
    private final int[] edges;

    private Blocks(int[] blockOf, int[] starts, int[] edges) {
        this.blockOf = blockOf;
        this.starts = starts;
        this.edges = edges;
    }

    static Blocks of(Lowlink pass) {
        IndexGraph graph = pass.graph();
        int[] blockOfVertex = new int[graph.vertexCount()];
        int count = 0;
        for (int i = 0; i < blockOfVertex.length; i++) {
            int v = pass.vertexAt(i);
            if (pass.parentEdge(v) >= 0) {
                blockOfVertex[v] = pass.hangsFromParentOnly(v) ? count++ : blockOfVertex[pass.parent(v)];
            }
        }
        int[] blockOf = new int[graph.edgeBound()];
        Arrays.fill(blockOf, HIDDEN);
        for (int e = 0; e < blockOf.length; e++) {
            if (graph.hasEdge(e)) {
                int a = graph.from(e);
                int b = graph.to(e);
                int deeper = pass.position(a) > pass.position(b) ? a : b;
                blockOf[e] = a == b ? count++ : blockOfVertex[deeper];
            }
        }
        return sorted(blockOf, count);
    }

    private static Blocks sorted(int[] blockOf, int count) {
        int[] starts = new int[count + 1];
        for (int block : blockOf) {
            if (block != HIDDEN) {
                starts[block + 1]++;
            }
        }
        for (int b = 0; b < count; b++) {
            starts[b + 1] += starts[b];
        }
        int[] next = starts.clone();
        int[] edges = new int[starts[count]];
        for (int e = 0; e < blockOf.length; e++) {
            if (blockOf[e] != HIDDEN) {
                edges[next[blockOf[e]]++] = e;
            }
        }
        return new Blocks(blockOf, starts, edges);
    }

    /** {@return the number of blocks} */
    public int count() {
        return starts.length - 1;
    }

    /** {@return the block of an edge, -1 if the edge is hidden} */
    public int blockOf(int edge) {
        return blockOf[edge];
    }

    /** {@return the number of edges in a block} */
    public int size(int block) {
        return starts[block + 1] - starts[block];
    }

    /** {@return the edges of a block, ascending, as a new array} */
    public int[] edges(int block) {
        return Arrays.copyOfRange(edges, starts[block], starts[block + 1]);
    }
}
