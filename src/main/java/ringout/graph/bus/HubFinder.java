package ringout.graph.bus;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.BusPort;
import ringout.model.Pin;
import ringout.model.PinRole;

/**
 * Finds the hubs: every bus port whose pins exist, then passive points reached along leads. Passive points are paired as
 * one lead brings them, and are H or L as they are named, else as they are first reached.
 */
final class HubFinder {
    private static final int NONE = -1;

    private final Circuit circuit;
    private final Wiring wiring;
    private final List<int[]> legs = new ArrayList<>();
    private final List<Integer> units = new ArrayList<>();
    private final List<String> ports = new ArrayList<>();
    private final int[] hubOf;
    private final Runs runs;
    private final Deque<Integer> reach = new ArrayDeque<>();

    HubFinder(Circuit circuit, Runs runs) {
        this.circuit = circuit;
        this.runs = runs;
        this.wiring = circuit.wiring();
        int units = wiring.directory().count();
        this.hubOf = new int[units == 0 ? 0 : wiring.endPoint(units - 1)];
        Arrays.fill(hubOf, NONE);
        for (int unit = 0; unit < wiring.aircraft().units().size(); unit++) {
            if (circuit.aboard(unit)) {
                members(unit);
            }
        }
        while (!reach.isEmpty()) {
            spread(reach.remove());
        }
    }

    private void members(int unit) {
        Map<String, Integer> byPort = Map.of();
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            Pin record = wiring.pin(pin);
            boolean high = record.role().is(PinRole.CAN_H);
            if (high || record.role().is(PinRole.CAN_L)) {
                byPort = byPort.isEmpty() ? new HashMap<>() : byPort;
                int hub = byPort.computeIfAbsent(port(unit, pin, record), port -> add(unit, port));
                legs.get(hub)[high ? 0 : 1] = core(pin);
                hubOf[core(pin)] = hub;
            }
        }
    }

    /** The port of a bus pin; without a name each plug is its own port. */
    private String port(int unit, int pin, Pin record) {
        String plug = wiring.plug(pin).name();
        String port = record.inside().or(plug);
        boolean split = wiring.directory()
                .layout(unit)
                .port(port)
                .map(HubFinder::notCopper)
                .orElse(false);
        return split ? BusHub.socket(port, plug) : port;
    }

    private static boolean notCopper(BusPort port) {
        return port.passThrough().isKnown() && !port.passThrough().is(ringout.model.PassThrough.PASSIVE);
    }

    private int add(int unit, String port) {
        legs.add(new int[] {NONE, NONE});
        units.add(unit);
        ports.add(port);
        reach.add(legs.size() - 1);
        return legs.size() - 1;
    }

    /** The point a pin joins inside, or the vertex itself. */
    int core(int pin) {
        if (!wiring.isPin(pin)) {
            return pin;
        }
        int unit = wiring.unitOf(pin);
        int point = wiring.directory().layout(unit).pointOf(wiring.localPin(pin));
        return point < 0 ? pin : wiring.firstPoint(unit) + point;
    }

    /** Two passive points that one lead brings together; a place for H and one for L, as the near hub has them. */
    private static final class Brought {
        private final int[] points = {NONE, NONE};
        private final int[] pins = {NONE, NONE};
    }

    private void spread(int hub) {
        Map<Integer, Brought> brought = new LinkedHashMap<>();
        for (int leg = 0; leg < 2; leg++) {
            int vertex = legs.get(hub)[leg];
            if (vertex >= 0) {
                for (int pin : pinsOf(vertex)) {
                    collect(pin, leg, brought);
                }
            }
        }
        brought.values().forEach(this::settle);
    }

    private void collect(int pin, int leg, Map<Integer, Brought> brought) {
        for (int w : wiring.wiresAt(pin)) {
            Wire wire = wiring.wires().get(w);
            int far = wire.otherPin(pin);
            if (circuit.mated(wire) && wiring.is(far, PinRole.PASSIVE) && hubOf[core(far)] == NONE) {
                Brought pair = brought.computeIfAbsent(runs.of(wire), key -> new Brought());
                if (pair.points[leg] == NONE) {
                    pair.points[leg] = core(far);
                    pair.pins[leg] = far;
                } else if (pair.points[leg] != core(far)) {
                    Brought alone = brought.computeIfAbsent(-1 - wire.index(), key -> new Brought());
                    alone.points[leg] = core(far);
                    alone.pins[leg] = far;
                }
            }
        }
    }

    private void settle(Brought pair) {
        for (int leg = 0; leg < 2; leg++) {
            if (pair.points[leg] != NONE && hubOf[pair.points[leg]] != NONE) {
                pair.points[leg] = NONE;
            }
        }
        boolean turned = turned(pair, 0) || turned(pair, 1);
        boolean both = pair.points[0] != NONE && pair.points[1] != NONE && pair.points[0] != pair.points[1];
        int hub = both ? add(wiring.unitOf(pair.pins[0]), "") : NONE;
        for (int leg = 0; leg < 2; leg++) {
            int own = turned ? 1 - leg : leg;
            if (pair.points[leg] != NONE && hubOf[pair.points[leg]] == NONE) {
                claim(both ? hub : half(pair.pins[leg], own), pair.points[leg], own);
            }
        }
    }

    /** Whether a passive point carries the name of the other leg than the one it is reached as. */
    private boolean turned(Brought pair, int leg) {
        if (pair.points[leg] == NONE) {
            return false;
        }
        return Polarity.is(
                leg == 0 ? PinRole.CAN_L : PinRole.CAN_H,
                wiring.pin(pair.pins[leg]).name().or(""));
    }

    /** A hub of the same plug that still lacks this leg, or a new one. */
    private int half(int pin, int leg) {
        int unit = wiring.unitOf(pin);
        int plug = wiring.plugIndex(pin);
        for (int other = wiring.firstPin(unit, plug); other < wiring.endPin(unit, plug); other++) {
            int hub = hubOf[core(other)];
            if (hub >= 0 && ports.get(hub).isEmpty() && legs.get(hub)[leg] == NONE) {
                reach.add(hub);
                return hub;
            }
        }
        return add(unit, "");
    }

    private void claim(int hub, int vertex, int leg) {
        legs.get(hub)[leg] = vertex;
        hubOf[vertex] = hub;
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

    List<BusHub> hubs() {
        List<BusHub> hubs = new ArrayList<>(legs.size());
        for (int i = 0; i < legs.size(); i++) {
            hubs.add(new BusHub(i, units.get(i), ports.get(i), legs.get(i)[0], legs.get(i)[1]));
        }
        return hubs;
    }

    /** The hub of a pin or of a point inside a unit, or -1. */
    int hubOf(int pin) {
        return hubOf[core(pin)];
    }

    /** Which leg of its hub a pin is: 0 for H, 1 for L. */
    int legOfPin(int pin) {
        return legs.get(hubOf(pin))[0] == core(pin) ? 0 : 1;
    }
}
