package ringout.trace.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Which readings a suspect leaves unexplained.
 *
 * @param suspect number of the suspect
 * @param unexplained readings whose likelihood under it is no more than {@link #EXPLAINS}, or than misreading alone would give
 */
public record Explanation(int suspect, List<Misfit> unexplained) {
    /** A reading is explained when its likelihood is above this: common practice, no source. */
    public static final double EXPLAINS = 0.02;

    /** Rounding of the last digits does not explain a reading. */
    private static final double HARDLY_MORE = 1 + 1e-9;

    /**
     * A reading that does not fit.
     *
     * @param reading the last reading of its question
     * @param likelihood of all readings of that question under the suspect
     */
    public record Misfit(Reading reading, double likelihood) {}

    /** Keeps its own copy. */
    public Explanation {
        unexplained = List.copyOf(unexplained);
    }

    /** Whether the suspect explains every reading. */
    public boolean isComplete() {
        return unexplained.isEmpty();
    }

    /** Whether a reading of such a likelihood is explained: by more than that it may have been misread. */
    static boolean explains(Question question, double likelihood) {
        double misread = question.readingError() / (question.outcomes().size() - 1);
        return likelihood > Math.max(EXPLAINS, misread) * HARDLY_MORE;
    }

    /** What a suspect fails to explain. */
    public static Explanation of(Problem problem, List<Reading> readings, int suspect) {
        List<Misfit> misfits = new ArrayList<>();
        for (Map.Entry<Integer, List<Integer>> series :
                Likelihood.byQuestion(readings).entrySet()) {
            int question = series.getKey();
            double likelihood = Likelihood.ofSeries(problem, question, series.getValue(), suspect);
            if (!explains(problem.questions().get(question), likelihood)) {
                int last = series.getValue().get(series.getValue().size() - 1);
                misfits.add(new Misfit(new Reading(question, last), likelihood));
            }
        }
        return new Explanation(suspect, misfits);
    }

    /** Whether any single suspect in the model explains every reading. */
    public static boolean isSingle(Problem problem, List<Reading> readings) {
        for (int s = 0; s < problem.suspects().size(); s++) {
            if (problem.prior(s) > 0 && of(problem, readings, s).isComplete()) {
                return true;
            }
        }
        return false;
    }
}
