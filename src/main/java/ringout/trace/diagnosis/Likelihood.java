package ringout.trace.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How well readings agree with suspects. */
final class Likelihood {
    private Likelihood() {}

    /** Outcomes by question, questions in the order first read. */
    static Map<Integer, List<Integer>> byQuestion(List<Reading> readings) {
        Map<Integer, List<Integer>> series = new LinkedHashMap<>();
        for (Reading reading : readings) {
            series.computeIfAbsent(reading.question(), q -> new ArrayList<>()).add(reading.outcome());
        }
        return series;
    }

    /** Likelihood of all readings of one question, for a suspect. */
    static double ofSeries(Problem problem, int question, List<Integer> outcomes, int suspect) {
        Rows rows = problem.rows(question);
        if (rows.isFree(suspect)) {
            return 1;
        }
        if (outcomes.size() == 1) {
            return rows.likelihood(suspect, outcomes.get(0));
        }
        return ofSeries(problem.questions().get(question), row(rows, suspect), outcomes);
    }

    /** Likelihood of all readings of one question, for a row of chances. */
    static double ofSeries(Question question, double[] row, List<Integer> outcomes) {
        return Repeats.together(row, question.readingError(), outcomes);
    }

    static double[] row(Rows rows, int suspect) {
        double[] row = new double[rows.outcomes()];
        for (int o = 0; o < row.length; o++) {
            row[o] = rows.likelihood(suspect, o);
        }
        return row;
    }
}
