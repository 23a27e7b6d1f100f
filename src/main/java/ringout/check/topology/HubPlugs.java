package ringout.check.topology;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Situation;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.Buses;
import ringout.model.UnitKind;

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

    /** The tokens of open sockets on the pieces of bus a unit is on, unless a flight controller is on them too. */
    static Set<String> openBeyond(Situation at, int unit) {
        Buses buses = Buses.of(at.circuit());
        Set<String> causes = new TreeSet<>();
        for (BusHub own : buses.hubs()) {
            if (own.unit() == unit) {
                List<BusHub> piece = piece(buses, own);
                if (piece.stream()
                        .noneMatch(hub -> at.directory().type(hub.unit()).kind().is(UnitKind.CONTROLLER))) {
                    piece.forEach(hub ->
                            open(at, buses, hub).forEach(plug -> causes.add(OpenPlugs.cause(at, hub.unit(), plug))));
                }
            }
        }
        return causes;
    }

    /** All places of the piece of bus a place is on, splices too. */
    static List<BusHub> piece(Buses buses, BusHub own) {
        int segment = buses.segment(own).index();
        return buses.hubs().stream()
                .filter(hub -> buses.segment(hub).index() == segment)
                .toList();
    }
}
