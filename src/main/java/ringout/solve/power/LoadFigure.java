package ringout.solve.power;

import ringout.graph.power.PlacedLoad;
import ringout.solve.dc.ElementState;

/**
 * What one load gets.
 *
 * @param load the load and where it stands
 * @param volts voltage across it in V; 0 when none reaches it
 * @param amps current it takes in A
 * @param state whether it works, has no voltage, or has it the wrong way round
 */
public record LoadFigure(PlacedLoad load, double volts, double amps, ElementState state) {
    /** {@return the power it takes in W} */
    public double watts() {
        return volts * amps;
    }

    /** {@return whether it has voltage the right way round} */
    public boolean fed() {
        return state == ElementState.WORKING;
    }
}
