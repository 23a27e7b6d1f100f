package ringout.trace.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Pairs of faults, for readings that no single one explains. They are offered, never claimed: pairs are rare beforehand and mask each other,
 * so the right pair is named in fewer than half of all true double faults. What can be said is <em>at least one of</em>: repair
 * the likeliest, then observe again.
 *
 * @param pairs pairs that explain every reading, likeliest first, with their shares among the pairs offered
 * @param atLeastOneOf suspects by falling chance of being in the pair
 */
public record Pairs(List<Pair> pairs, List<Member> atLeastOneOf) {
    /** Suspects tried in pairs: the likeliest that explain what others do not. */
    private static final int TRIED = 80;

    /**
     * Two faults.
     *
     * @param one number of a suspect
     * @param other number of another
     * @param share among the pairs offered
     */
    public record Pair(int one, int other, double share) {}

    /**
     * A fault that may be one of two.
     *
     * @param suspect its number
     * @param share of the pairs offered that have it
     */
    public record Member(int suspect, double share) {}

    /** Keeps its own copies. */
    public Pairs {
        pairs = List.copyOf(pairs);
        atLeastOneOf = List.copyOf(atLeastOneOf);
    }

    /** Pairs that explain every reading, none while a single suspect does. */
    public static Pairs of(Problem problem, List<Reading> readings, PairTable table) {
        if (Explanation.isSingle(problem, readings)) {
            return new Pairs(List.of(), List.of());
        }
        Map<Integer, List<Integer>> series = Likelihood.byQuestion(readings);
        List<Integer> tried = tried(problem, readings);
        List<Pair> found = new ArrayList<>();
        double sum = 0;
        for (int i = 0; i < tried.size(); i++) {
            for (int j = i + 1; j < tried.size(); j++) {
                int one = Math.min(tried.get(i), tried.get(j));
                int other = Math.max(tried.get(i), tried.get(j));
                double weight = weight(problem, series, table, one, other);
                if (weight > 0) {
                    found.add(new Pair(one, other, weight));
                    sum += weight;
                }
            }
        }
        double total = sum;
        List<Pair> shares = found.stream()
                .map(pair -> new Pair(pair.one, pair.other, pair.share / total))
                .sorted(Comparator.comparingDouble((Pair pair) -> -pair.share)
                        .thenComparingInt(Pair::one)
                        .thenComparingInt(Pair::other))
                .toList();
        return new Pairs(shares, members(problem, shares));
    }

    /** Suspects that leave fewest readings unexplained, then those likeliest beforehand. */
    private static List<Integer> tried(Problem problem, List<Reading> readings) {
        List<Explanation> all = new ArrayList<>();
        for (int s = 0; s < problem.suspects().size(); s++) {
            if (problem.prior(s) > 0) {
                all.add(Explanation.of(problem, readings, s));
            }
        }
        return all.stream()
                .sorted(Comparator.comparingInt(
                                (Explanation one) -> one.unexplained().size())
                        .thenComparingDouble(one -> -problem.prior(one.suspect())))
                .limit(TRIED)
                .map(Explanation::suspect)
                .toList();
    }

    private static double weight(
            Problem problem, Map<Integer, List<Integer>> series, PairTable table, int one, int other) {
        double weight = problem.prior(one) * problem.prior(other) * table.together(one, other);
        for (Map.Entry<Integer, List<Integer>> read : series.entrySet()) {
            double[] row = table.row(read.getKey(), one, other);
            Question question = problem.questions().get(read.getKey());
            double likelihood = Likelihood.ofSeries(question, row, read.getValue());
            if (!Explanation.explains(question, likelihood)) {
                return 0;
            }
            weight *= likelihood;
        }
        return weight;
    }

    private static List<Member> members(Problem problem, List<Pair> pairs) {
        double[] sum = new double[problem.suspects().size()];
        for (Pair pair : pairs) {
            sum[pair.one] += pair.share;
            sum[pair.other] += pair.share;
        }
        List<Member> members = new ArrayList<>();
        for (int s = 0; s < sum.length; s++) {
            if (sum[s] > 0) {
                members.add(new Member(s, sum[s]));
            }
        }
        members.sort(Comparator.comparingDouble((Member member) -> -member.share));
        return members;
    }
}
