package ringout.solve.power;

import ringout.graph.Gap;

/**
 * A value the list does not give and an operating point was computed with all the same.
 *
 * @param gap what is missing, and of what
 * @param value what was taken instead, with its unit
 */
public record Assumption(Gap gap, String value) {}
