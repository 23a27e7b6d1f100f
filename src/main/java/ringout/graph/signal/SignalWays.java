package ringout.graph.signal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.Buses;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.model.Lead;
import ringout.model.PinRole;

/**
 * Whether a signal can pass between two units of a circuit: over a driven wire, a whole bus, both lines of I2C, all phases of
 * a motor, other pairs and coils; boards and splices on the way pass it on. A pack, board or regulator without signals is
 * joined by its supply.
 */
public final class SignalWays {
    private static final long WIRES = NetRoles.DRIVERS | NetRoles.RECEIVERS;
    private static final long OTHERS = NetRoles.bits(PinRole.PAIR_P, PinRole.PAIR_N, PinRole.RF, PinRole.COIL);
    private static final long BUS = NetRoles.bits(PinRole.CAN_H, PinRole.CAN_L);
    private static final long SIGNALS = WIRES | OTHERS | BUS | NetRoles.bits(PinRole.PHASE, PinRole.SCL, PinRole.SDA);
    private static final long SUPPLIES = NetRoles.SUPPLIES | NetRoles.bits(PinRole.PACK_MINUS);

    private final Circuit circuit;
    private final Wiring wiring;
    private final NetRoles roles;
    private final Map<Integer, Set<Integer>> segmentsOf = new HashMap<>();
    private final Map<Integer, List<Consumer>> consumersOf = new HashMap<>();
    private final PowerGraph power;

    private SignalWays(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.roles = NetRoles.of(circuit);
        this.power = PowerGraph.of(circuit);
        Buses buses = Buses.of(circuit);
        for (BusHub hub : buses.hubs()) {
            if (buses.segment(hub).wired()) {
                segmentsOf
                        .computeIfAbsent(hub.unit(), key -> new HashSet<>())
                        .add(buses.segment(hub).index());
            }
        }
        power.consumers()
                .forEach(consumer -> consumersOf
                        .computeIfAbsent(consumer.unit(), key -> new ArrayList<>())
                        .add(consumer));
    }

    /** The signal ways of a circuit, found once. */
    public static SignalWays of(Circuit circuit) {
        return circuit.know(SignalWays.class, SignalWays::new);
    }

    /** Whether a unit gets a supply on any of its inputs, or takes none. */
    public boolean powered(int unit) {
        List<Consumer> inputs = consumersOf.getOrDefault(unit, List.of());
        return inputs.isEmpty() || inputs.stream().anyMatch(consumer -> power.fed(consumer.plus()));
    }

    /** Whether a signal can pass between two units, in either direction. */
    public boolean joined(int a, int b) {
        return onOneBus(a, b)
                || i2c(a, b)
                || phases(a, b)
                || shares(a, b, OTHERS)
                || driven(a, b)
                || driven(b, a)
                || ((!talks(a) || !talks(b)) && supplied(a, b));
    }

    /** Whether two units have supply points at one voltage at rest, fuses and links passed. */
    private boolean supplied(int a, int b) {
        Set<Integer> here = supplies(a);
        return supplies(b).stream().anyMatch(here::contains);
    }

    private Set<Integer> supplies(int unit) {
        Set<Integer> found = new HashSet<>();
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if (has(pin, SUPPLIES)) {
                found.add(power.ties().of(pin));
            }
        }
        return found;
    }

    private boolean onOneBus(int a, int b) {
        Set<Integer> of = segmentsOf.getOrDefault(a, Set.of());
        return segmentsOf.getOrDefault(b, Set.of()).stream().anyMatch(of::contains);
    }

    private boolean talks(int unit) {
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if (has(pin, SIGNALS) || (wiring.is(pin, PinRole.PASSIVE) && roles.any(net(pin), SIGNALS))) {
                return true;
            }
        }
        return false;
    }

    private int net(int pin) {
        return circuit.nets().of(pin);
    }

    private boolean has(int pin, long of) {
        return wiring.role(pin).filter(role -> (NetRoles.bits(role) & of) != 0).isPresent();
    }

    /** The nets on which a unit has a pin of some roles, or passes such a net on. */
    private Set<Integer> nets(int unit, long of) {
        Set<Integer> nets = new HashSet<>();
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            boolean passes = wiring.is(pin, PinRole.PASSIVE) && roles.any(net(pin), of);
            if (circuit.aboard(unit) && (has(pin, of) || passes)) {
                nets.add(net(pin));
            }
        }
        return nets;
    }

    private boolean shares(int a, int b, long of) {
        Set<Integer> here = nets(a, of);
        return nets(b, of).stream().anyMatch(here::contains);
    }

    private boolean i2c(int a, int b) {
        return shares(a, b, NetRoles.bits(PinRole.SCL)) && shares(a, b, NetRoles.bits(PinRole.SDA));
    }

    /** Whether every phase of one of the two meets the other. */
    private boolean phases(int a, int b) {
        Set<Integer> here = nets(a, NetRoles.bits(PinRole.PHASE));
        Set<Integer> there = nets(b, NetRoles.bits(PinRole.PHASE));
        return !here.isEmpty() && !there.isEmpty() && (here.containsAll(there) || there.containsAll(here));
    }

    /** Whether one unit drives a wire that the other listens to; a board passes both. */
    private boolean driven(int from, int to) {
        Set<Integer> driven = nets(from, NetRoles.DRIVERS);
        return nets(to, NetRoles.RECEIVERS).stream().anyMatch(driven::contains);
    }

    /** Leads of one unit that end at the other and carry signals, though no signal passes. */
    public List<Lead> towards(int a, int b) {
        List<Lead> found = new ArrayList<>();
        for (int pin = wiring.firstPin(a); pin < wiring.endPin(a); pin++) {
            for (int w : wiring.wiresAt(pin)) {
                Wire wire = wiring.wires().get(w);
                boolean there = wiring.unitOf(wire.otherPin(pin)) == b;
                if (there && has(pin, SIGNALS) && !found.contains(wire.lead())) {
                    found.add(wire.lead());
                }
            }
        }
        return found;
    }
}
