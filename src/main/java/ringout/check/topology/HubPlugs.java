package ringout.check.topology;

import java.util.ArrayList;
import java.util.List;
import ringout.check.form.Situation;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.Buses;

/** The plugs of a bus member that carry its pair, and what is on them. */
final class HubPlugs {
    private HubPlugs() {}

    /** Pins of a hub. */
    private static List<Integer> pins(Situation at, Buses buses, BusHub hub) {
        Wiring wiring = at.wiring();
        List<Integer> pins = new ArrayList<>();
        for (int pin = wiring.firstPin(hub.unit()); pin < wiring.endPin(hub.unit()); pin++) {
            if (buses.hubOfPin(pin).filter(hub::equals).isPresent()) {
                pins.add(pin);
            }
        }
        return pins;
    }

    /** Conductors at the pins of a hub, mated or not. */
    static List<Integer> wires(Situation at, Buses buses, BusHub hub) {
        List<Integer> wires = new ArrayList<>();
        for (int pin : pins(at, buses, hub)) {
            for (int wire : at.wiring().wiresAt(pin)) {
                wires.add(wire);
            }
        }
        return wires;
    }

    /** Plugs of a hub without any lead: numbers in the type. */
    static List<Integer> open(Situation at, Buses buses, BusHub hub) {
        return pins(at, buses, hub).stream()
                .map(at.wiring()::plugIndex)
                .distinct()
                .filter(plug -> !OpenPlugs.wired(at, hub.unit(), plug))
                .toList();
    }
}
