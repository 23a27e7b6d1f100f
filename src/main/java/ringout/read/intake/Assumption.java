package ringout.read.intake;

import ringout.text.Span;

/**
 * Something that was taken as usual because the list does not say it.
 *
 * @param at the cell or row it was taken for
 * @param what what was taken
 * @param why what made it likely
 */
public record Assumption(Span at, String what, String why) {}
