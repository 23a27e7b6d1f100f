package ringout.solve.power;

import ringout.graph.power.PowerSource;
import ringout.solve.dc.ElementState;

/**
 * What one regulator does.
 *
 * @param source the regulator
 * @param inVolts voltage at its input in V; 0 when none reaches it
 * @param inAmps current into its input in A
 * @param outVolts voltage at its output in V
 * @param outAmps current out of its output in A
 * @param heat what becomes heat inside in W
 * @param state whether it regulates, is unfed, held up by another source, or follows a low input
 */
public record RegulatorFigure(
        PowerSource source,
        double inVolts,
        double inAmps,
        double outVolts,
        double outAmps,
        double heat,
        ElementState state) {}
