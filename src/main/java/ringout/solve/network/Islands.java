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

    static Islands of(NetworkStructure structure, Factor factor) {
        return new Islands(structure, labels(structure, factor));
    }

    /** The islands when every node reaches the datum of its piece. */
    static Islands ofPieces(NetworkStructure structure) {
        int[] label = new int[structure.unknowns()];
        for (int k = 0; k < label.length; k++) {
            label[k] = label.length + structure.pieceAt(k);
        }
        return new Islands(structure, label);
    }

    private static int[] labels(NetworkStructure structure, Factor factor) {
        Symbolic shape = factor.shape;
        int[] label = new int[shape.size];
        for (int k = shape.size - 1; k >= 0; k--) {
            if (factor.shunt[k] > 0) {
                label[k] = shape.size + structure.pieceAt(k);
            } else if (factor.pivot[k] > 0) {
                int p = shape.columnStart[k];
                while (factor.share[p] == 0) {
                    p++;
                }
                label[k] = label[shape.row[p]];
            } else {
                label[k] = k;
            }
        }
        return label;
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
