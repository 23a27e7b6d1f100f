package ringout.trace.diagnosis;

/**
 * What a test showed.
 *
 * @param question number of the question in the problem
 * @param outcome number of the outcome of that question
 */
public record Reading(int question, int outcome) {}
