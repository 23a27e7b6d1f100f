package ringout.plan.late;

import java.util.List;

/**
 * What is at stake under lids: of every joint the probability that it is wrong and found so after its lid is on, times the
 * minutes that costs, summed.
 *
 * @param terms one a joint whose minutes are known
 * @param untold lids whose minutes are not told: what they hide is not in the sums
 */
public record Exposure(List<Term> terms, List<String> untold) {
    /** Part of wrong joints that a test before the lid misses. Judgement. */
    public static final double MISSED = 0.1;

    /** Keeps its own copies. */
    public Exposure {
        terms = List.copyOf(terms);
        untold = List.copyOf(untold);
    }

    /**
     * One joint.
     *
     * @param name its name
     * @param wrong probability that it is wrong, 0 to 1: of an end times the number of ends
     * @param minutes what it costs when found late
     * @param provedAsWritten whether the procedure as written tests it before its lid
     * @param provedAsPlanned whether the plan does
     */
    public record Term(String name, double wrong, double minutes, boolean provedAsWritten, boolean provedAsPlanned) {
        private double stake(boolean proved) {
            return wrong * minutes * (proved ? MISSED : 1);
        }
    }

    /** {@return minutes at stake in the order of the procedure as written; without one, with all tests after the lids} */
    public double before() {
        return terms.stream()
                .mapToDouble(term -> term.stake(term.provedAsWritten()))
                .sum();
    }

    /** {@return minutes at stake in the order of the plan} */
    public double after() {
        return terms.stream()
                .mapToDouble(term -> term.stake(term.provedAsPlanned()))
                .sum();
    }
}
