package ringout.solve.network;

import java.util.Arrays;
import ringout.graph.index.UnionFind;

/** Sets of nodes joined by elements that conduct with the present values, and the reference of each. */
final class Islands {

    private static final int NONE = -1;

    private final int[] island;
    private final int[] reference;

    private Islands(int[] island, int[] reference) {
        this.island = island;
        this.reference = reference;
    }

    static Islands of(NetworkStructure structure, ResistiveNetwork values) {
        int[] island = hasOpenElement(values) ? conducting(values) : pieces(structure, values.nodes());
        int[] reference = new int[values.nodes()];
        Arrays.fill(reference, NONE);
        for (int r = 0; r < values.references(); r++) {
            int node = values.reference(r);
            if (reference[island[node]] == NONE) {
                reference[island[node]] = node;
            }
        }
        return new Islands(island, reference);
    }

    private static boolean hasOpenElement(ResistiveNetwork values) {
        for (int e = 0; e < values.elements(); e++) {
            if (Double.isInfinite(values.ohms(e))) {
                return true;
            }
        }
        return false;
    }

    private static int[] pieces(NetworkStructure structure, int nodes) {
        int[] island = new int[nodes];
        for (int v = 0; v < nodes; v++) {
            island[v] = structure.piece(v);
        }
        return island;
    }

    private static int[] conducting(ResistiveNetwork values) {
        UnionFind sets = NetworkStructure.join(values, e -> Double.isFinite(values.ohms(e)));
        int[] island = new int[values.nodes()];
        for (int v = 0; v < island.length; v++) {
            island[v] = sets.find(v);
        }
        return island;
    }

    /** {@return a number that the nodes of an island share} */
    int of(int node) {
        return island[node];
    }

    boolean same(int a, int b) {
        return island[a] == island[b];
    }

    /** {@return the reference node of the island of a node, or -1} */
    int reference(int node) {
        return reference[island[node]];
    }
}
