package ringout.trace.predict;

import java.util.BitSet;
import java.util.OptionalDouble;
import ringout.graph.Circuit;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.model.Rail;
import ringout.trace.candidate.Candidate;

/** Which units get too little voltage with a fault: below what their rail needs they restart, below half they are off. */
final class Sags {
    /** What a unit stands when its rail does not tell its least voltage. Judgement, no source. */
    private static final double USUAL_LEAST = 0.85;

    /** Part of its right voltage below which a unit is off and not restarting. Judgement, no source. */
    private static final double OFF = 0.5;

    private final Circuit circuit;
    private final SupplyVolts volts;

    Sags(Circuit circuit) {
        this.circuit = circuit;
        this.volts = SupplyVolts.of(circuit);
    }

    /**
     * Adds the units that get too little.
     *
     * @param restarting takes those that come and go
     * @param off takes those that are off
     */
    void find(Candidate candidate, BitSet restarting, BitSet off) {
        for (PlacedLoad load : PowerGraph.of(circuit).loads()) {
            OptionalDouble healthy = load.zero() < 0 ? OptionalDouble.empty() : volts.healthy(load.plus(), load.zero());
            if (circuit.aboard(load.unit()) && healthy.isPresent() && healthy.getAsDouble() > 0) {
                double right = healthy.getAsDouble();
                double now = volts.with(candidate, load.plus(), load.zero()).orElse(0);
                double needed = load.limits()
                        .map(Rail::minV)
                        .flatMap(least -> least.known())
                        .orElse(USUAL_LEAST * right);
                if (now < OFF * right) {
                    off.set(load.unit());
                } else if (now < Math.min(needed, 0.99 * right)) {
                    restarting.set(load.unit());
                }
            }
        }
    }
}
