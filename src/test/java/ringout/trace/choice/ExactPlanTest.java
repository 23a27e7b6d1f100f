package ringout.trace.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ringout.trace.diagnosis.Opening;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Question;
import ringout.trace.diagnosis.Suspect;

/** Plans by rule against the best there is. */
class ExactPlanTest {
    private static final double EXACT = 1e-9;

    /** Matrix from memory, figures derived from it: optimum 2.18, information per minute 2.86, rollout 2.18, Huffman 1.59, 1.454873 bit. */
    @Test
    void theMatrixOfSixStates() {
        Problem problem = Plans.sixStates();
        ExactPlan plan = new ExactPlan(problem, Rules.TO_THE_END);
        assertEquals(2.18, plan.optimum(), EXACT);
        assertEquals(2.86, plan.byLevel(0), EXACT);
        assertEquals(2.18, plan.byLevel(1), EXACT);
        assertEquals(1.454873, LowerBounds.entropy(problem), 5e-7);
        List<Double> shares = IntStream.range(0, 6).mapToObj(problem::prior).toList();
        assertEquals(1.59, LowerBounds.huffman(shares), EXACT);
    }

    /** Two hundred problems of four families; a level looks ahead by the one below it and so is never worse. */
    @Test
    void aRolloutStaysNearTheOptimumAndIsNeverWorseThanItsBase() {
        PlanRatios ratios = PlanRatios.of("all", PlanRatios.FAMILIES, 50);
        assertEquals(200, ratios.ratios().size());
        assertTrue(ratios.mean(1) <= 1.02, ratios::table);
        assertTrue(ratios.quantile(1, 0.95) <= 1.08, ratios::table);
        assertTrue(ratios.quantile(1, 1) <= 1.25, ratios::table);
        assertTrue(ratios.mean(2) <= 1.005, ratios::table);
        assertTrue(ratios.quantile(2, 1) <= 1.10, ratios::table);
        for (double[] one : ratios.ratios()) {
            assertTrue(one[1] <= one[0] + EXACT, ratios::table);
            assertTrue(one[2] <= one[1] + EXACT, ratios::table);
            assertTrue(one[2] >= 1 - EXACT, ratios::table);
        }
        assertTrue(ratios.bounds().stream().allMatch(bound -> bound <= 1 + EXACT), ratios::table);
        assertTrue(ratios.mean(0) > 1.03, "problems too easy to show a difference");
    }

    /**
     * A lid of 10 minutes is paid for once. Two tests of 2 minutes behind it: 12 for the first, and 2 for the second half of the time, 13 in all. The
     * first made outside in 8 minutes tells more a minute but still needs the lid half of the time: 8 and half of 12.
     */
    @Test
    void anOpeningIsPaidForOnce() {
        double[][] first = {{1, 0}, {0, 1}, {0, 1}};
        double[][] second = {{1, 0}, {1, 0}, {0, 1}};
        double[][][] rows = {first, second, first};
        List<Suspect> suspects = IntStream.range(0, 3)
                .mapToObj(s -> new Suspect("s" + s, s == 0 ? 2 : 1, "repair " + s, 0, List.of()))
                .toList();
        List<String> lid = List.of("lid");
        List<String> two = List.of("pass", "fail");
        List<Question> questions = List.of(
                new Question("first inside", 2, 0, 0, lid, two, 0.04),
                new Question("second inside", 2, 0, 0, lid, two, 0.04),
                new Question("first outside", 8, 0, 0, List.of(), two, 0.04));
        Problem problem = new Problem(suspects, questions, List.of(new Opening("lid", 10)), 0, q -> rows[q]);
        ExactPlan plan = new ExactPlan(problem, Rules.TO_THE_END);
        assertEquals(13, plan.optimum(), EXACT);
        assertEquals(14, plan.byLevel(0), EXACT);
        assertEquals(13, plan.byLevel(1), EXACT);
    }

    /** With outcomes that are not certain: the eight suspects of the silent gimbal, every plan stopping at 90 %. */
    @Test
    void uncertainOutcomesHaveABestPlanToo() {
        ExactPlan plan = new ExactPlan(SilentGimbal.printed(0), new Rules(0.9, 1, 0.03, 0));
        double optimum = plan.optimum();
        assertTrue(plan.byLevel(1) <= plan.byLevel(0) + EXACT);
        assertTrue(optimum <= plan.byLevel(1) + EXACT);
        assertEquals(1, plan.byLevel(1) / optimum, 0.05, () -> optimum + " " + plan.byLevel(0) + " " + plan.byLevel(1));
        assertTrue(plan.byLevel(0) / optimum > 1.05, () -> "no difference to show: " + plan.byLevel(0) / optimum);
    }
}
