package ringout.trace.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * How likely each suspect is after the readings, on the supposition that exactly one fault is present (or something not in the model).
 * Independent questions multiply; repeats of one question count only against the reading error. A repair that
 * was done and did not cure speaks against all that it cures.
 */
public final class Belief {
    /** Chance that a repair leaves the fault it is for: badly done, or at the wrong end. Judgement, no source. */
    public static final double BOTCHED = 0.03;

    private final Problem problem;
    private final Observed observed;
    private final double[] share;
    private final boolean contradicted;

    private Belief(Problem problem, Observed observed, double[] share, boolean contradicted) {
        this.problem = problem;
        this.observed = observed;
        this.share = share;
        this.contradicted = contradicted;
    }

    /** Weighs the suspects; time grows with suspects times readings. */
    public static Belief of(Problem problem, Observed observed) {
        double[] share = new double[problem.size()];
        for (int s = 0; s < share.length; s++) {
            share[s] = problem.prior(s);
        }
        boolean possible = true;
        for (String action : observed.vain()) {
            for (int s = 0; s < share.length; s++) {
                share[s] *= problem.isCuredBy(s, action) ? BOTCHED : 1;
            }
            possible = possible && normalise(share);
        }
        for (Map.Entry<Integer, List<Integer>> series :
                Likelihood.byQuestion(observed.readings()).entrySet()) {
            for (int s = 0; s < share.length; s++) {
                if (share[s] > 0) {
                    share[s] *= Likelihood.ofSeries(problem, series.getKey(), series.getValue(), s);
                }
            }
            possible = possible && normalise(share);
        }
        return new Belief(problem, observed, share, !possible);
    }

    private static boolean normalise(double[] share) {
        double sum = 0;
        for (double one : share) {
            sum += one;
        }
        for (int s = 0; sum > 0 && s < share.length; s++) {
            share[s] /= sum;
        }
        return sum > 0;
    }

    /** What was asked. */
    public Problem problem() {
        return problem;
    }

    /** What was read and opened. */
    public Observed observed() {
        return observed;
    }

    /** Share of a suspect, 0 to 1; all are 0 when {@link #isContradicted}. */
    public double share(int suspect) {
        return share[suspect];
    }

    /** Share of something not in the model; when it grows, the list of suspects is wrong. */
    public double unknown() {
        return problem.hasUnknown() ? share[problem.size() - 1] : 0;
    }

    /** Whether the readings are impossible under every suspect, which only a table without any error allows. */
    public boolean isContradicted() {
        return contradicted;
    }

    /** Uncertainty left, in bits over the suspects. */
    public double bits() {
        double bits = 0;
        for (double one : share) {
            bits -= one > 0 ? one * Math.log(one) : 0;
        }
        return bits / Math.log(2);
    }

    /** Suspects by falling share, equal ones in their own order. */
    public List<Integer> ranked() {
        List<Integer> order = new ArrayList<>();
        for (int s = 0; s < share.length; s++) {
            order.add(s);
        }
        order.sort(Comparator.comparingDouble((Integer s) -> -share[s]));
        return order;
    }

    /** Repair actions by falling share of what they would cure, equal ones in their own order. */
    public List<RepairShare> repairs() {
        double[] sum = new double[problem.repairs().size()];
        for (int s = 0; s < share.length; s++) {
            if (problem.repairOf(s) != Problem.NO_REPAIR) {
                sum[problem.repairOf(s)] += share[s];
            }
        }
        List<RepairShare> shares = new ArrayList<>();
        for (int r = 0; r < sum.length; r++) {
            shares.add(new RepairShare(problem.repairs().get(r), sum[r]));
        }
        shares.sort(Comparator.comparingDouble((RepairShare one) -> -one.share()));
        return shares;
    }

    /** Chances of the next reading of a question for every suspect; one already read tells only what its error hid. */
    public Rows rowsOf(int question) {
        List<Integer> before = observed.outcomesOf(question);
        Rows rows = problem.rows(question);
        if (before.isEmpty()) {
            return rows;
        }
        int m = rows.outcomes();
        double[] flat = new double[rows.suspects() * m];
        boolean[] free = new boolean[rows.suspects()];
        double error = problem.questions().get(question).readingError();
        for (int s = 0; s < free.length; s++) {
            free[s] = rows.isFree(s);
            double[] row = Likelihood.row(rows, s);
            System.arraycopy(free[s] ? row : Repeats.next(row, error, before), 0, flat, s * m, m);
        }
        return new Rows(flat, free, m);
    }
}
