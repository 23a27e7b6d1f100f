package ringout.trace.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ringout.trace.diagnosis.Problem;

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
}
