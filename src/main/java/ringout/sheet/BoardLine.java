package ringout.sheet;

/**
 * Voltage at a board or input fed by packs, at the average of all loads.
 *
 * @param name the unit, and its rail when it has several
 * @param volts in V
 */
public record BoardLine(String name, double volts) {}
