package ringout.draw.harness;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import ringout.draw.scene.OhmsLine;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.model.PinRole;
import ringout.model.State;
import ringout.model.shape.Shape;
import ringout.solve.Ohmmeter;
import ringout.solve.network.Resistance;

/** What a meter reads between the legs at every plug of a bus, mated and pulled, computed from the network of the aircraft. */
final class BusReadings {
    private static final double KILO = 1000;

    private final Circuit circuit;
    private final Wiring wiring;

    BusReadings(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
    }

    /** The readings at the plugs of a bus, in the order of its members. */
    List<OhmsLine> of(BusSegment segment) {
        List<OhmsLine> lines = new ArrayList<>();
        for (int index : segment.hubs()) {
            BusHub hub = Buses.of(circuit).hubs().get(index);
            if (hub.member()) {
                for (int plug : plugs(hub)) {
                    lines.add(line(hub, plug));
                }
            }
        }
        return lines;
    }

    private Set<Integer> plugs(BusHub hub) {
        Set<Integer> plugs = new TreeSet<>();
        for (int pin = wiring.firstPin(hub.unit()); pin < wiring.endPin(hub.unit()); pin++) {
            boolean here = Buses.of(circuit).hubOfPin(pin).filter(hub::equals).isPresent();
            if (here && wiring.is(pin, PinRole.CAN_H) && wiring.wiresAt(pin).length > 0 && circuit.mated(pin)) {
                plugs.add(wiring.plugIndex(pin));
            }
        }
        return plugs;
    }

    private OhmsLine line(BusHub hub, int plug) {
        int high = leg(hub, plug, PinRole.CAN_H);
        int low = leg(hub, plug, PinRole.CAN_L);
        String name = wiring.plugName(hub.unit(), plug);
        if (high < 0 || low < 0) {
            return new OhmsLine(name, "", "", "");
        }
        Circuit pulled = pulled(name);
        return new OhmsLine(name, ohms(circuit, high, low), ohms(pulled, end(high), end(low)), ohms(pulled, high, low));
    }

    private int leg(BusHub hub, int plug, PinRole role) {
        for (int pin = wiring.firstPin(hub.unit(), plug); pin < wiring.endPin(hub.unit(), plug); pin++) {
            if (wiring.is(pin, role)) {
                return pin;
            }
        }
        return -1;
    }

    private int end(int pin) {
        int[] wires = wiring.wiresAt(pin);
        if (wires.length == 0) {
            return pin;
        }
        Wire wire = wiring.wires().get(wires[0]);
        return wire.endAt(pin);
    }

    private Circuit pulled(String plug) {
        Shape<State> shape = Shape.of(State.class);
        List<String> pulled = new ArrayList<>(circuit.state().pulled());
        pulled.add(plug);
        return Circuit.of(wiring, shape.with(circuit.state(), "pulled", List.copyOf(pulled)));
    }

    private static String ohms(Circuit in, int high, int low) {
        Resistance reading = Ohmmeter.of(in).between(high, low);
        if (!(reading instanceof Resistance.Ohms ohms)) {
            return "open";
        }
        return ohms.value() < KILO
                ? String.format(Locale.ROOT, "%.0f", ohms.value())
                : String.format(Locale.ROOT, "%.1f k", ohms.value() / KILO);
    }
}
