package ringout.trace.predict;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.Buses;
import ringout.graph.power.PowerGraph;
import ringout.model.PinRole;
import ringout.solve.meter.Change;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Defect;

/**
 * What a voltmeter shows on signal wires with a fault in the circuit: which driver is on the net of the meter. A busy pair
 * shows 2.6 to 3.0 V on H and 2.0 to 2.4 V on L, an idle one 2.5 V on both (ISO 11898-2); an idle serial output about 3.3 V,
 * I2C lines the voltage of their pull-ups (common practice, no source).
 */
final class LegLevels {
    private final Circuit circuit;
    private final Wiring wiring;
    private final List<BusHub> nodes = new ArrayList<>();
    private String netsOf = "";
    private EditedNets lastNets;

    LegLevels(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        Buses buses = Buses.of(circuit);
        buses.segments().stream()
                .filter(segment -> segment.wired())
                .forEach(segment -> nodes.addAll(buses.nodes(segment)));
        nodes.removeIf(hub -> hub.high() < 0 || hub.low() < 0);
        lastNets = new EditedNets(new Edited(circuit, List.of()));
    }

    /** The nets with a candidate; those asked for last are kept. */
    private EditedNets nets(Candidate candidate) {
        if (!netsOf.equals(candidate.id())) {
            lastNets = new EditedNets(new Edited(circuit, candidate.changes()));
            netsOf = candidate.id();
        }
        return lastNets;
    }

    /** Whether a unit of a pair drives it: has power and a front end. */
    private static boolean drives(BusHub hub, Candidate candidate, Set<String> dark, String name) {
        boolean mute = candidate.defect() instanceof Defect.Inside in && in.unit() == hub.unit();
        return !mute && !dark.contains(name);
    }

    /** The class of the voltage of a leg with the bus busy. */
    String leg(Candidate candidate, Signature seen, int pin) {
        EditedNets nets = nets(candidate);
        if (on(nets, pin, true)) {
            return "0 V";
        }
        if (on(nets, pin, false)) {
            return "rail";
        }
        int high = 0;
        int low = 0;
        Set<Integer> units = new TreeSet<>();
        for (BusHub hub : nodes) {
            boolean here = nets.same(hub.high(), pin) || nets.same(hub.low(), pin);
            if (here && drives(hub, candidate, seen.dark(), wiring.directory().name(hub.unit()))) {
                high += nets.same(hub.high(), pin) ? 1 : 0;
                low += nets.same(hub.low(), pin) ? 1 : 0;
                units.add(hub.unit());
            }
        }
        if (units.isEmpty()) {
            return "0 V";
        }
        if (units.size() < 2 || (high > 0 && high == low)) {
            return "2.5 V"; // nobody answers, or what one lifts the other pulls down: no frame gets through
        }
        return high > low ? "about 2.8 V" : "about 2.2 V";
    }

    /** The sign of H against L at a plug. */
    String sign(Candidate candidate, Signature seen, int high, int low) {
        String up = leg(candidate, seen, high);
        String down = leg(candidate, seen, low);
        if (up.equals("about 2.8 V") && down.equals("about 2.2 V")) {
            return "positive";
        }
        return up.equals("about 2.2 V") && down.equals("about 2.8 V") ? "negative" : turned(candidate, high, low);
    }

    /** A member alone against one that is the other way round still meets its frames: the sign is that of the others. */
    private String turned(Candidate candidate, int high, int low) {
        EditedNets nets = nets(candidate);
        long crossed = nodes.stream()
                .filter(hub -> nets.same(hub.high(), low) && nets.same(hub.low(), high))
                .count();
        long straight = nodes.stream()
                .filter(hub -> nets.same(hub.high(), high) && nets.same(hub.low(), low))
                .count();
        return crossed > straight ? "negative" : "none";
    }

    private boolean on(EditedNets nets, int vertex, boolean zero) {
        if (!nets.changed(vertex)) {
            return false;
        }
        for (int pin = 0; pin < wiring.pinCount(); pin++) {
            boolean wanted = zero
                    ? wiring.is(pin, PinRole.ZERO_V)
                    : wiring.role(pin).map(PowerGraph::isSupply).orElse(false);
            if (wanted && nets.same(pin, vertex)) {
                return true;
            }
        }
        return false;
    }

    /** What the signal wires of a lead show when it is pulled at a plug, power on. */
    String wires(Candidate candidate, Signature seen, List<Change> pulled, int unit, int plug) {
        EditedNets nets = new EditedNets(new Edited(circuit, BusMeter.with(candidate.changes(), pulled)));
        int idle = 0;
        int serial = 0;
        boolean rail = false;
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            for (int w : signal(pin) ? wiring.wiresAt(pin) : new int[0]) {
                Wire wire = wiring.wires().get(w);
                int end = wire.endAt(pin);
                rail |= on(nets, end, false);
                if (bus(nets, candidate, seen, end)) {
                    idle++;
                } else if (driven(nets, seen, end, unit)) {
                    serial++;
                }
            }
        }
        if (rail) {
            return "rail";
        }
        if (idle > 0) {
            return idle > 1 ? "2.5 V on both" : "2.5 V on one";
        }
        return serial == 0 ? "nothing" : serial > 1 ? "3.3 V on both" : "3.3 V on one";
    }

    private boolean signal(int pin) {
        boolean supply = wiring.role(pin).map(PowerGraph::isSupply).orElse(true);
        return !supply && !wiring.is(pin, PinRole.ZERO_V) && !wiring.is(pin, PinRole.NONE);
    }

    private boolean bus(EditedNets nets, Candidate candidate, Signature seen, int end) {
        return nodes.stream()
                .filter(hub ->
                        drives(hub, candidate, seen.dark(), wiring.directory().name(hub.unit())))
                .anyMatch(hub -> nets.same(hub.high(), end) || nets.same(hub.low(), end));
    }

    /** A serial output or a pulled-up line of another unit that is lit. */
    private boolean driven(EditedNets nets, Signature seen, int end, int own) {
        for (int pin = 0; pin < wiring.pinCount(); pin++) {
            boolean high =
                    wiring.is(pin, PinRole.SERIAL_OUT) || wiring.is(pin, PinRole.SCL) || wiring.is(pin, PinRole.SDA);
            if (high && wiring.unitOf(pin) != own && nets.same(pin, end)) {
                return !seen.dark().contains(wiring.directory().name(wiring.unitOf(pin)));
            }
        }
        return false;
    }
}
