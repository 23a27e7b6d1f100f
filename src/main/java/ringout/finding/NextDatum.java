package ringout.finding;

import java.util.List;

/**
 * A datum worth getting next, or a few of one kind that are got together.
 *
 * @param missing the datum in trade words
 * @param how the cheapest way to get it
 * @param minutes how long that takes, when what was ranked before it is known already
 * @param verdicts number of things that could not be decided and then can be
 * @param codes the checks that decide them, in the order of the catalogue
 * @param weight the verdicts, each weighted by the severity of its check
 */
public record NextDatum(String missing, String how, int minutes, int verdicts, List<String> codes, int weight) {
    /** Keeps its own copy. */
    public NextDatum {
        codes = List.copyOf(codes);
    }
}
