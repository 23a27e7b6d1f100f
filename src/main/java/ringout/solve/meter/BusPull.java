package ringout.solve.meter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;

/** What pulling a plug does to the readings between H and L at all other plugs of the buses, power off. */
public final class BusPull {
    /**
     * A reading that a meter can tell from the one before.
     *
     * @param plug where it is taken, UNIT-PLUG
     * @param before with the plug mated
     * @param after with it pulled
     */
    public record Effect(String plug, Reading before, Reading after) {}

    private final Circuit circuit;
    private final MeterNetwork network;
    private final Map<BusSpots.Place, Reading> mated = new LinkedHashMap<>();

    private BusPull(Circuit circuit) {
        this.circuit = circuit;
        network = MeterNetwork.of(circuit);
        for (BusSegment segment : Buses.of(circuit).segments()) {
            if (segment.wired()) {
                BusSpots.of(circuit, segment)
                        .forEach(place -> mated.put(place, network.reading(place.highPin(), place.lowPin())));
            }
        }
    }

    /** {@return the readings of all buses with everything mated as the state says} */
    public static BusPull of(Circuit circuit) {
        return new BusPull(circuit);
    }

    /** {@return by plug, the reading with everything mated as the state says} */
    public Map<String, Reading> mated() {
        Map<String, Reading> named = new LinkedHashMap<>();
        mated.forEach((place, reading) -> named.putIfAbsent(place.name(), reading));
        return named;
    }

    /** {@return what changes when a plug is pulled, at the plugs that stay mated} */
    public List<Effect> effects(int unit, int plug) {
        List<Change> opened = opened(unit, plug);
        List<Effect> effects = new ArrayList<>();
        if (opened.isEmpty()) {
            return effects;
        }
        mated.forEach((place, before) -> {
            boolean itself = circuit.wiring().unitOf(place.highPin()) == unit
                    && circuit.wiring().plugIndex(place.highPin()) == plug;
            Reading after = network.reading(place.highPin(), place.lowPin(), opened);
            if (!itself && !Telling.same(before, after)) {
                effects.add(new Effect(place.name(), before, after));
            }
        });
        return effects;
    }

    private List<Change> opened(int unit, int plug) {
        Wiring wiring = circuit.wiring();
        List<Change> opened = new ArrayList<>();
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            for (int w : wiring.wiresAt(pin)) {
                Wire wire = wiring.wires().get(w);
                if (circuit.mated(wire)) {
                    opened.add(new Change.Opened(WireElements.of(circuit).contact(wire, pin)));
                }
            }
        }
        return opened;
    }
}
