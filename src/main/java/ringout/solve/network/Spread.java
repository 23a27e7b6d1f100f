package ringout.solve.network;

import java.util.Arrays;

/**
 * Carries a change of potential from the elimination path of its cause to the rest of the network, and no further than
 * it matters.
 *
 * <p>Maximum principle: a part of the network in which nothing changed cannot move by more than the nodes on its border.
 * Below a position of the elimination tree that border is the position's own column, so a whole subtree is left out once
 * its border moves by no more than the tolerance. Holds working space; for one thread.
 */
final class Spread {

    /** Instead of the root of a cut-off part: the position still hangs together with what it hung together with. */
    static final int NOT_CUT = -1;

    private final Symbolic shape;
    private final double[] change;
    private final int[] cutRoot;
    private final boolean[] isSet;
    private final IntRow touched = new IntRow();
    private final IntRow stack = new IntRow();

    Spread(Symbolic shape) {
        this.shape = shape;
        change = new double[shape.size];
        cutRoot = new int[shape.size];
        isSet = new boolean[shape.size];
        Arrays.fill(cutRoot, NOT_CUT);
    }

    void clear() {
        for (int i = 0; i < touched.size(); i++) {
            int k = touched.get(i);
            change[k] = 0;
            cutRoot[k] = NOT_CUT;
            isSet[k] = false;
        }
        touched.clear();
    }

    /** Sets the change of a position on the path. */
    void set(int position, double volts, int root) {
        change[position] = volts;
        cutRoot[position] = root;
        isSet[position] = true;
        touched.add(position);
    }

    /** Goes from the positions set so far down to all others that move by more than a tolerance or are cut off. */
    void run(Factor factor, double tolerance) {
        int onPath = touched.size();
        for (int i = 0; i < onPath; i++) {
            descend(touched.get(i), tolerance);
        }
        while (stack.size() > 0) {
            int k = stack.removeLast();
            if (borderMoves(k, tolerance)) {
                inherit(factor, k);
                descend(k, tolerance);
            }
        }
    }

    /** Moves a position with the later ones it hangs on; false if they leave it exactly where it was. */
    boolean inherit(Factor factor, int k) {
        double volts = 0;
        int root = NOT_CUT;
        for (int p = shape.columnStart[k]; p < shape.columnStart[k + 1]; p++) {
            int i = shape.row[p];
            volts += factor.share[p] * change[i];
            root = factor.share[p] > 0 && cutRoot[i] != NOT_CUT ? cutRoot[i] : root;
        }
        boolean moved = volts != 0 || root != NOT_CUT;
        if (moved) {
            set(k, volts, root);
        }
        return moved;
    }

    private void descend(int k, double tolerance) {
        if (!moves(k, tolerance) && !borderMoves(k, tolerance)) {
            return;
        }
        for (int c = shape.tree.firstChild[k]; c >= 0; c = shape.tree.nextSibling[c]) {
            if (!isSet[c]) {
                stack.add(c);
            }
        }
    }

    private boolean borderMoves(int k, double tolerance) {
        for (int p = shape.columnStart[k]; p < shape.columnStart[k + 1]; p++) {
            if (moves(shape.row[p], tolerance)) {
                return true;
            }
        }
        return false;
    }

    private boolean moves(int k, double tolerance) {
        return Math.abs(change[k]) > tolerance || cutRoot[k] != NOT_CUT;
    }

    /** {@return the positions that were set or reached} */
    IntRow touched() {
        return touched;
    }

    /** {@return the change of potential of a position in volts; 0 if it was not reached} */
    double change(int position) {
        return position == NetworkStructure.AT_DATUM ? 0 : change[position];
    }

    /** {@return the root of the cut-off part a position is in, or {@link #NOT_CUT}} */
    int cutRoot(int position) {
        return position == NetworkStructure.AT_DATUM ? NOT_CUT : cutRoot[position];
    }
}
