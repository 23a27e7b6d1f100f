package ringout.solve.meter;

import java.util.List;

/**
 * A reading other than the expected one and the faults that make it. Faults whose readings a meter cannot tell apart are
 * together.
 *
 * @param first the smallest of their readings
 * @param last the largest of them
 * @param least smallest value within tolerances in ohm or V; infinite when there is no number
 * @param most largest value within tolerances in ohm or V; infinite when there is no number
 * @param faults the faults, one of them at a time
 */
public record Meaning(Reading first, Reading last, double least, double most, List<Fault> faults) {}
