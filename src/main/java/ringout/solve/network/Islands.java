package ringout.solve.network;

import java.util.Arrays;

/**
 * Sets of nodes joined by elements that conduct with the present values, and the reference of each. Read off the factor:
 * a node whose star reaches the datum or a later node is in its island, one whose star is empty ends an island. A
 * conductance of zero stays exactly zero in the factor, so no threshold is involved.
 */
final class Islands {

    private static final int NONE = -1;

    private final NetworkStructure structure;

    /** By position: the last position of its island, or behind all positions the piece whose datum it reaches. */
    private final int[] label;

    /** Reference node by label. */
    private final int[] reference;

    private Islands(NetworkStructure structure, int[] label) {
        this.structure = structure;
        this.label = label;
        reference = new int[label.length + structure.pieces()];
        Arrays.fill(reference, NONE);
        ResistiveNetwork network = structure.network();
        for (int r = 0; r < network.references(); r++) {
            int node = network.reference(r);
            if (reference[of(node)] == NONE) {
                reference[of(node)] = node;
            }
        }
    }

    /**
     * The islands of a factor.
     *
     * @param whole the islands when every node reaches the datum of its piece
     */
    static Islands of(NetworkStructure structure, Factor factor, Islands whole) {
        return new Islands(structure, labels(structure, factor, whole));
    }

    /** The islands when every node reaches the datum of its piece. */
    static Islands ofPieces(NetworkStructure structure) {
        int[] label = new int[structure.unknowns()];
        for (int k = 0; k < label.length; k++) {
            label[k] = label.length + structure.pieceAt(k);
        }
        return new Islands(structure, label);
    }

    /**
     * Only what is eliminated before the end of an island can be in it, which is one range of positions, since these are
     * a postorder. All else reaches the datum of its piece.
     */
    private static int[] labels(NetworkStructure structure, Factor factor, Islands whole) {
        int[] label = whole.label.clone();
        int done = label.length;
        for (int end = label.length - 1; end >= 0; end--) {
            if (factor.pivot[end] == 0 && end < done) {
                done = structure.symbolic().tree.firstBelow(end);
                for (int k = end; k >= done; k--) {
                    label[k] = label(structure, factor, k, label);
                }
            }
        }
        return label;
    }

    private static int label(NetworkStructure structure, Factor factor, int k, int[] label) {
        if (factor.shunt[k] > 0) {
            return label.length + structure.pieceAt(k);
        }
        if (factor.pivot[k] == 0) {
            return k;
        }
        int p = factor.shape.columnStart[k];
        while (factor.share[p] == 0) {
            p++;
        }
        return label[factor.shape.row[p]];
    }

    /** {@return a number that the nodes of an island share} */
    int of(int node) {
        int position = structure.position(node);
        return position == NetworkStructure.AT_DATUM ? label.length + structure.piece(node) : label[position];
    }

    boolean same(int a, int b) {
        return of(a) == of(b);
    }

    /** {@return the reference node of the island of a node, or -1} */
    int reference(int node) {
        return reference[of(node)];
    }
}
