package ringout.trace.diagnosis;

/** The chance of each outcome of one question, given each suspect; rows sum to 1, or are all ones where nothing is predicted. */
public final class Rows {
    private static final double SLACK = 1e-6;

    private final double[] chance;
    private final boolean[] free;
    private final int outcomes;
    private final double[] nats;

    Rows(double[] chance, boolean[] free, int outcomes) {
        this.chance = chance;
        this.free = free;
        this.outcomes = outcomes;
        this.nats = new double[free.length];
        for (int s = 0; s < nats.length; s++) {
            for (int o = 0; o < outcomes && !free[s]; o++) {
                double p = chance[s * outcomes + o];
                nats[s] += p > 0 ? p * Math.log(p) : 0;
            }
        }
    }

    /** Checks a table of one question; a last suspect that knows nothing is added when {@code unknown} and not told. */
    static Rows checked(Question question, double[][] table, int suspects, boolean unknown) {
        int m = question.outcomes().size();
        boolean told = unknown && table.length == suspects + 1;
        if (table.length != suspects && !told) {
            throw new IllegalArgumentException(
                    question.name() + ": " + table.length + " rows for " + suspects + " suspects");
        }
        int all = suspects + (unknown ? 1 : 0);
        double[] flat = new double[all * m];
        boolean[] free = new boolean[all];
        for (int s = 0; s < table.length; s++) {
            free[s] = checkRow(question, table[s], s);
            System.arraycopy(table[s], 0, flat, s * m, m);
        }
        for (int o = 0; unknown && !told && o < m; o++) {
            flat[suspects * m + o] = 1.0 / m;
        }
        return new Rows(flat, free, m);
    }

    /** Whether the row predicts nothing; refuses a row that is neither that nor a distribution. */
    private static boolean checkRow(Question question, double[] row, int suspect) {
        if (row.length != question.outcomes().size()) {
            throw new IllegalArgumentException(question.name() + ", suspect " + suspect + ": " + row.length
                    + " chances for " + question.outcomes().size() + " outcomes");
        }
        double sum = 0;
        boolean ones = true;
        for (double p : row) {
            if (!(p >= 0 && p <= 1)) {
                throw new IllegalArgumentException(
                        question.name() + ", suspect " + suspect + ": chance " + p + " is not within 0 to 1");
            }
            sum += p;
            ones &= p == 1;
        }
        if (!ones && Math.abs(sum - 1) > SLACK) {
            throw new IllegalArgumentException(
                    question.name() + ", suspect " + suspect + ": chances sum to " + sum + ", must be 1");
        }
        return ones;
    }

    /** Number of outcomes. */
    public int outcomes() {
        return outcomes;
    }

    /** Number of suspects, the unknown one included. */
    public int suspects() {
        return free.length;
    }

    /** How well an outcome agrees with a suspect: its chance, or 1 where the suspect predicts nothing. */
    public double likelihood(int suspect, int outcome) {
        return chance[suspect * outcomes + outcome];
    }

    /** Whether the suspect predicts nothing of this question. */
    public boolean isFree(int suspect) {
        return free[suspect];
    }

    /** Sum of p ln p over the outcomes of a suspect, 0 where it predicts nothing: the negative of its own uncertainty, in nats. */
    public double nats(int suspect) {
        return nats[suspect];
    }

    /** Chance of an outcome, the outcomes being equally likely where the suspect predicts nothing. */
    public double chance(int suspect, int outcome) {
        return free[suspect] ? 1.0 / outcomes : chance[suspect * outcomes + outcome];
    }
}
