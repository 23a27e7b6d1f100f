package ringout.solve.meter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusLink;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.bus.Trunk;
import ringout.model.PinRole;

/** The plugs of a bus where a meter can be put between the legs, in the order of the trunk, then of its branches. */
final class BusSpots {
    /**
     * A plug.
     *
     * @param name UNIT-PLUG
     * @param high conductor at its H pin
     * @param low conductor at its L pin
     * @param highPin vertex of the H pin
     * @param lowPin vertex of the L pin
     */
    record Place(String name, Wire high, Wire low, int highPin, int lowPin) {}

    private final Circuit circuit;
    private final Wiring wiring;
    private final Buses buses;
    private final Map<Integer, Place> places = new LinkedHashMap<>();

    private BusSpots(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.buses = Buses.of(circuit);
    }

    static List<Place> of(Circuit circuit, BusSegment segment) {
        BusSpots found = new BusSpots(circuit);
        Trunk trunk = found.buses.trunk(segment);
        Set<Integer> hubs = new LinkedHashSet<>(trunk.hubs());
        List<Integer> links = new ArrayList<>(trunk.links());
        for (Trunk.Branch branch : trunk.branches()) {
            hubs.addAll(branch.hubs());
            links.addAll(branch.all());
        }
        links.addAll(segment.links());
        for (int hub : hubs) {
            for (int link : links) {
                found.at(found.buses.hubs().get(hub), found.buses.links().get(link));
            }
        }
        return List.copyOf(found.places.values());
    }

    private void at(BusHub hub, BusLink link) {
        if (!hub.member() || (link.from() != hub.index() && link.to() != hub.index())) {
            return;
        }
        for (Wire wire : link.wires()) {
            for (int pin : new int[] {wire.fromPin(), wire.toPin()}) {
                if (buses.hubOfPin(pin).filter(hub::equals).isPresent()) {
                    plug(wiring.unitOf(pin), wiring.plugIndex(pin));
                }
            }
        }
    }

    private void plug(int unit, int plug) {
        int high = leg(unit, plug, PinRole.CAN_H);
        int low = leg(unit, plug, PinRole.CAN_L);
        if (high >= 0 && low >= 0) {
            Wire highWire = wiring.wires().get(wiring.wiresAt(high)[0]);
            Wire lowWire = wiring.wires().get(wiring.wiresAt(low)[0]);
            Place place = new Place(wiring.plugName(unit, plug), highWire, lowWire, high, low);
            places.putIfAbsent(wiring.firstPin(unit, plug), place);
        }
    }

    private int leg(int unit, int plug, PinRole role) {
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            if (wiring.is(pin, role) && wiring.wiresAt(pin).length > 0 && circuit.mated(pin)) {
                return pin;
            }
        }
        return -1;
    }
}
