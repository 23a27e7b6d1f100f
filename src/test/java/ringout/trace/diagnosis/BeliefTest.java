package ringout.trace.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Posteriors worked out by hand. */
class BeliefTest {
    private static final double EXACT = 1e-12;
    private static final double[][] ROWS = {{.96, .04}, {.04, .96}, {.5, .5}};

    private static Problem problem(double unknown, double[][] rows) {
        List<Suspect> suspects = List.of(suspect("a", 3, "mend"), suspect("b", 1, "swap"), suspect("c", 1, "swap"));
        List<Question> questions = List.of(
                Question.outside("one", 2, List.of("yes", "no")), Question.outside("two", 2, List.of("yes", "no")));
        return new Problem(suspects, questions, List.of(), unknown, q -> rows);
    }

    private static Suspect suspect(String name, double weight, String repair) {
        return new Suspect(name, weight, repair, 5, List.of());
    }

    private static Belief read(Problem problem, int... questionsReadYes) {
        Observed seen = Observed.NOTHING;
        for (int q : questionsReadYes) {
            seen = seen.with(problem, new Reading(q, 0));
        }
        return Belief.of(problem, seen);
    }

    @Test
    void oneReadingByTheRuleOfBayes() {
        // 0.57 : 0.19 : 0.19 : 0.05 times 0.96 : 0.04 : 0.5 : 0.5
        double[] joint = {.57 * .96, .19 * .04, .19 * .5, .05 * .5};
        double sum = joint[0] + joint[1] + joint[2] + joint[3];
        Belief belief = read(problem(0.05, ROWS), 0);
        for (int s = 0; s < joint.length; s++) {
            assertEquals(joint[s] / sum, belief.share(s), EXACT);
        }
        assertEquals(joint[3] / sum, belief.unknown(), EXACT);
        assertEquals("mend", belief.repairs().get(0).action().name());
        assertEquals((joint[1] + joint[2]) / sum, belief.repairs().get(1).share(), EXACT);
        assertEquals(List.of(0, 2, 3, 1), belief.ranked());
    }

    /** A repair that did not cure leaves of what it cures only what is left when one in so many repairs is badly done. */
    @Test
    void aRepairInVainSpeaksAgainstAllThatItCures() {
        Problem problem = problem(0.05, ROWS);
        RepairAction mend = problem.repairs().get(0);
        Observed seen = Observed.NOTHING.inVain(mend);
        assertEquals(
                List.of("mend"),
                seen.with(problem, new Reading(0, 1)).open(List.of("lid")).vain());
        Belief belief = Belief.of(problem, seen);
        double[] joint = {.57 * Belief.BOTCHED, .19, .19, .05};
        double sum = joint[0] + joint[1] + joint[2] + joint[3];
        for (int s = 0; s < joint.length; s++) {
            assertEquals(joint[s] / sum, belief.share(s), EXACT);
        }
        assertEquals("swap", belief.repairs().get(0).action().name());
        // twice in vain says no more than that it is not this
        assertTrue(Belief.of(problem, seen.inVain(mend)).share(0) < belief.share(0));
    }

    @Test
    void repeatsTakeAwayTheDoubtOfTheReadingNotOfTheFault() {
        Problem problem = problem(0, ROWS);
        double once = read(problem, 0).share(0);
        double twice = read(problem, 0, 0).share(0);
        double often = read(problem, 0, 0, 0, 0, 0, 0, 0, 0).share(0);
        double independent = read(problem, 0, 1).share(0);
        assertTrue(once < twice && twice < often, once + " " + twice + " " + often);
        assertTrue(twice < independent, twice + " " + independent);
        // Knowing for certain that the point shows "yes": a 1, b 0, c 0.5 of the prior 0.6, 0.2, 0.2.
        assertEquals(0.6 / 0.7, often, 1e-6);
        assertTrue(often < 0.6 / 0.7);
    }

    @Test
    void aSecondReadingThatDisagreesUndoesTheFirst() {
        Problem problem = problem(0, ROWS);
        Observed seen = Observed.NOTHING.with(problem, new Reading(0, 0)).with(problem, new Reading(0, 1));
        assertEquals(0.6, Belief.of(problem, seen).share(0), 1e-9);
        assertEquals(0.2, Belief.of(problem, seen).share(1), 1e-9);
    }

    @Test
    void chancesOfARepeatSumToOne() {
        Rows again = read(problem(0.05, ROWS), 0).rowsOf(0);
        for (int s = 0; s < again.suspects(); s++) {
            assertEquals(1, again.likelihood(s, 0) + again.likelihood(s, 1), EXACT);
        }
        // Having read "yes" of a point that a fault leaves open, "yes" is next but for a misreading in either: 0.96^2 +
        // 0.04^2.
        assertEquals(.96 * .96 + .04 * .04, again.likelihood(2, 0), EXACT);
    }

    @Test
    void readingsThatNoSuspectAllowsAreSaidToContradict() {
        Problem certain = problem(0, new double[][] {{1, 0}, {1, 0}, {1, 0}});
        Belief belief = Belief.of(certain, Observed.NOTHING.with(certain, new Reading(0, 1)));
        assertTrue(belief.isContradicted());
        assertFalse(read(certain, 0).isContradicted());
        Problem open = problem(0.05, new double[][] {{1, 0}, {1, 0}, {1, 0}});
        assertEquals(
                1,
                Belief.of(open, Observed.NOTHING.with(open, new Reading(0, 1))).unknown(),
                EXACT);
    }

    @Test
    void tablesThatAreNoChancesAreRefusedWithTheirPlace() {
        Problem bad = problem(0, new double[][] {{.96, .04}, {.5, .6}, {.5, .5}});
        String message =
                assertThrows(IllegalArgumentException.class, () -> bad.rows(0)).getMessage();
        assertTrue(message.startsWith("one, suspect 1: chances sum to 1.1"), message);
        Problem few = problem(0, new double[][] {{.96, .04}});
        assertThrows(IllegalArgumentException.class, () -> few.rows(0));
    }

    @Test
    void aRowIsFetchedOnceAndOnlyWhenNeeded() {
        int[] asked = new int[2];
        Problem lazy = new Problem(
                List.of(suspect("a", 1, "mend"), suspect("b", 1, "swap")),
                List.of(
                        Question.outside("one", 2, List.of("yes", "no")),
                        Question.outside("two", 2, List.of("yes", "no"))),
                List.of(),
                0.05,
                q -> {
                    asked[q]++;
                    return new double[][] {{.9, .1}, {.1, .9}};
                });
        read(lazy, 0);
        read(lazy, 0, 0);
        assertEquals(List.of(1, 0), List.of(asked[0], asked[1]));
    }

    @Test
    void whatASuspectFailsToExplainIsNamed() {
        Problem problem = problem(0.05, new double[][] {{.98, .02}, {.02, .98}, {.5, .5}});
        List<Reading> readings = List.of(new Reading(0, 1), new Reading(1, 0));
        Explanation a = Explanation.of(problem, readings, 0);
        assertEquals(
                List.of(new Reading(0, 1)),
                a.unexplained().stream().map(Explanation.Misfit::reading).toList());
        assertEquals(0.02, a.unexplained().get(0).likelihood(), EXACT);
        assertTrue(Explanation.of(problem, readings, 2).isComplete());
        assertTrue(Explanation.isSingle(problem, readings));
    }

    @Test
    void whatTheUnknownShowsMayBeTold() {
        Problem told = problem(0.05, new double[][] {{.96, .04}, {.04, .96}, {.5, .5}, {.1, .9}});
        double[] joint = {.57 * .96, .19 * .04, .19 * .5, .05 * .1};
        assertEquals(
                joint[3] / (joint[0] + joint[1] + joint[2] + joint[3]),
                read(told, 0).unknown(),
                EXACT);
    }
}
