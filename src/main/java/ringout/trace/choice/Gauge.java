package ringout.trace.choice;

import ringout.trace.diagnosis.Rows;

/**
 * Expected information of a question. Suspects that predict nothing make an outcome of their own, so that a question that some suspects
 * are silent about keeps its full value for the others.
 */
final class Gauge {
    private static final double LN2 = Math.log(2);

    private Gauge() {}

    /**
     * Bits the outcome tells of the group of a suspect: mutual information, supposing that the suspect has a group. Members numbered beyond the
     * groups, such as something not in the model, are left out. Time grows with members times outcomes.
     */
    static double groupBits(Rows rows, int[] member, double[] mass, int[] groupOf, int groups) {
        int width = rows.outcomes() + 1;
        double[] joint = new double[groups * width];
        double[] outcome = new double[width];
        double[] group = new double[groups];
        double inside = 0;
        for (int i = 0; i < member.length; i++) {
            int g = groupOf[member[i]];
            if (g < groups) {
                add(rows, member[i], mass[i], g * width, joint);
                group[g] += mass[i];
                inside += mass[i];
            }
        }
        for (int k = 0; k < joint.length; k++) {
            outcome[k % width] += joint[k];
        }
        // All three sums are scaled by the mass inside; its own term restores the scale of a distribution.
        double nats = plogp(joint) - plogp(group) - plogp(outcome) + plogp(inside);
        return inside > 0 ? Math.max(0, nats) / inside / LN2 : 0;
    }

    /** Bits the outcome tells of the suspect itself. */
    static double suspectBits(Rows rows, int[] member, double[] mass) {
        int width = rows.outcomes() + 1;
        double[] outcome = new double[width];
        double given = 0;
        for (int i = 0; i < member.length; i++) {
            add(rows, member[i], mass[i], 0, outcome);
            if (!rows.isFree(member[i])) {
                for (int o = 0; o < rows.outcomes(); o++) {
                    given += mass[i] * plogp(rows.likelihood(member[i], o));
                }
            }
        }
        return (plogp(outcome) - given) / -LN2;
    }

    private static void add(Rows rows, int suspect, double mass, int at, double[] sum) {
        int m = rows.outcomes();
        if (rows.isFree(suspect)) {
            sum[at + m] += mass;
            return;
        }
        for (int o = 0; o < m; o++) {
            sum[at + o] += mass * rows.likelihood(suspect, o);
        }
    }

    private static double plogp(double[] all) {
        double sum = 0;
        for (double p : all) {
            sum += plogp(p);
        }
        return sum;
    }

    private static double plogp(double p) {
        return p > 0 ? p * Math.log(p) : 0;
    }
}
