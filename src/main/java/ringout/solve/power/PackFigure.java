package ringout.solve.power;

import ringout.graph.power.PowerSource;

/**
 * What one pack gives.
 *
 * @param source the pack
 * @param openVolts its voltage without current in V
 * @param volts voltage at its poles in V
 * @param amps current out of its plus in A; negative when another pack charges it
 * @param heat what becomes heat inside in W
 */
public record PackFigure(PowerSource source, double openVolts, double volts, double amps, double heat) {
    /** {@return what it loses under load in V} */
    public double sag() {
        return openVolts - volts;
    }
}
