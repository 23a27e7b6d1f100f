package ringout.trace.predict;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.power.PowerGraph;
import ringout.model.PinRole;
import ringout.trace.candidate.Defect;

/**
 * Whether links still hold after changes of the nets. On a bus both legs must hold: a pair-edge needs both conductors. Legs
 * that touch, H at 0V and either leg at a rail stop the whole bus; L at 0V may still work and shows as errors. A member with
 * its legs exchanged is not heard and disturbs the others while it is plugged.
 */
final class BusStates {
    private final Circuit circuit;
    private final List<List<BusHub>> segments = new ArrayList<>();
    private final List<Integer> zeros = new ArrayList<>();
    private final List<Integer> rails = new ArrayList<>();

    private BusStates(Circuit circuit) {
        this.circuit = circuit;
        Buses buses = Buses.of(circuit);
        for (BusSegment segment : buses.segments()) {
            if (segment.wired()) {
                segments.add(buses.nodes(segment).stream()
                        .filter(hub -> hub.high() >= 0 && hub.low() >= 0)
                        .toList());
            }
        }
        Wiring wiring = circuit.wiring();
        BitSet seen = new BitSet();
        for (int pin = 0; pin < wiring.pinCount(); pin++) {
            boolean zero = wiring.is(pin, PinRole.ZERO_V) || wiring.is(pin, PinRole.PACK_MINUS);
            boolean rail = wiring.role(pin).map(PowerGraph::isSupply).orElse(false);
            int net = circuit.nets().of(pin);
            if ((zero || rail) && !seen.get(net)) {
                seen.set(net);
                (zero ? zeros : rails).add(pin);
            }
        }
    }

    static BusStates of(Circuit circuit) {
        return circuit.know(BusStates.class, BusStates::new);
    }

    private static boolean any(List<Integer> points, EditedNets nets, int vertex) {
        if (!nets.changed(vertex)) {
            return false; // in the healthy circuit no signal lies on a supply
        }
        for (int point : points) {
            if (nets.same(point, vertex)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a link carries what it should. */
    boolean holds(DataLink link, EditedNets nets) {
        if (link.form() == DataLink.Form.PHASES) {
            return phases(link, nets);
        }
        for (DataLink.Line line : link.lines()) {
            if (!nets.same(line.a(), line.b())) {
                return false;
            }
        }
        boolean bus = link.form() == DataLink.Form.BUS;
        for (int i = 0; i < link.lines().size(); i++) {
            int at = link.lines().get(i).a();
            boolean grounded = any(zeros, nets, at) && !(bus && i == 1);
            if (grounded || any(rails, nets, at)) {
                return false;
            }
        }
        return link.lines().size() != 2
                || !nets.same(link.lines().get(0).a(), link.lines().get(1).a());
    }

    /** Each phase at a phase of its own, in whatever order: the motor turns. A supply on one stops it. */
    private boolean phases(DataLink link, EditedNets nets) {
        BitSet met = new BitSet();
        for (DataLink.Line line : link.lines()) {
            int far = order(link, nets, line);
            if (far < 0 || met.get(far) || any(zeros, nets, line.a()) || any(rails, nets, line.a())) {
                return false;
            }
            met.set(far);
        }
        return true;
    }

    /** The number of the only far phase that a near one meets, or -1. */
    private static int order(DataLink link, EditedNets nets, DataLink.Line near) {
        int found = -1;
        for (int i = 0; i < link.lines().size(); i++) {
            if (nets.same(near.a(), link.lines().get(i).b())) {
                if (found >= 0) {
                    return -1;
                }
                found = i;
            }
        }
        return found;
    }

    /** Whether the phases of a motor that turns are in another order than listed: it may turn the wrong way. */
    static boolean turned(DataLink link, EditedNets nets) {
        return link.form() == DataLink.Form.PHASES
                && link.lines().stream().anyMatch(line -> !nets.same(line.a(), line.b()));
    }

    /** Units whose bus is not steady: a leg at 0V that still lets it work, or a member the wrong way round on it. */
    BitSet unsteady(EditedNets nets, BitSet working) {
        BitSet found = new BitSet();
        for (List<BusHub> members : segments) {
            for (BusHub hub : members) {
                if (any(zeros, nets, hub.low())) {
                    found.set(hub.unit());
                }
                if (working.get(hub.unit()) && (nets.changed(hub.high()) || nets.changed(hub.low()))) {
                    members.stream()
                            .filter(other -> nets.same(hub.high(), other.low()) && nets.same(hub.low(), other.high()))
                            .forEach(other -> onNets(members, nets, hub, found));
                }
            }
        }
        return found;
    }

    /** All members whose legs are the two nets of one, either way round. */
    private static void onNets(List<BusHub> members, EditedNets nets, BusHub hub, BitSet found) {
        for (BusHub other : members) {
            boolean same = nets.same(hub.high(), other.high()) || nets.same(hub.high(), other.low());
            if (same) {
                found.set(other.unit());
            }
        }
    }

    /** Whether two members are still on one bus; with -1 for the second, whether the first is on one with any other. */
    boolean together(int unit, int other, EditedNets nets) {
        for (List<BusHub> members : segments) {
            for (BusHub one : members) {
                for (BusHub two : members) {
                    boolean asked = one.unit() == unit && two.unit() != unit && (other < 0 || two.unit() == other);
                    if (asked && nets.same(one.high(), two.high()) && nets.same(one.low(), two.low())) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** The other members of the bus that a port is on. */
    BitSet others(int unit, String port) {
        BitSet found = new BitSet();
        for (List<BusHub> members : segments) {
            if (members.stream()
                    .anyMatch(hub -> hub.unit() == unit && hub.typePort().equals(port))) {
                members.forEach(hub -> found.set(hub.unit()));
            }
        }
        found.clear(unit);
        return found;
    }

    /** Members of a bus on which no terminator is left: the last bit of every edge rings on. */
    BitSet withoutAny(Defect.Terminated of) {
        BitSet found = new BitSet();
        for (List<BusHub> members : segments) {
            int left = 0;
            boolean here = false;
            for (Part part : circuit.wiring().parts()) {
                if (part.origin() instanceof Part.Terminator && at(members, part)) {
                    here |= of.off().contains(part);
                    left += circuit.live().hasEdge(part.edge()) && !of.off().contains(part) ? 1 : 0;
                    left += of.on().contains(part) ? 1 : 0;
                }
            }
            if (here && left == 0) {
                members.forEach(hub -> found.set(hub.unit()));
            }
        }
        return found;
    }

    private static boolean at(List<BusHub> members, Part part) {
        return members.stream().anyMatch(hub -> hub.high() == part.from() && hub.low() == part.to());
    }
}
