package ringout.solve.meter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Wire;
import ringout.graph.Wiring;

/** What may be wrong inside leads near the probed points: neighbours that touch or are crossed. */
final class LeadFaults {
    private final Probed probed;
    private final Wiring wiring;
    private final WireElements pieces;
    private final List<Fault> faults = new ArrayList<>();

    private LeadFaults(Probed probed) {
        this.probed = probed;
        this.wiring = probed.wiring();
        this.pieces = WireElements.of(probed.circuit());
    }

    static List<Fault> of(Probed probed) {
        LeadFaults found = new LeadFaults(probed);
        Map<Integer, List<Wire>> leads = new LinkedHashMap<>();
        for (Wire wire : found.wiring.wires()) {
            leads.computeIfAbsent(wire.leadIndex(), key -> new ArrayList<>()).add(wire);
        }
        leads.values().forEach(found::neighbours);
        return found.faults;
    }

    private void neighbours(List<Wire> wires) {
        for (int i = 1; i < wires.size(); i++) {
            Wire one = wires.get(i - 1);
            Wire other = wires.get(i);
            if (probed.near(one.fromEnd()) || probed.near(other.fromEnd())) {
                shorted(one, other);
                crossed(one, other);
            }
        }
    }

    private void shorted(Wire one, Wire other) {
        if (probed.joinMatters(one.fromEnd(), other.fromEnd())) {
            Change touch = new Change.Added(one.fromEnd(), other.fromEnd(), 0);
            faults.add(fault(Fault.Kind.SHORT, one, other, List.of(touch)));
        }
    }

    /** At the to end; at the from end when the to end is loose. */
    private void crossed(Wire one, Wire other) {
        boolean to = live(pieces.toContact(one)) && live(pieces.toContact(other));
        boolean from = live(pieces.fromContact(one)) && live(pieces.fromContact(other));
        if (to) {
            faults.add(fault(
                    Fault.Kind.CROSSED,
                    one,
                    other,
                    List.of(
                            new Change.Moved(pieces.toContact(one), one.toEnd(), other.toPin()),
                            new Change.Moved(pieces.toContact(other), other.toEnd(), one.toPin()))));
        } else if (from) {
            faults.add(fault(
                    Fault.Kind.CROSSED,
                    one,
                    other,
                    List.of(
                            new Change.Moved(pieces.fromContact(one), one.fromEnd(), other.fromPin()),
                            new Change.Moved(pieces.fromContact(other), other.fromEnd(), one.fromPin()))));
        }
    }

    private boolean live(int element) {
        return probed.element(element).live();
    }

    private Fault fault(Fault.Kind kind, Wire one, Wire other, List<Change> changes) {
        List<String> pins = List.of(wiring.name(one.fromPin()), wiring.name(other.fromPin()));
        return new Fault(kind, one.lead().id(), pins, List.of(one.lead()), changes);
    }
}
