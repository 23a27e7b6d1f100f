package ringout.trace.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ringout.trace.choice.Advice.Ask;
import ringout.trace.choice.Advice.GoIn;
import ringout.trace.choice.Advice.NothingFits;
import ringout.trace.choice.Advice.NothingSeparates;
import ringout.trace.choice.Advice.Repair;
import ringout.trace.choice.Advice.Why;
import ringout.trace.diagnosis.Observed;
import ringout.trace.diagnosis.Opening;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Question;
import ringout.trace.diagnosis.Reading;
import ringout.trace.diagnosis.Suspect;

/** Each way the advice can turn out, on problems small enough to see through. */
class AdviserTest {
    private static final double[] YES = {.97, .03};
    private static final double[] NO = {.03, .97};
    private static final double[] EITHER = {.5, .5};

    private static Suspect suspect(String name, double weight, double minutes, String... openings) {
        return new Suspect(name, weight, "mend " + name, minutes, List.of(openings));
    }

    private static Question question(String name, double hands, double reproof, String... openings) {
        return new Question(name, hands, reproof, 0, List.of(openings), List.of("yes", "no"), 0.03);
    }

    private static Problem problem(List<Suspect> suspects, List<Question> questions, double[][]... rows) {
        return new Problem(suspects, questions, List.of(new Opening("lid", 10)), Problem.USUAL_UNKNOWN, q -> rows[q]);
    }

    private static Advice next(Problem problem, Reading... readings) {
        Observed seen = Observed.NOTHING;
        for (Reading reading : readings) {
            seen = seen.with(problem, reading);
        }
        return Adviser.of(problem).next(seen);
    }

    @Test
    void aRepairThatCoversEnoughIsDone() {
        Problem two = problem(
                List.of(suspect("a", 1, 30), suspect("b", 1, 8)),
                List.of(question("t", 3, 0), question("u", 3, 0)),
                new double[][] {YES, NO},
                new double[][] {YES, NO});
        assertInstanceOf(Ask.class, next(two));
        Repair done = assertInstanceOf(Repair.class, next(two, new Reading(0, 1), new Reading(1, 1)));
        assertEquals("mend b", done.right().action().name());
        assertEquals(Why.COVERS, done.why());
        assertTrue(done.right().share() > 0.9);
        assertEquals(OptionalInt.empty(), done.repeatFirst());
    }

    @Test
    void aLongRepairThatHangsOnOneReadingIsReadAgainFirst() {
        Problem two = problem(
                List.of(suspect("a", 1, 30), suspect("b", 1, 8)),
                List.of(question("t", 3, 0), question("u", 3, 0)),
                new double[][] {{.999, .001}, {.001, .999}},
                new double[][] {EITHER, EITHER});
        Repair hangs = assertInstanceOf(Repair.class, next(two, new Reading(0, 0)));
        assertEquals("mend a", hangs.right().action().name());
        assertEquals(OptionalInt.of(0), hangs.repeatFirst());
        Repair again = assertInstanceOf(Repair.class, next(two, new Reading(0, 0), new Reading(0, 0)));
        assertEquals(OptionalInt.empty(), again.repeatFirst());
    }

    @Test
    void aLikelyRepairNoDearerThanATestIsDoneAtOnce() {
        double[][] apart = {YES, NO};
        List<Question> slow = List.of(question("t", 9, 0));
        Problem dear = problem(List.of(suspect("a", 4, 5), suspect("b", 1, 5)), slow, apart);
        assertEquals(
                Why.NO_DEARER_THAN_A_TEST,
                assertInstanceOf(Repair.class, next(dear)).why());
        Problem behind = problem(List.of(suspect("a", 4, 5, "lid"), suspect("b", 1, 5)), slow, apart);
        assertInstanceOf(Ask.class, next(behind));
    }

    @Test
    void suspectsOfOneRepairNeedNotBeToldApart() {
        Suspect one = new Suspect("pin 1", 1, "new lead", 5, List.of());
        Suspect other = new Suspect("pin 2", 1, "new lead", 5, List.of());
        Problem same = problem(List.of(one, other), List.of(question("t", 1, 0)), new double[][] {YES, NO});
        assertEquals(0.95, assertInstanceOf(Repair.class, next(same)).right().share(), 1e-12);
    }

    @Test
    void ofTwoEqualTestsTheCalmerIsMade() {
        double[][] apart = {YES, NO};
        Problem equal = problem(
                List.of(suspect("a", 1, 30), suspect("b", 1, 30)),
                List.of(question("unplug", 2, 2), question("probe", 4.3, 0)),
                apart,
                apart);
        assertEquals(1, assertInstanceOf(Ask.class, next(equal)).question());
        Problem slower = problem(
                List.of(suspect("a", 1, 30), suspect("b", 1, 30)),
                List.of(question("unplug", 2, 2), question("probe", 6, 0)),
                apart,
                apart);
        assertEquals(0, assertInstanceOf(Ask.class, next(slower)).question());
    }

    @Test
    void whatNoTestSeparatesBehindOneLidIsGoneInFor() {
        Problem inside = problem(
                List.of(suspect("a", 1, 5, "lid"), suspect("b", 2, 5, "lid")),
                List.of(question("t", 1, 0)),
                new double[][] {YES, YES});
        GoIn in = assertInstanceOf(GoIn.class, next(inside));
        assertEquals(List.of("lid"), in.openings());
        assertEquals(10, in.minutes());
        assertEquals(
                List.of("mend b", "mend a"),
                in.bring().stream().map(one -> one.action().name()).toList());
        Advice open = Adviser.of(inside).next(Observed.NOTHING.open(List.of("lid")));
        assertInstanceOf(NothingSeparates.class, open);
    }

    @Test
    void whatNoTestSeparatesAtAllIsMendedInTurn() {
        Problem apart = problem(
                List.of(suspect("a", 3, 30), suspect("b", 2, 2)), List.of(question("t", 1, 0)), new double[][] {YES, YES
                });
        NothingSeparates turn = assertInstanceOf(NothingSeparates.class, next(apart));
        assertEquals(
                List.of("mend b", "mend a"),
                turn.inTurn().stream().map(one -> one.action().name()).toList());
    }

    @Test
    void readingsThatFitNothingAreReadAgainAndThenSaidToFitNothing() {
        int tests = 6;
        double[][][] rows = new double[tests][][];
        Arrays.fill(rows, new double[][] {{.99, .01}, {.99, .01}});
        Problem all = problem(
                List.of(suspect("a", 1, 5), suspect("b", 1, 5)),
                IntStream.range(0, tests).mapToObj(q -> question("t" + q, 2, 0)).toList(),
                rows);
        Ask again = assertInstanceOf(Ask.class, next(all, new Reading(0, 1)));
        assertEquals(0, again.question());
        assertTrue(again.again());
        Advice still = next(all, new Reading(0, 1), new Reading(0, 1), new Reading(1, 1), new Reading(1, 1));
        NothingFits none = assertInstanceOf(NothingFits.class, still);
        assertTrue(none.unknown() > 0.9);
        assertFalse(none.nearest().get(0).isComplete());
    }

    /** Either test alone says nothing of the repair; both together settle it. */
    @Test
    void testsThatTellOnlyTogetherAreMade() {
        List<Suspect> four = IntStream.range(0, 4)
                .mapToObj(s -> new Suspect("s" + s, 1, s == 0 || s == 3 ? "even" : "odd", 30, List.of()))
                .toList();
        Problem both = problem(
                four,
                List.of(question("high", 2, 0), question("low", 2, 0)),
                new double[][] {NO, NO, YES, YES},
                new double[][] {NO, YES, NO, YES});
        assertInstanceOf(Ask.class, next(both));
        Problem one = problem(four, List.of(question("high", 2, 0)), new double[][] {NO, NO, YES, YES});
        assertInstanceOf(NothingSeparates.class, next(one));
    }
}
