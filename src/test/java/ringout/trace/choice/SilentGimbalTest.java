package ringout.trace.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringout.trace.choice.Advice.Ask;
import ringout.trace.choice.Advice.GoIn;
import ringout.trace.diagnosis.Belief;
import ringout.trace.diagnosis.Observed;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Reading;

/** The worked case of the trade handbook, from its printed table to its printed figures (common practice, no source). */
class SilentGimbalTest {
    private static final int READS_60 = 0;
    private static final int READS_120 = 1;

    private final Problem printed = SilentGimbal.printed(0);

    @Test
    void startsWithThePrintedUncertaintyAndRanking() {
        assertEquals(2.68, Belief.of(printed, Observed.NOTHING).bits(), 0.005);
        List<Option> ranking = Adviser.of(printed).ranking(Observed.NOTHING);
        double[][] rows = {{0, .253, .76, 3}, {4, .228, .91, 4}, {1, .126, .75, 6}, {7, .118, .47, 4}};
        for (int rank = 0; rank < rows.length; rank++) {
            Option option = ranking.get(rank);
            assertEquals((int) rows[rank][0], option.question());
            assertEquals(rows[rank][1], option.rate(), 0.0006);
            assertEquals(rows[rank][2], option.bits(), 0.006);
            assertEquals(rows[rank][3], option.minutes());
        }
        assertEquals(8, ranking.size());
    }

    @Test
    void reading120LeavesThreeBehindOneLidAndNoOutsideTestWorthIt() {
        Observed after = SilentGimbal.ohms(printed, READS_120);
        assertEquals("67 20 0 1 1 0 1 10", SilentGimbal.percent(Belief.of(printed, after)));
        assertEquals(0.035, Adviser.of(printed).ranking(after).get(0).rate(), 0.0005);
        GoIn in = assertInstanceOf(GoIn.class, Adviser.of(printed).next(after));
        assertEquals(List.of(SilentGimbal.LID), in.openings());
        assertEquals(12, in.minutes());
        assertEquals(
                List.of("replace W68", "move W68 to C2 of LOG", "replace LOG"),
                in.bring().stream().map(one -> one.action().name()).toList());
        assertEquals(0.67, in.bring().get(0).share(), 0.005);
    }

    @Test
    void onceTheLidIsOffTheLookIsFreeAndAsked() {
        Observed open = SilentGimbal.ohms(printed, READS_120).open(List.of(SilentGimbal.LID));
        Ask ask = assertInstanceOf(Ask.class, Adviser.of(printed).next(open));
        assertEquals(SilentGimbal.PLATE, ask.question());
        assertEquals(0, ask.minutes());
    }

    @Test
    void theNinthTestIsProposedBeforeTheLid() {
        for (double unknown : new double[] {0, Problem.USUAL_UNKNOWN}) {
            Problem nine = SilentGimbal.withVoltsOfWires(unknown);
            Ask ask = assertInstanceOf(Ask.class, Adviser.of(nine).next(SilentGimbal.ohms(nine, READS_120)));
            assertEquals(SilentGimbal.VOLTS_OF_WIRES, ask.question());
            assertEquals(
                    "move W68 to C2 of LOG",
                    ask.branches().get(0).leading().action().name());
            assertTrue(ask.branches().get(0).leading().share() > 0.8);
        }
    }

    @Test
    void reading60LeadsToTheSettings() {
        Observed after = SilentGimbal.ohms(printed, READS_60);
        assertEquals("4 1 9 26 23 9 28 0", SilentGimbal.percent(Belief.of(printed, after)));
        Ask ask = assertInstanceOf(Ask.class, Adviser.of(printed).next(after));
        assertEquals(SilentGimbal.SETTINGS, ask.question());
        assertEquals(4, ask.minutes());
    }

    @Test
    void somethingNotInTheModelIsKeptAndDoesNotTurnTheAdvice() {
        Problem open = SilentGimbal.printed(Problem.USUAL_UNKNOWN);
        assertEquals(0.05, Belief.of(open, Observed.NOTHING).unknown(), 1e-12);
        assertInstanceOf(GoIn.class, Adviser.of(open).next(SilentGimbal.ohms(open, READS_120)));
    }

    @Test
    void theTreeForPaperBeginsWithTheAdviceAndEndsInGoingInOrARepair() {
        TestTree tree = TestTree.grow(Adviser.of(printed), Observed.NOTHING, 3);
        Ask first = assertInstanceOf(Ask.class, tree.advice());
        assertEquals(Adviser.of(printed).next(Observed.NOTHING), first);
        double sum = tree.limbs().stream().mapToDouble(TestTree.Limb::chance).sum();
        assertEquals(1, sum, 1e-9);
        assertTrue(tree.size() >= 3, () -> "tests in the tree: " + tree.size());
        for (TestTree.Limb limb : tree.limbs()) {
            Observed then = Observed.NOTHING.with(printed, new Reading(first.question(), limb.outcome()));
            assertEquals(Adviser.of(printed).next(then), limb.then().advice());
        }
    }
}
