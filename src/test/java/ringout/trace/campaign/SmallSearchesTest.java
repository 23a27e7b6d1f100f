package ringout.trace.campaign;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The plan by rollout against the best plan there is, on small parts of the searches of a sample; 200 of them by {@code HiddenFaults}. */
class SmallSearchesTest {
    private static final double EXACT = 1e-9;

    @Test
    void theRolloutCostsLittleMoreThanTheBestPlan() {
        SmallSearches searches = SmallSearches.on("linewarden", 8, 11);
        assertTrue(searches.kinds() > 4, searches::toString);
        assertTrue(searches.quantile(0, 0) >= 1 - EXACT, "nothing is better than the best: " + searches);
        assertTrue(searches.mean(1) <= 1.02 && searches.quantile(1, 0.95) <= 1.08, searches::toString);
        assertTrue(searches.mean(1) <= searches.mean(0) + EXACT, searches::toString);
    }
}
