package ringout.solve.network;

import java.util.ArrayList;
import java.util.List;

/**
 * A few branches changed on an unchanged factor. With {@code R} the resistances of the network between the branches' ends
 * (mutual ones off the diagonal), {@code dg} the changes of conductance and {@code V} the voltages that drive the
 * branches, the changes act like currents {@code i} drawn between their ends, where {@code (1/dg + R) i = V}.
 *
 * <p>Source: compensation, W. F. Tinney, IEEE Transactions on Power Apparatus and Systems 91 (1972). Refuses where the
 * result would be rounding, which is where an opened branch carried nearly everything. For one thread.
 */
final class Compensation {

    /** What may be left of a sum: below this, an answer would keep fewer than ten of sixteen digits. */
    private static final double CANCELLED = 1e-6;

    private static final double UNTRUSTED_AMPLIFICATION = 1e6;

    /**
     * A branch between two positions.
     *
     * @param in position of its first end
     * @param out position of its second end
     * @param siemens change of conductance, not 0; infinity is a dead short
     * @param volts voltage that drives a current from the first end to the second before the change
     */
    record Branch(int in, int out, double siemens, double volts) {}

    private final Factor factor;
    private final List<PathWalk> walks = new ArrayList<>();
    private double[] amps = new double[0];

    Compensation(Factor factor) {
        this.factor = factor;
    }

    /** Applies branches and hands the changes of potential to a spread; false if the answer would be rounding. */
    boolean apply(List<Branch> branches, Spread spread) {
        int k = branches.size();
        while (walks.size() < k) {
            walks.add(new PathWalk(factor));
        }
        for (int i = 0; i < k; i++) {
            walks.get(i).run(branches.get(i).in(), branches.get(i).out());
            if (walks.get(i).amplification() > UNTRUSTED_AMPLIFICATION) {
                return false;
            }
        }
        if (!solve(branches)) {
            return false;
        }
        place(k, spread);
        return true;
    }

    /** Symmetric elimination; a pivot that loses nearly all of what it was summed from is refused. */
    private boolean solve(List<Branch> branches) {
        int k = branches.size();
        double[][] s = new double[k][k];
        amps = new double[k];
        for (int i = 0; i < k; i++) {
            double own = 1 / branches.get(i).siemens();
            double resistance = walks.get(i).resistance();
            s[i][i] += own + resistance;
            amps[i] += branches.get(i).volts();
            if (Math.abs(s[i][i]) < CANCELLED * (Math.abs(own) + resistance) || (s[i][i] > 0) != (own >= 0)) {
                return false;
            }
            for (int j = i + 1; j < k; j++) {
                s[j][i] += walks.get(i).mutual(walks.get(j));
                double share = s[j][i] / s[i][i];
                for (int l = i + 1; l <= j; l++) {
                    s[j][l] -= share * s[l][i];
                }
                amps[j] -= share * amps[i];
            }
        }
        for (int i = k - 1; i >= 0; i--) {
            for (int j = i + 1; j < k; j++) {
                amps[i] -= s[j][i] * amps[j];
            }
            amps[i] /= s[i][i];
        }
        return true;
    }

    private void place(int k, Spread spread) {
        int[] path = walks.get(0).path().toArray();
        for (int i = 1; i < k; i++) {
            path = IntRow.union(path, walks.get(i).path().toArray());
        }
        int[] row = factor.shape.row;
        for (int t = path.length - 1; t >= 0; t--) {
            int position = path[t];
            double volts = 0;
            if (factor.pivot[position] != 0) {
                for (int i = 0; i < k; i++) {
                    volts -= amps[i] * walks.get(i).arrived(position);
                }
                volts /= factor.pivot[position];
            }
            for (int p = factor.shape.columnStart[position]; p < factor.shape.columnStart[position + 1]; p++) {
                volts += factor.share[p] * spread.change(row[p]);
            }
            spread.set(position, volts, Spread.NOT_CUT);
        }
    }
}
