package ringout.solve.network;

/**
 * Star-mesh factorisation of a network's nodal conductance matrix with the datum nodes taken out.
 *
 * <p>To remove a node, the star of its conductances becomes a mesh between its neighbours: {@code g_ij += g_ik g_kj / G}
 * with {@code G} the sum of all conductances of the node, the one to the datum included. Only conductances are kept, and
 * they are only ever added, multiplied and divided, so nothing cancels: every entry carries a relative error of a few
 * units in the last place however far the ohms are apart. The textbook factorisation subtracts from the diagonal instead
 * and loses as many digits as the conductances are decades apart. For Markov chains the idea is known from W. K.
 * Grassmann, M. I. Taksar and D. P. Heyman, Operations Research 33 (1985), 1107-1116.
 *
 * <p>A node that is left with {@code G = 0} ends an island that has no way to a datum. It serves as that island's own
 * datum; no conductance is invented for it.
 *
 * <p>Everything is indexed by position of elimination or by entry of the {@link Symbolic} factor.
 */
final class Factor {

    final Symbolic shape;

    /** Share of a node's current that leaves it to the row of the entry when the node is removed. */
    final double[] share;

    /** Sum of a node's conductances when it is removed; 0 ends an island without datum. */
    final double[] pivot;

    /** Conductance to the datum when the node is removed. */
    final double[] shunt;

    private Factor(Symbolic shape, double[] share, double[] pivot, double[] shunt) {
        this.shape = shape;
        this.share = share;
        this.pivot = pivot;
        this.shunt = shunt;
    }

    /** Factorises a set of conductances. Its arrays become those of the factor. */
    static Factor of(Symbolic shape, Conductances g) {
        Factor f = new Factor(shape, g.mutual(), new double[shape.size], g.toDatum());
        f.factorise();
        return f;
    }

    /** A copy that may be refactorised in part. */
    Factor copy() {
        return new Factor(shape, share.clone(), pivot.clone(), shunt.clone());
    }

    /**
     * Column by column. Until its turn comes, a column of {@link #share} gathers conductances, and so does its
     * {@link #shunt}: short columns hand their mesh on as soon as they are finished, to places known beforehand; long
     * ones are called on when a column they reach has its turn.
     */
    private void factorise() {
        int[] where = new int[shape.size];
        int[] columnStart = shape.columnStart;
        int[] longStart = shape.longStart;
        int end = 0;
        for (int j = 0; j < pivot.length; j++) {
            int first = end;
            end = columnStart[j + 1];
            if (longStart[j] != longStart[j + 1]) {
                gather(j, first, end, where);
            }
            if (end - first == 2) {
                seriesPoint(j, first);
            } else {
                normalise(j, first, end);
                handOn(j, first, end);
            }
        }
    }

    /** The most frequent case written out: a point between two others. */
    private void seriesPoint(int j, int first) {
        double ground = shunt[j];
        double sum = ground + share[first] + share[first + 1];
        double inverse = sum == 0 ? 0 : 1 / sum;
        double a = share[first] * inverse;
        double b = share[first + 1] * inverse;
        pivot[j] = sum;
        share[first] = a;
        share[first + 1] = b;
        share[shape.target[shape.targetStart[j]]] += b * (a * sum);
        if (ground != 0) {
            shunt[shape.row[first]] += a * ground;
            shunt[shape.row[first + 1]] += b * ground;
        }
    }

    private void gather(int j, int first, int end, int[] where) {
        int[] row = shape.row;
        for (int p = first; p < end; p++) {
            where[row[p]] = p;
        }
        for (int q = shape.longStart[j]; q < shape.longStart[j + 1]; q++) {
            int k = shape.longColumn[q];
            int entry = shape.longEntry[q];
            double g = share[entry] * pivot[k];
            shunt[j] += share[entry] * shunt[k];
            int last = shape.columnStart[k + 1];
            for (int p = entry + 1; p < last; p++) {
                share[where[row[p]]] += share[p] * g;
            }
        }
    }

    private void normalise(int j, int first, int end) {
        double sum = shunt[j];
        for (int p = first; p < end; p++) {
            sum += share[p];
        }
        pivot[j] = sum;
        double inverse = sum == 0 ? 0 : 1 / sum;
        for (int p = first; p < end; p++) {
            share[p] *= inverse;
        }
    }

    private void handOn(int j, int first, int end) {
        int[] row = shape.row;
        int[] target = shape.target;
        double ground = shunt[j];
        double sum = pivot[j];
        int t = shape.targetStart[j];
        if (t == shape.targetStart[j + 1] && end - first > 1) {
            return;
        }
        for (int later = first; later < end; later++) {
            double fraction = share[later];
            shunt[row[later]] += fraction * ground;
            for (int p = first; p < later; p++) {
                share[target[t++]] += fraction * (share[p] * sum);
            }
        }
    }

    /**
     * Computes one column anew from the finished columns that reach it. {@link #share} and {@link #shunt} of the column hold
     * the network's own conductances when it is called.
     */
    void eliminate(int j, double[] scratch) {
        int first = shape.columnStart[j];
        int end = shape.columnStart[j + 1];
        int[] row = shape.row;
        for (int p = first; p < end; p++) {
            scratch[row[p]] = share[p];
        }
        double ground = shunt[j];
        for (int q = shape.rowStart[j]; q < shape.rowStart[j + 1]; q++) {
            int k = shape.rowColumn[q];
            int entry = shape.rowEntry[q];
            double onward = share[entry] * pivot[k];
            ground += share[entry] * shunt[k];
            int last = shape.columnStart[k + 1];
            for (int p = entry + 1; p < last; p++) {
                scratch[row[p]] += share[p] * onward;
            }
        }
        shunt[j] = ground;
        for (int p = first; p < end; p++) {
            share[p] = scratch[row[p]];
        }
        normalise(j, first, end);
    }

    /** {@return whether no position ends an island without datum} */
    boolean reachesDatumEverywhere() {
        for (double sum : pivot) {
            if (sum == 0) {
                return false;
            }
        }
        return true;
    }

    /** {@return whether a column is, bit for bit, that of another factor of the same shape} */
    boolean sameColumn(Factor other, int j) {
        if (pivot[j] != other.pivot[j] || shunt[j] != other.shunt[j]) {
            return false;
        }
        for (int p = shape.columnStart[j]; p < shape.columnStart[j + 1]; p++) {
            if (share[p] != other.share[p]) {
                return false;
            }
        }
        return true;
    }

    /** Moves injected currents towards the roots: on return each entry is the current that arrives there. */
    void forward(double[] amps) {
        int[] row = shape.row;
        for (int k = 0; k < shape.size; k++) {
            double current = amps[k];
            if (current != 0) {
                for (int p = shape.columnStart[k]; p < shape.columnStart[k + 1]; p++) {
                    amps[row[p]] += share[p] * current;
                }
            }
        }
    }

    /** Potentials against the datum of each island from the result of {@link #forward}, which is kept. */
    double[] backward(double[] arrived) {
        int[] row = shape.row;
        double[] x = new double[arrived.length];
        for (int k = arrived.length - 1; k >= 0; k--) {
            double sum = pivot[k] == 0 ? 0 : arrived[k] / pivot[k];
            for (int p = shape.columnStart[k]; p < shape.columnStart[k + 1]; p++) {
                sum += share[p] * x[row[p]];
            }
            x[k] = sum;
        }
        return x;
    }
}
