package ringout.trace.choice;

import java.util.List;
import java.util.PriorityQueue;
import ringout.trace.diagnosis.Problem;

/**
 * What no plan can better, for telling every suspect from every other with certain outcomes. The bounds are weak where tests differ in
 * minutes; print both.
 */
public final class LowerBounds {
    private LowerBounds() {}

    /** Uncertainty of the suspects before any test, in bits; with unit minutes and two outcomes no plan has fewer tests. */
    public static double entropy(Problem problem) {
        double bits = 0;
        for (int s = 0; s < problem.size(); s++) {
            double p = problem.prior(s);
            bits -= p > 0 ? p * Math.log(p) / Math.log(2) : 0;
        }
        return bits;
    }

    /** Minutes that the uncertainty takes at the greatest rate any test could have: log2 of its outcomes over its minutes. */
    public static double entropyMinutes(Problem problem) {
        double rate = problem.questions().stream()
                .mapToDouble(question -> Math.log(question.outcomes().size()) / Math.log(2) / question.minutes())
                .max()
                .orElse(Double.POSITIVE_INFINITY);
        return entropy(problem) / rate;
    }

    /** Expected tests of the best tree if any question could be asked (Huffman 1952), questions having two outcomes. */
    public static double huffman(List<Double> shares) {
        PriorityQueue<Double> left = new PriorityQueue<>(shares);
        double sum = 0;
        while (left.size() > 1) {
            double pair = left.remove() + left.remove();
            sum += pair;
            left.add(pair);
        }
        return sum;
    }
}
