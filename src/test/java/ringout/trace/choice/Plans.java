package ringout.trace.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Question;
import ringout.trace.diagnosis.Suspect;

/** Problems with certain outcomes, each suspect a repair of its own. */
public final class Plans {
    private static final double DECADES = 2.5;
    private static final List<String> PASS_FAIL = List.of("pass", "fail");

    private Plans() {}

    /** Suspects by share, tests by minutes, and for each suspect the outcome of each test. */
    public static Problem of(double[] share, double[] minutes, int[][] outcome) {
        List<Suspect> suspects = IntStream.range(0, share.length)
                .mapToObj(s -> new Suspect("s" + s, share[s], "repair " + s, 0, List.of()))
                .toList();
        List<Question> questions = IntStream.range(0, minutes.length)
                .mapToObj(q -> Question.outside("t" + (q + 1), minutes[q], PASS_FAIL))
                .toList();
        return new Problem(
                suspects,
                questions,
                List.of(),
                0,
                q -> Arrays.stream(outcome)
                        .map(row -> row[q] == 0 ? new double[] {1, 0} : new double[] {0, 1})
                        .toArray(double[][]::new));
    }

    /**
     * The matrix of six states and five tests of unit cost by which sequential testing is explained (class of problem: Pattipati and
     * Alexandridis 1990; the matrix from memory, its optimum 2.18 derived again).
     */
    public static Problem sixStates() {
        return of(new double[] {.70, .01, .02, .10, .05, .12}, new double[] {1, 1, 1, 1, 1}, new int[][] {
            {0, 0, 0, 0, 0}, {0, 1, 0, 0, 1}, {0, 0, 1, 1, 0}, {1, 0, 0, 1, 1}, {1, 1, 0, 0, 0}, {1, 1, 1, 1, 0}
        });
    }

    /** One segment of a supply tree is open; volts at the end of any segment, from 1 to 12 minutes, tell whether it lies above. */
    public static Problem supplyTree(int segments, Random random) {
        int[][] dead = new int[segments][segments];
        for (int s = 0; s < segments; s++) {
            int parent = s == 0 ? -1 : random.nextInt(s);
            for (int fault = 0; fault < segments; fault++) {
                dead[fault][s] = fault == s || (parent >= 0 && dead[fault][parent] == 1) ? 1 : 0;
            }
        }
        return of(shares(segments, random), minutes(segments, 12, random), dead);
    }

    /** Outcomes by chance; as many tests as tell all suspects apart, at least as many as suspects, of 1 to so many minutes. */
    public static Problem byChance(int suspects, int longest, Random random) {
        List<int[]> tests = new ArrayList<>();
        while (tests.size() < suspects || !tellsAllApart(tests, suspects)) {
            tests.add(random.ints(suspects, 0, 2).toArray());
        }
        int[][] outcome = new int[suspects][tests.size()];
        for (int s = 0; s < suspects; s++) {
            for (int q = 0; q < tests.size(); q++) {
                outcome[s][q] = tests.get(q)[s];
            }
        }
        return of(shares(suspects, random), minutes(tests.size(), longest, random), outcome);
    }

    private static boolean tellsAllApart(List<int[]> tests, int suspects) {
        return IntStream.range(0, suspects)
                        .mapToObj(s -> tests.stream().map(test -> test[s]).toList())
                        .distinct()
                        .count()
                == suspects;
    }

    private static double[] shares(int count, Random random) {
        double[] weight =
                random.doubles(count).map(x -> Math.pow(10, -DECADES * x)).toArray();
        double sum = Arrays.stream(weight).sum();
        return Arrays.stream(weight).map(w -> w / sum).toArray();
    }

    private static double[] minutes(int count, int longest, Random random) {
        return IntStream.range(0, count)
                .mapToDouble(q -> 1 + random.nextInt(longest))
                .toArray();
    }
}
