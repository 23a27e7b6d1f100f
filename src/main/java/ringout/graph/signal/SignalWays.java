package ringout.graph.signal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusLink;
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
    private static final long PASSIVE = NetRoles.bits(PinRole.PASSIVE);
    private static final long CLOCK = NetRoles.bits(PinRole.SCL);
    private static final long DATA = NetRoles.bits(PinRole.SDA);
    private static final long PHASES = NetRoles.bits(PinRole.PHASE);
    private static final long OTHERS = NetRoles.bits(PinRole.PAIR_P, PinRole.PAIR_N, PinRole.RF, PinRole.COIL);
    private static final long BUS = NetRoles.bits(PinRole.CAN_H, PinRole.CAN_L);
    private static final long SIGNALS = WIRES | OTHERS | BUS | PHASES | CLOCK | DATA;
    private static final long SUPPLIES = NetRoles.SUPPLIES | NetRoles.bits(PinRole.PACK_MINUS);

    private final Circuit circuit;
    private final Wiring wiring;
    private final NetRoles roles;
    private final Map<Integer, Set<Integer>> segmentsOf = new HashMap<>();
    private final Map<Integer, List<Consumer>> consumersOf = new HashMap<>();
    private final PowerGraph power;

    /** What one unit does on each net, while two units are compared. */
    private final long[] rolesAt;

    private SignalWays(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.roles = NetRoles.of(circuit);
        this.power = PowerGraph.of(circuit);
        this.rolesAt = new long[circuit.nets().count()];
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
        return onOneBus(a, b) || common(a, b).passes() || ((!talks(a) || !talks(b)) && supplied(a, b));
    }

    private boolean onOneBus(int a, int b) {
        return !Collections.disjoint(segmentsOf.getOrDefault(a, Set.of()), segmentsOf.getOrDefault(b, Set.of()));
    }

    /** What two units do on the nets they share: the roles they meet in, and how many of their phases meet. */
    private record Common(boolean driven, long equal, int phases, int phasesA, int phasesB) {
        boolean passes() {
            boolean i2c = (equal & CLOCK) != 0 && (equal & DATA) != 0;
            boolean motor = phases > 0 && phases >= Math.min(phasesA, phasesB);
            return driven || i2c || motor || (equal & OTHERS) != 0;
        }
    }

    private Common common(int a, int b) {
        int phasesA = 0;
        for (int pin = wiring.firstPin(a); pin < wiring.endPin(a); pin++) {
            long set = roles(a, pin);
            rolesAt[circuit.nets().of(pin)] |= set;
            phasesA += (set & PHASES) == 0 ? 0 : 1;
        }
        boolean driven = false;
        long equal = 0;
        int phases = 0;
        int phasesB = 0;
        for (int pin = wiring.firstPin(b); pin < wiring.endPin(b); pin++) {
            long here = roles(b, pin);
            long there = rolesAt[circuit.nets().of(pin)];
            driven |= meets(here, NetRoles.DRIVERS, there, NetRoles.RECEIVERS);
            driven |= meets(there, NetRoles.DRIVERS, here, NetRoles.RECEIVERS);
            equal |= here & there;
            phasesB += (here & PHASES) == 0 ? 0 : 1;
            phases += (here & there & PHASES) == 0 ? 0 : 1;
        }
        for (int pin = wiring.firstPin(a); pin < wiring.endPin(a); pin++) {
            rolesAt[circuit.nets().of(pin)] = 0;
        }
        return new Common(driven, equal, phases, phasesA, phasesB);
    }

    private static boolean meets(long a, long drivers, long b, long receivers) {
        return (a & drivers) != 0 && (b & receivers) != 0;
    }

    /** What a pin does on its net; a passive pin passes all that is there. */
    private long roles(int unit, int pin) {
        if (!circuit.aboard(unit)) {
            return 0;
        }
        long own = NetRoles.bit(wiring, pin);
        return own == PASSIVE ? roles.set(circuit.nets().of(pin)) : own;
    }

    private boolean talks(int unit) {
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if ((roles(unit, pin) & SIGNALS) != 0) {
                return true;
            }
        }
        return false;
    }

    private boolean has(int pin, long of) {
        return (NetRoles.bit(wiring, pin) & of) != 0;
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

    /** Inputs of two units that are wired or must be driven, and that no output drives. */
    public List<Integer> undriven(int a, int b) {
        List<Integer> found = new ArrayList<>();
        for (int unit : new int[] {a, b}) {
            for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
                boolean asked = wiring.wiresAt(pin).length > 0
                        || wiring.pin(pin).needed().or(false);
                if (asked
                        && has(pin, NetRoles.RECEIVERS)
                        && !roles.any(circuit.nets().of(pin), NetRoles.DRIVERS)) {
                    found.add(pin);
                }
            }
        }
        return found;
    }

    /** Leads that join only one leg of a bus at the pieces that two units are on. */
    public List<Lead> halves(int a, int b) {
        Set<Integer> pieces = new HashSet<>(segmentsOf.getOrDefault(a, Set.of()));
        pieces.addAll(segmentsOf.getOrDefault(b, Set.of()));
        Buses buses = Buses.of(circuit);
        List<Lead> found = new ArrayList<>();
        for (BusLink link : buses.links()) {
            boolean near = pieces.contains(segment(buses, link.from())) || pieces.contains(segment(buses, link.to()));
            if (!link.pair() && near) {
                found.add(link.lead());
            }
        }
        return found;
    }

    private static int segment(Buses buses, int hub) {
        return buses.segment(buses.hubs().get(hub)).index();
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
