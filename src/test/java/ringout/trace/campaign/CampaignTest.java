package ringout.trace.campaign;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Some hidden faults on the small sample; a thousand on the large ones by {@code HiddenFaults}. */
class CampaignTest {
    private static final int FAULTS = 40;

    @Test
    void theAdviceLeadsToTheRightRepair() {
        Campaign campaign = Campaign.on("starter");
        Tally tally = campaign.run(FAULTS, 3);
        assertEquals(FAULTS, tally.runs().size());
        assertTrue(tally.rightAtStop() >= 0.85, tally::toString);
        assertTrue(tally.cured() >= 0.95, tally::toString);
        assertTrue(tally.stable() >= 0.85, tally::toString);
        assertTrue(Math.abs(tally.overclaim()) <= 0.1, tally::toString);
    }
}
