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
        int[] size = new int[groups];
        for (int suspect : member) {
            if (groupOf[suspect] < groups) {
                size[groupOf[suspect]]++;
            }
        }
        double[] outcome = new double[width];
        double[][] joint = new double[groups][];
        double inside = 0;
        double nats = 0;
        for (int i = 0; i < member.length; i++) {
            int g = groupOf[member[i]];
            if (g < groups) {
                inside += mass[i];
                if (size[g] == 1) {
                    // What an outcome leaves of a group of one is the row itself, whose own term is kept with it.
                    add(rows, member[i], mass[i], outcome);
                    nats += mass[i] * rows.nats(member[i]);
                } else {
                    joint[g] = joint[g] == null ? new double[width] : joint[g];
                    add(rows, member[i], mass[i], joint[g]);
                }
            }
        }
        for (double[] one : joint) {
            nats += one == null ? 0 : within(one, outcome);
        }
        // All sums are scaled by the mass inside; its own term restores the scale of a distribution.
        nats += plogp(inside) - plogp(outcome);
        return inside > 0 ? Math.max(0, nats) / inside / LN2 : 0;
    }

    /** The terms of one group, and its part of the outcomes. */
    private static double within(double[] joint, double[] outcome) {
        double sum = 0;
        for (int k = 0; k < joint.length; k++) {
            sum += joint[k];
            outcome[k] += joint[k];
        }
        return plogp(joint) - plogp(sum);
    }

    /** Bits the outcome tells of the suspect itself. */
    static double suspectBits(Rows rows, int[] member, double[] mass) {
        int width = rows.outcomes() + 1;
        double[] outcome = new double[width];
        double given = 0;
        for (int i = 0; i < member.length; i++) {
            add(rows, member[i], mass[i], outcome);
            given += mass[i] * rows.nats(member[i]);
        }
        return (plogp(outcome) - given) / -LN2;
    }

    private static void add(Rows rows, int suspect, double mass, double[] sum) {
        int m = rows.outcomes();
        if (rows.isFree(suspect)) {
            sum[m] += mass;
            return;
        }
        for (int o = 0; o < m; o++) {
            sum[o] += mass * rows.likelihood(suspect, o);
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
