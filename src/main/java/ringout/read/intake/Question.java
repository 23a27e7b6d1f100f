package ringout.read.intake;

import ringout.text.Span;

/**
 * Something only the owner of a list can tell.
 *
 * @param at the cell it comes from
 * @param about plug or unit it is about; empty when it is what the cell itself should say
 * @param ask the question
 * @param answers what the answer may be
 * @param blocking whether there is no aircraft without the answer
 */
public record Question(Span at, String about, String ask, String answers, boolean blocking) {}
