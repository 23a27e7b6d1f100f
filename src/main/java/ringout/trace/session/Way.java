package ringout.trace.session;

import java.util.ArrayList;
import java.util.List;
import ringout.graph.Circuit;
import ringout.graph.Trail;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.trace.predict.SignalWay;

/**
 * A way that a silent unit hangs on.
 *
 * @param unit the unit
 * @param power whether power comes along it; else signals
 * @param from name of the source, or of the controller's end
 * @param trail pins, leads and parts in order
 */
public record Way(String unit, boolean power, String from, Trail trail) {
    /** The ways of a unit: of its signals from the controller, then of its power from the sources next to it. */
    public static List<Way> of(Circuit circuit, String unit) {
        List<Way> ways = new ArrayList<>();
        circuit.wiring().directory().find(unit).ifPresent(number -> {
            for (Trail trail : SignalWay.to(circuit, number)) {
                ways.add(new Way(unit, false, trail.steps().get(0).name(), trail));
            }
            PowerGraph power = PowerGraph.of(circuit);
            for (Consumer consumer : power.consumersOf(number)) {
                for (PowerSource source : power.feeding(consumer.plus())) {
                    power.trail(source.plus(), consumer.plus())
                            .ifPresent(trail -> ways.add(new Way(unit, true, source.name(), trail)));
                }
            }
        });
        return List.copyOf(ways);
    }
}
