package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.check.form.Gaps;
import ringout.check.form.Situation;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.signal.NetRoles;
import ringout.graph.signal.References;
import ringout.model.PinRole;

/**
 * Two units that talk over wires measured against their own 0V.
 *
 * @param a signal pin of one unit, or its leg of the bus
 * @param b that of the other
 * @param zeroA the 0V pin that goes with it
 * @param zeroB the other 0V pin
 * @param differential over a pair, not single-ended
 */
record ZeroLink(int a, int b, int zeroA, int zeroB, boolean differential) {
    static final String ZERO = "0V pin";

    /** Two 0V pins, and whether a pair joins their units: one link is enough of each. */
    private record Key(int zeroA, int zeroB, boolean differential) {
        @Override
        public boolean equals(Object other) {
            return this == other
                    || (other instanceof Key that
                            && zeroA == that.zeroA
                            && zeroB == that.zeroB
                            && differential == that.differential);
        }

        @Override
        public int hashCode() {
            return 31 * (31 * zeroA + zeroB) + (differential ? 1 : 0);
        }
    }

    /** The same seen from the other unit. */
    ZeroLink turned() {
        return new ZeroLink(b, a, zeroB, zeroA, differential);
    }

    /** The links of a circuit, one for each two 0V pins; where the 0V of a unit is not known it is noted. */
    static List<ZeroLink> all(Situation at, Gaps gaps) {
        Map<Key, ZeroLink> found = new LinkedHashMap<>();
        NetRoles roles = NetRoles.of(at.circuit());
        roles.each(NetRoles.DRIVERS, net -> {
            if (roles.any(net, NetRoles.RECEIVERS)) {
                int driver = roles.pins(net, NetRoles.DRIVERS).get(0);
                roles.pins(net, NetRoles.RECEIVERS).forEach(pin -> add(at, gaps, found, driver, pin, false));
            }
        });
        long data = NetRoles.bits(PinRole.SDA);
        roles.each(data, net -> {
            List<Integer> pins = roles.pins(net, data);
            pins.forEach(pin -> add(at, gaps, found, pins.get(0), pin, false));
        });
        Buses buses = Buses.of(at.circuit());
        for (BusSegment segment : buses.segments()) {
            List<BusHub> nodes = buses.nodes(segment);
            nodes.stream()
                    .filter(node -> node.leg() >= 0 && nodes.get(0).leg() >= 0)
                    .forEach(node -> bus(at, gaps, found, nodes.get(0), node));
        }
        return new ArrayList<>(found.values());
    }

    private static void bus(Situation at, Gaps gaps, Map<Key, ZeroLink> found, BusHub first, BusHub node) {
        int a = pin(at, first);
        int b = pin(at, node);
        if (a >= 0 && b >= 0) {
            add(at, gaps, found, a, b, true);
        }
    }

    /** A wired pin of the leg of a member; -1 when it has none. */
    private static int pin(Situation at, BusHub hub) {
        for (int pin = at.wiring().firstPin(hub.unit()); pin < at.wiring().endPin(hub.unit()); pin++) {
            if (at.wiring().wiresAt(pin).length > 0 && at.circuit().nets().same(pin, hub.leg())) {
                return pin;
            }
        }
        return -1;
    }

    private static void add(Situation at, Gaps gaps, Map<Key, ZeroLink> found, int a, int b, boolean differential) {
        if (at.wiring().unitOf(a) == at.wiring().unitOf(b)) {
            return;
        }
        References references = References.of(at.circuit());
        int zeroA = references.zeroPin(a);
        int zeroB = references.zeroPin(b);
        if (zeroA < 0 || zeroB < 0) {
            gaps.add(ZERO, at.wiring().unit(zeroA < 0 ? a : b).ref());
            return;
        }
        found.putIfAbsent(
                new Key(Math.min(zeroA, zeroB), Math.max(zeroA, zeroB), differential),
                new ZeroLink(a, b, zeroA, zeroB, differential));
    }
}
