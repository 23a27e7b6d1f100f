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

    /** Conductance between the two positions of each entry in the network itself, in siemens; 0 for fill. */
    final double[] mutual;

    /** Conductance from each position to the datum in the network itself. */
    final double[] toDatum;

    /** Share of a node's current that leaves it to the row of the entry when the node is removed. */
    final double[] share;

    /** Sum of a node's conductances when it is removed; 0 ends an island without datum. */
    final double[] pivot;

    /** Conductance to the datum when the node is removed. */
    final double[] shunt;

    private final double[] scratch;

    private Factor(Symbolic shape, double[] mutual, double[] toDatum, double[] share, double[] pivot, double[] shunt) {
        this.shape = shape;
        this.mutual = mutual;
        this.toDatum = toDatum;
        this.share = share;
        this.pivot = pivot;
        this.shunt = shunt;
        scratch = new double[shape.size];
    }

    /** Factorises a set of values. The arrays are kept, not copied. */
    static Factor of(Symbolic shape, double[] mutual, double[] toDatum) {
        int n = shape.size;
        Factor f = new Factor(shape, mutual, toDatum, new double[shape.entries()], new double[n], new double[n]);
        for (int j = 0; j < n; j++) {
            f.eliminate(j);
        }
        return f;
    }

    /** A copy that may be changed and refactorised in part. */
    Factor copy() {
        return new Factor(shape, mutual.clone(), toDatum.clone(), share.clone(), pivot.clone(), shunt.clone());
    }

    /** Computes the column of a position from the network's values and the finished columns that reach it. */
    void eliminate(int j) {
        int first = shape.columnStart[j];
        int end = shape.columnStart[j + 1];
        int[] row = shape.row;
        double[] w = scratch;
        for (int p = first; p < end; p++) {
            w[row[p]] = mutual[p];
        }
        double ground = toDatum[j];
        for (int q = shape.rowStart[j]; q < shape.rowStart[j + 1]; q++) {
            int k = shape.rowColumn[q];
            int entry = shape.rowEntry[q];
            double fraction = share[entry];
            double g = fraction * pivot[k];
            ground += fraction * shunt[k];
            int last = shape.columnStart[k + 1];
            for (int p = entry + 1; p < last; p++) {
                w[row[p]] += share[p] * g;
            }
        }
        double sum = ground;
        for (int p = first; p < end; p++) {
            sum += w[row[p]];
        }
        shunt[j] = ground;
        pivot[j] = sum;
        for (int p = first; p < end; p++) {
            share[p] = sum == 0 ? 0 : w[row[p]] / sum;
        }
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

    /** Turns the result of {@link #forward} into potentials against the datum of each island. */
    void backward(double[] x) {
        int[] row = shape.row;
        for (int k = shape.size - 1; k >= 0; k--) {
            double sum = pivot[k] == 0 ? 0 : x[k] / pivot[k];
            for (int p = shape.columnStart[k]; p < shape.columnStart[k + 1]; p++) {
                sum += share[p] * x[row[p]];
            }
            x[k] = sum;
        }
    }
}
