/**
 * The operating point of a direct-current circuit on plain indices: sources with internal resistance, conductors, loads
 * of constant current, constant power or resistance, diodes and regulators.
 *
 * <p>Nothing here knows an aircraft. Units are volts, amperes, ohms and watts. An answer is a solution with the figures
 * that verify it, or one of the reasons why there is none; a negative voltage across a working load is never an answer.
 */
@NullMarked
package ringout.solve.dc;

import org.jspecify.annotations.NullMarked;
