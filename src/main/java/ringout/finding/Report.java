package ringout.finding;

import java.util.List;

/**
 * The outcome of a review.
 *
 * @param states states looked at
 * @param headlines one a mistake, most severe first
 * @param cannotTell what could not be decided
 * @param next the data worth getting next, the best first
 * @param waived headlines accepted by a waiver
 * @param lapsed waivers that do not hold
 * @param passed number of checks that could decide and found nothing
 * @param notApplicable number of checks with nothing to look at
 * @param trials wrong ways to plug and what comes of them, in the first state that is flown
 */
public record Report(
        List<String> states,
        List<Headline> headlines,
        List<CannotTell> cannotTell,
        List<NextDatum> next,
        List<Headline> waived,
        List<LapsedWaiver> lapsed,
        int passed,
        int notApplicable,
        List<Trial> trials) {
    /** A review in which nothing was plugged wrongly. */
    public Report(
            List<String> states,
            List<Headline> headlines,
            List<CannotTell> cannotTell,
            List<NextDatum> next,
            List<Headline> waived,
            List<LapsedWaiver> lapsed,
            int passed,
            int notApplicable) {
        this(states, headlines, cannotTell, next, waived, lapsed, passed, notApplicable, List.of());
    }
}
