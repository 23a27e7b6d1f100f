package ringout.graph.loss;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusLink;
import ringout.graph.bus.Buses;
import ringout.graph.signal.NetRoles;
import ringout.graph.signal.SignalWays;
import ringout.model.PinRole;

/**
 * What cuts the signal between two units when it lets go alone. Where there are several ways (a bus and a wire, two buses)
 * only what they share does. A way is a whole bus, a driven wire, both lines of I2C, all phases of a motor, all other pairs.
 */
public final class SignalLoss {
    private static final long PASSIVE = NetRoles.bits(PinRole.PASSIVE);
    private static final long CLOCK = NetRoles.bits(PinRole.SCL);
    private static final long DATA = NetRoles.bits(PinRole.SDA);
    private static final long PHASES = NetRoles.bits(PinRole.PHASE);
    private static final long OTHERS = NetRoles.bits(PinRole.PAIR_P, PinRole.PAIR_N, PinRole.RF, PinRole.COIL);

    private final Circuit circuit;
    private final Wiring wiring;
    private final Buses buses;
    private final NetRoles roles;
    private final Grain grain;
    private final Map<Integer, List<BusHub>> hubsOf = new HashMap<>();

    private SignalLoss(Circuit circuit, Grain grain) {
        this.grain = grain;
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.buses = Buses.of(circuit);
        this.roles = NetRoles.of(circuit);
        for (BusHub hub : buses.hubs()) {
            if (buses.segment(hub).wired()) {
                hubsOf.computeIfAbsent(hub.unit(), key -> new ArrayList<>()).add(hub);
            }
        }
    }

    /** The losses of a circuit. */
    public static SignalLoss of(Circuit circuit) {
        return circuit.know(SignalLoss.class, one -> new SignalLoss(one, Grain.LEAD));
    }

    /** The losses when single conductors open. */
    static SignalLoss byWire(Circuit circuit) {
        return new SignalLoss(circuit, Grain.WIRE);
    }

    /** Items that cut the signal from one unit to another, ascending; nothing when none passes even so. */
    public Optional<Set<Integer>> between(int from, int to) {
        List<Set<Integer>> ways = new ArrayList<>(buses(from, to));
        new Nets(from, to).addTo(ways);
        if (ways.isEmpty()) {
            // joined by their supply: what takes that is no signal
            return SignalWays.of(circuit).joined(from, to) ? Optional.of(Set.of()) : Optional.empty();
        }
        Set<Integer> common = new TreeSet<>(ways.get(0));
        ways.forEach(common::retainAll);
        return Optional.of(common);
    }

    /** Items that cut one unit off another on each bus they share. */
    private List<Set<Integer>> buses(int from, int to) {
        List<Set<Integer>> found = new ArrayList<>();
        for (BusHub a : hubsOf.getOrDefault(from, List.of())) {
            for (BusHub b : hubsOf.getOrDefault(to, List.of())) {
                if (buses.segment(a).index() == buses.segment(b).index()) {
                    found.add(onBus(a, b));
                }
            }
        }
        return found;
    }

    /** Items that cut two hubs of one bus off each other. */
    public Set<Integer> onBus(BusHub from, BusHub to) {
        return new TreeSet<>(waysFrom(from).above(to.leg()));
    }

    /** Items that cut each other unit of its bus off a hub, by number of the unit. */
    public Map<Integer, Set<Integer>> fromHub(BusHub from) {
        Ways ways = waysFrom(from);
        Map<Integer, Set<Integer>> found = new TreeMap<>();
        for (BusHub node : buses.nodes(buses.segment(from))) {
            if (node.unit() != from.unit()) {
                found.put(node.unit(), new TreeSet<>(ways.above(node.leg())));
            }
        }
        return found;
    }

    private Ways waysFrom(BusHub from) {
        WayBuilder builder = new WayBuilder(circuit, grain);
        Items items = Items.of(circuit);
        for (int index : buses.segment(from).links()) {
            BusLink link = buses.links().get(index);
            Set<Integer> between = new TreeSet<>();
            for (Wire wire : link.wires()) {
                between.add(grain == Grain.WIRE ? items.wire(wire.index()) : items.lead(wire.leadIndex()));
                between.add(items.plugOf(wire.fromPin()));
                between.add(items.plugOf(wire.toPin()));
            }
            builder.chain(hub(builder, link.from()), between, hub(builder, link.to()));
        }
        return builder.build(List.of(builder.at(from.leg())));
    }

    private int hub(WayBuilder builder, int hub) {
        return builder.at(buses.hubs().get(hub).leg());
    }

    /** Items that part two pins of one net. */
    public Set<Integer> onNet(int from, int to) {
        WayBuilder builder = new WayBuilder(circuit, grain);
        for (int pin : circuit.nets().pins(circuit.nets().of(from))) {
            for (int w : wiring.wiresAt(pin)) {
                Wire wire = wiring.wires().get(w);
                if (wire.fromPin() == pin && builder.conducts(wire)) {
                    builder.wire(wire);
                }
            }
        }
        int start = builder.at(from);
        builder.at(to);
        return new TreeSet<>(builder.build(List.of(start)).above(to));
    }

    /** The nets two units share and what they do on them. */
    private final class Nets {
        private final List<Set<Integer>> forwards = new ArrayList<>();
        private final List<Set<Integer>> backwards = new ArrayList<>();
        private final Set<Integer> clock = new TreeSet<>();
        private final Set<Integer> data = new TreeSet<>();
        private final Set<Integer> phases = new TreeSet<>();
        private final Set<Integer> others = new TreeSet<>();

        private Nets(int from, int to) {
            Map<Integer, Integer> near = new TreeMap<>();
            for (int pin = wiring.firstPin(from); pin < wiring.endPin(from); pin++) {
                near.putIfAbsent(circuit.nets().of(pin), pin);
            }
            for (int pin = wiring.firstPin(to); pin < wiring.endPin(to); pin++) {
                Integer here = near.get(circuit.nets().of(pin));
                if (here != null) {
                    share(here, pin);
                }
            }
        }

        private void share(int a, int b) {
            long here = does(a);
            long there = does(b);
            long both = here & there;
            boolean along = (here & NetRoles.DRIVERS) != 0 && (there & NetRoles.RECEIVERS) != 0;
            boolean back = (there & NetRoles.DRIVERS) != 0 && (here & NetRoles.RECEIVERS) != 0;
            if (!along && !back && (both & (CLOCK | DATA | PHASES | OTHERS)) == 0) {
                return;
            }
            Set<Integer> items = onNet(a, b);
            if (along) {
                forwards.add(items);
            } else if (back) {
                backwards.add(items);
            }
            add(clock, both & CLOCK, items);
            add(data, both & DATA, items);
            add(phases, both & PHASES, items);
            add(others, both & OTHERS, items);
        }

        private void add(Set<Integer> to, long when, Set<Integer> items) {
            if (when != 0) {
                to.addAll(items);
            }
        }

        /** What a pin does on its net; a passive pin passes all that is there. */
        private long does(int pin) {
            if (!circuit.aboard(wiring.unitOf(pin))) {
                return 0;
            }
            long own = NetRoles.bit(wiring, pin);
            return own == PASSIVE ? roles.set(circuit.nets().of(pin)) : own;
        }

        private void addTo(List<Set<Integer>> ways) {
            ways.addAll(forwards.isEmpty() ? backwards : forwards);
            if (!clock.isEmpty() && !data.isEmpty()) {
                clock.addAll(data);
                ways.add(clock);
            }
            if (!phases.isEmpty()) {
                ways.add(phases);
            }
            if (!others.isEmpty()) {
                ways.add(others);
            }
        }
    }
}
