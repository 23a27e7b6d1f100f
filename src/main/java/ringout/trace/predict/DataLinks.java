package ringout.trace.predict;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.signal.NetRoles;
import ringout.model.PinRole;

/** All ways by which units hear each other in the healthy circuit. */
final class DataLinks {
    private static final long CLOCK = NetRoles.bits(PinRole.SCL);
    private static final long DATA = NetRoles.bits(PinRole.SDA);

    private final Circuit circuit;
    private final Wiring wiring;
    private final NetRoles roles;
    private final List<DataLink> links = new ArrayList<>();

    private DataLinks(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.roles = NetRoles.of(circuit);
        buses();
        roles.each(NetRoles.DRIVERS, this::driven);
        together(DataLink.Form.PHASES, NetRoles.bits(PinRole.PHASE));
        together(DataLink.Form.PAIR, NetRoles.bits(PinRole.PAIR_P, PinRole.PAIR_N, PinRole.RF, PinRole.COIL));
        twoLines();
    }

    /** The links of a circuit, found once. */
    static List<DataLink> of(Circuit circuit) {
        return Collections.unmodifiableList(circuit.know(DataLinks.class, DataLinks::new).links);
    }

    private void buses() {
        Buses buses = Buses.of(circuit);
        for (BusSegment segment : buses.segments()) {
            List<BusHub> nodes = segment.wired() ? buses.nodes(segment) : List.of();
            for (int i = 0; i < nodes.size(); i++) {
                for (int j = i + 1; j < nodes.size(); j++) {
                    bus(nodes.get(i), nodes.get(j));
                }
            }
        }
    }

    private void bus(BusHub a, BusHub b) {
        if (a.unit() != b.unit() && a.high() >= 0 && a.low() >= 0 && b.high() >= 0 && b.low() >= 0) {
            links.add(new DataLink(
                    a.unit(),
                    b.unit(),
                    DataLink.Form.BUS,
                    List.of(new DataLink.Line(a.high(), b.high()), new DataLink.Line(a.low(), b.low()))));
        }
    }

    private void driven(int net) {
        for (int driver : roles.pins(net, NetRoles.DRIVERS)) {
            for (int receiver : roles.pins(net, NetRoles.RECEIVERS)) {
                int from = wiring.unitOf(driver);
                int to = wiring.unitOf(receiver);
                if (from != to) {
                    links.add(new DataLink(from, to, DataLink.Form.WIRE, List.of(new DataLink.Line(driver, receiver))));
                }
            }
        }
    }

    /** All lines of one sort between two units are one link: each must hold. */
    private void together(DataLink.Form form, long role) {
        Map<List<Integer>, List<DataLink.Line>> byUnits = new LinkedHashMap<>();
        roles.each(role, net -> {
            List<Integer> pins = roles.pins(net, role);
            for (int i = 0; i < pins.size(); i++) {
                for (int j = i + 1; j < pins.size(); j++) {
                    put(byUnits, pins.get(i), pins.get(j));
                }
            }
        });
        byUnits.forEach(
                (units, lines) -> links.add(new DataLink(units.get(0), units.get(1), form, List.copyOf(lines))));
    }

    private void put(Map<List<Integer>, List<DataLink.Line>> byUnits, int a, int b) {
        int from = wiring.unitOf(a);
        int to = wiring.unitOf(b);
        if (from != to) {
            DataLink.Line line = from < to ? new DataLink.Line(a, b) : new DataLink.Line(b, a);
            byUnits.computeIfAbsent(List.of(Math.min(from, to), Math.max(from, to)), key -> new ArrayList<>())
                    .add(line);
        }
    }

    private void twoLines() {
        Map<List<Integer>, List<DataLink.Line>> clocks = new TreeMap<>(DataLinks::byUnits);
        Map<List<Integer>, List<DataLink.Line>> data = new TreeMap<>(DataLinks::byUnits);
        pairs(CLOCK, clocks);
        pairs(DATA, data);
        clocks.forEach((units, lines) -> {
            List<DataLink.Line> other = data.getOrDefault(units, List.of());
            if (!other.isEmpty()) {
                links.add(new DataLink(
                        units.get(0), units.get(1), DataLink.Form.I2C, List.of(lines.get(0), other.get(0))));
            }
        });
    }

    private static int byUnits(List<Integer> a, List<Integer> b) {
        int first = Integer.compare(a.get(0), b.get(0));
        return first != 0 ? first : Integer.compare(a.get(1), b.get(1));
    }

    private void pairs(long role, Map<List<Integer>, List<DataLink.Line>> into) {
        roles.each(role, net -> {
            List<Integer> pins = roles.pins(net, role);
            for (int i = 0; i < pins.size(); i++) {
                for (int j = i + 1; j < pins.size(); j++) {
                    put(into, pins.get(i), pins.get(j));
                }
            }
        });
    }
}
