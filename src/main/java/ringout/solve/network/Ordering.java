package ringout.solve.network;

import java.util.Arrays;

/**
 * Order of elimination that keeps the factor sparse: first the tree-like part ({@link Peel}), then the meshed core
 * ({@link QuotientGraph}). Deterministic.
 */
final class Ordering {

    private Ordering() {}

    /** {@return the vertices of a graph in the order of their elimination} */
    static int[] of(Adjacency graph) {
        Peel peel = Peel.of(graph);
        int[] order = peel.order();
        int peeled = peel.count();
        int coreSize = graph.size - peeled;
        if (coreSize == 0) {
            return order;
        }
        int[] index = new int[graph.size];
        int[] vertex = new int[coreSize];
        Arrays.fill(index, -1);
        for (int v = 0, k = 0; v < graph.size; v++) {
            if (!peel.isPeeled(v)) {
                vertex[k] = v;
                index[v] = k++;
            }
        }
        int[] core = QuotientGraph.order(peel.core(index, coreSize));
        for (int k = 0; k < coreSize; k++) {
            order[peeled + k] = vertex[core[k]];
        }
        return order;
    }
}
