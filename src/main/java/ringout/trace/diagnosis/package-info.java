/**
 * What is wrong, weighed: suspects with priors, tests with the chance of each outcome, readings, and what they leave of the
 * suspects. Knows nothing of aircraft; everything is a table of numbers between 0 and 1.
 */
@NullMarked
package ringout.trace.diagnosis;

import org.jspecify.annotations.NullMarked;
