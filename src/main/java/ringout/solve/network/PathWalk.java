package ringout.solve.network;

/**
 * One ampere into one position and out of another, followed from elimination to elimination. Only positions on the two
 * ways to the root of the elimination tree are touched, so the cost is the length of those ways, not the size of the
 * network. Holds working space; for one thread.
 */
final class PathWalk {

    private static final int NONE = Integer.MAX_VALUE;

    private final Factor factor;
    private final double[] arrived;
    private final double[] magnitude;
    private final IntRow path = new IntRow();
    private double resistance;
    private double amplification;

    PathWalk(Factor factor) {
        this.factor = factor;
        arrived = new double[factor.shape.size];
        magnitude = new double[factor.shape.size];
    }

    /**
     * Follows one ampere.
     *
     * @param in position it enters at, or {@link NetworkStructure#AT_DATUM}
     * @param out position it leaves at, or {@link NetworkStructure#AT_DATUM}
     */
    void run(int in, int out) {
        clear();
        int p = seed(in, 1);
        int q = seed(out, -1);
        double squares = 0;
        double products = 0;
        while (p != NONE || q != NONE) {
            int k = Math.min(p, q);
            path.add(k);
            push(k);
            if (factor.pivot[k] != 0) {
                squares += arrived[k] * arrived[k] / factor.pivot[k];
                products += Math.abs(arrived[k]) * magnitude[k] / factor.pivot[k];
            }
            p = p == k ? parent(k) : p;
            q = q == k ? parent(k) : q;
        }
        resistance = squares;
        amplification = squares == 0 ? 1 : products / squares;
    }

    private int seed(int position, int sign) {
        if (position == NetworkStructure.AT_DATUM) {
            return NONE;
        }
        arrived[position] += sign;
        magnitude[position] += 1;
        return position;
    }

    private int parent(int k) {
        int parent = factor.shape.tree.parent[k];
        return parent < 0 ? NONE : parent;
    }

    private void push(int k) {
        int[] row = factor.shape.row;
        for (int e = factor.shape.columnStart[k]; e < factor.shape.columnStart[k + 1]; e++) {
            arrived[row[e]] += factor.share[e] * arrived[k];
            magnitude[row[e]] += factor.share[e] * magnitude[k];
        }
    }

    private void clear() {
        for (int i = 0; i < path.size(); i++) {
            arrived[path.get(i)] = 0;
            magnitude[path.get(i)] = 0;
        }
        path.clear();
    }

    /** {@return ohms between the two positions: the power that one ampere dissipates} */
    double resistance() {
        return resistance;
    }

    /** {@return by how much a rounding error on the way is enlarged in the resistance; 1 is none} */
    double amplification() {
        return amplification;
    }

    /** {@return volts between the ends of another walk for one ampere between the ends of this one} */
    double mutual(PathWalk other) {
        double volts = 0;
        for (int i = 0; i < path.size(); i++) {
            int k = path.get(i);
            if (factor.pivot[k] != 0) {
                volts += arrived[k] * other.arrived[k] / factor.pivot[k];
            }
        }
        return volts;
    }

    /** {@return the touched positions, ascending} */
    IntRow path() {
        return path;
    }

    /** {@return the current that arrived at a touched position} */
    double arrived(int position) {
        return arrived[position];
    }
}
