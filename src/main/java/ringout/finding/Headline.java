package ringout.finding;

import java.util.List;

/**
 * One mistake: the finding to read, and what else it explains.
 *
 * @param finding the headline
 * @param alsoExplains the findings folded under it, most severe first
 */
public record Headline(Finding finding, List<Finding> alsoExplains) {}
