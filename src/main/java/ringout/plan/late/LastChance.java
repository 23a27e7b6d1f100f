package ringout.plan.late;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a lid hides for the first time: proved now, or after the lid came off again.
 *
 * @param cover name of the lid
 * @param stage number of the stage that closes it; 0 when none does
 * @param openMinutes minutes to take it off and put it on again, with all that lies over it; empty when not told
 * @param untold lids on the way whose minutes are not told
 * @param joints plugs and joints, in the order of the list
 * @param settings what is set by hand on units under it, in words
 * @param open what is not known of it, so that the list may be short: in words, each a thing to be told
 */
public record LastChance(
        String cover,
        int stage,
        OptionalDouble openMinutes,
        List<String> untold,
        List<Joint> joints,
        List<String> settings,
        List<String> open) {
    /**
     * A plug or joint.
     *
     * @param name its name
     * @param leads leads on it
     * @param proofs tasks that prove it before the lid, in words with their step
     * @param photos whether a photo is on record or asked for by the plan, in words
     * @param outside far ends of all its leads, where each is in reach with all lids on; empty when one is hidden too
     * @param lateMinutes what it costs to find it wrong after the lid: opening, its own test again, and of what the opening disturbs
     * @param wrong probability that it is wrong, 0 to 1; judgement
     */
    public record Joint(
            String name,
            List<String> leads,
            List<String> proofs,
            List<String> photos,
            String outside,
            OptionalDouble lateMinutes,
            double wrong) {}
}
