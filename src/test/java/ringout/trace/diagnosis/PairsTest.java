package ringout.trace.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Two lamps dead of four, each with its own lead and none in common: no single fault does that. */
class PairsTest {
    private static final double WRONG = 0.02;

    private final Problem problem = new Problem(
            IntStream.range(0, 4)
                    .mapToObj(s -> new Suspect("lead " + s + " open", s == 3 ? 0.5 : 1, "lead " + s, 5, List.of()))
                    .toList(),
            IntStream.range(0, 4)
                    .mapToObj(q -> Question.outside("lamp " + q, 1, List.of("lit", "dark")))
                    .toList(),
            List.of(),
            Problem.USUAL_UNKNOWN,
            q -> IntStream.range(0, 4).mapToObj(s -> lamp(s == q)).toArray(double[][]::new));

    private static double[] lamp(boolean dark) {
        return dark ? new double[] {WRONG, 1 - WRONG} : new double[] {1 - WRONG, WRONG};
    }

    private static List<Reading> dark(int... lamps) {
        return IntStream.range(0, 4)
                .mapToObj(q -> new Reading(q, IntStream.of(lamps).anyMatch(lamp -> lamp == q) ? 1 : 0))
                .toList();
    }

    @Test
    void noPairIsOfferedWhileASingleFaultExplainsAll() {
        assertEquals(
                List.of(),
                Pairs.of(problem, dark(1), (q, a, b) -> lamp(a == q || b == q)).pairs());
    }

    @Test
    void thePairThatExplainsAllIsOffered() {
        Pairs pairs = Pairs.of(problem, dark(0, 2), (q, a, b) -> lamp(a == q || b == q));
        assertEquals(List.of(new Pairs.Pair(0, 2, 1)), pairs.pairs());
        assertEquals(
                List.of(0, 2),
                pairs.atLeastOneOf().stream().map(Pairs.Member::suspect).toList());
    }

    @Test
    void pairsThatTheReadingsLeaveOpenShareByPriorsAndByACauseInCommon() {
        // Lamps 2 and 3 not read: lead 0 and any of 1 is settled, so 0 with 1 only; with lamp 1 unread 0 may pair with
        // 1, 2 or 3.
        List<Reading> readings = List.of(new Reading(0, 1), new Reading(0, 1), new Reading(1, 1));
        PairTable wet = new PairTable() {
            @Override
            public double[] row(int question, int one, int other) {
                return question == 1 ? lamp(other >= 1) : lamp(one == 0);
            }

            @Override
            public double together(int one, int other) {
                return other == 3 ? 4 : 1;
            }
        };
        Pairs pairs = Pairs.of(problem, readings, wet);
        // Weights 1 x 1, 1 x 1, 1 x 0.5 x 4.
        assertEquals(3, pairs.pairs().size());
        assertEquals(3, pairs.pairs().get(0).other());
        assertEquals(0.5, pairs.pairs().get(0).share(), 1e-12);
        assertEquals(1, pairs.atLeastOneOf().get(0).share(), 1e-12);
        assertTrue(pairs.atLeastOneOf().stream().skip(1).allMatch(one -> one.share() <= 0.5));
    }
}
