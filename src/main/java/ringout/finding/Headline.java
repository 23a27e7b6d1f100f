package ringout.finding;

import java.util.List;

/**
 * One mistake: the finding to read, and what else it explains.
 *
 * @param finding the headline
 * @param alsoExplains the findings folded under it, most severe first
 * @param fingerprint of the rows it rests on, for a waiver; empty before it is taken
 */
public record Headline(Finding finding, List<Finding> alsoExplains, String fingerprint) {
    /** The same headline with the fingerprint of its rows. */
    public Headline taken(String print) {
        return new Headline(finding, alsoExplains, print);
    }
}
