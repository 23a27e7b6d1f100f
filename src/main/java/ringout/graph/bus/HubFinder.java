package ringout.graph.bus;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.BusKind;
import ringout.model.BusPort;
import ringout.model.Pin;
import ringout.model.PinRole;

/**
 * Finds the hubs: every bus port whose pins exist, then passive points reached along leads, paired as H and L in the way
 * they are first reached.
 */
final class HubFinder {
    private final Circuit circuit;
    private final Wiring wiring;
    private final List<int[]> legs = new ArrayList<>();
    private final List<Integer> units = new ArrayList<>();
    private final List<String> ports = new ArrayList<>();
    private final int[] hubOf;
    private final Deque<Integer> reach = new ArrayDeque<>();

    HubFinder(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.hubOf = new int[wiring.endPoint(wiring.directory().count() - 1)];
        Arrays.fill(hubOf, -1);
        members();
        while (!reach.isEmpty()) {
            spread(reach.remove());
        }
    }

    private void members() {
        for (int unit = 0; unit < wiring.directory().aircraft().units().size(); unit++) {
            if (circuit.aboard(unit)) {
                members(unit);
            }
        }
    }

    private void members(int unit) {
        Map<String, Integer> byPort = new HashMap<>();
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            Pin record = wiring.pin(pin);
            boolean high = record.role().is(PinRole.CAN_H);
            if (high || record.role().is(PinRole.CAN_L)) {
                String port = port(unit, pin, record);
                Integer hub = byPort.get(port);
                if (hub == null) {
                    hub = add(unit, port);
                    byPort.put(port, hub);
                }
                leg(hub, core(pin), high ? 0 : 1);
                hubOf[pin] = hub;
            }
        }
    }

    /** The port of a bus pin; without a name each plug is its own port. */
    private String port(int unit, int pin, Pin record) {
        String plug = wiring.plug(pin).name();
        return record.inside()
                .known()
                .map(name -> split(unit, name) ? name + " @" + plug : name)
                .orElse(plug);
    }

    private boolean split(int unit, String port) {
        return wiring.directory()
                .layout(unit)
                .port(port)
                .map(HubFinder::notCopper)
                .orElse(false);
    }

    private static boolean notCopper(BusPort port) {
        return port.kind().or(BusKind.CAN) == BusKind.CAN
                && port.passThrough().isKnown()
                && !port.passThrough().is(ringout.model.PassThrough.PASSIVE);
    }

    private int add(int unit, String port) {
        legs.add(new int[] {-1, -1});
        units.add(unit);
        ports.add(port);
        reach.add(legs.size() - 1);
        return legs.size() - 1;
    }

    private void leg(int hub, int vertex, int leg) {
        legs.get(hub)[leg] = vertex;
        hubOf[vertex] = hub;
    }

    /** The point a pin joins inside, or the pin itself. */
    private int core(int pin) {
        int unit = wiring.unitOf(pin);
        int point = wiring.directory().layout(unit).pointOf(wiring.localPin(pin));
        return point < 0 ? pin : wiring.firstPoint(unit) + point;
    }

    private void spread(int hub) {
        for (int leg = 0; leg < 2; leg++) {
            int vertex = legs.get(hub)[leg];
            if (vertex >= 0) {
                for (int pin : pinsOf(vertex)) {
                    spread(hub, leg, pin);
                }
            }
        }
    }

    private int[] pinsOf(int vertex) {
        if (wiring.isPin(vertex)) {
            return new int[] {vertex};
        }
        int unit = wiring.unitOf(vertex);
        int[] pins = new int[wiring.endPin(unit) - wiring.firstPin(unit)];
        int count = 0;
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if (core(pin) == vertex) {
                pins[count++] = pin;
            }
        }
        return Arrays.copyOf(pins, count);
    }

    private void spread(int hub, int leg, int pin) {
        for (int w : wiring.wiresAt(pin)) {
            Wire wire = wiring.wires().get(w);
            int far = wire.otherPin(pin);
            if (circuit.mated(wire) && wiring.is(far, PinRole.PASSIVE) && hubOf[core(far)] < 0) {
                leg(partner(hub, leg, wire, far), core(far), leg);
            }
        }
    }

    /** The hub of the other leg of the same lead at the far end, or a new one. */
    private int partner(int hub, int leg, Wire wire, int far) {
        int other = legs.get(hub)[1 - leg];
        if (other >= 0) {
            for (int pin : pinsOf(other)) {
                for (int w : wiring.wiresAt(pin)) {
                    Wire twin = wiring.wires().get(w);
                    int end = core(twin.otherPin(pin));
                    boolean together = twin.lead().id().equals(wire.lead().id()) && hubOf[end] >= 0;
                    if (together && wiring.is(twin.otherPin(pin), PinRole.PASSIVE) && legs.get(hubOf[end])[leg] < 0) {
                        return hubOf[end];
                    }
                }
            }
        }
        return add(wiring.unitOf(far), "");
    }

    List<BusHub> hubs() {
        List<BusHub> hubs = new ArrayList<>(legs.size());
        for (int i = 0; i < legs.size(); i++) {
            hubs.add(new BusHub(i, units.get(i), ports.get(i), legs.get(i)[0], legs.get(i)[1]));
        }
        return hubs;
    }

    /** The hub of a pin, or -1. */
    int hubOfPin(int pin) {
        return hubOf[pin] >= 0 ? hubOf[pin] : hubOf[core(pin)];
    }

    /** Which leg of its hub a pin is: 0 for H, 1 for L. */
    int legOfPin(int pin) {
        int hub = hubOfPin(pin);
        return legs.get(hub)[0] == core(pin) ? 0 : 1;
    }
}
