package ringout.trace.candidate;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.PinRole;
import ringout.solve.meter.Change;

/** Neighbours that touch or are exchanged: conductors of one lead, contacts of one plug, and chafed conductors. */
final class TouchCandidates {

    private final Bench bench;
    private final Wiring wiring;

    private TouchCandidates(Bench bench) {
        this.bench = bench;
        this.wiring = bench.wiring();
    }

    static void addTo(Bench bench) {
        TouchCandidates made = new TouchCandidates(bench);
        bench.leads().values().forEach(made::neighbours);
        made.plugs();
        made.chafed();
    }

    private void neighbours(List<Wire> wires) {
        for (int i = 1; i < wires.size(); i++) {
            Wire one = wires.get(i - 1);
            Wire other = wires.get(i);
            SortedSet<Circumstance> told = bench.places().ofWire(one);
            // at the far end, behind a fuse at the near one: there it chafes, and there the fuse protects
            touch(one, other, one.toEnd(), other.toEnd(), told);
            crossed(one, other, told);
        }
    }

    /** Contacts side by side in a plug whose conductors belong to different leads. */
    private void plugs() {
        for (int pin = 1; pin < wiring.pinCount(); pin++) {
            int unit = wiring.unitOf(pin);
            boolean beside = wiring.unitOf(pin - 1) == unit && wiring.plugIndex(pin - 1) == wiring.plugIndex(pin);
            if (beside && wiring.wiresAt(pin).length > 0 && wiring.wiresAt(pin - 1).length > 0) {
                Wire one = wiring.wires().get(wiring.wiresAt(pin - 1)[0]);
                Wire other = wiring.wires().get(wiring.wiresAt(pin)[0]);
                if (one.leadIndex() != other.leadIndex() && bench.whole(one) && bench.whole(other)) {
                    touch(one, other, pin - 1, pin, bench.places().ofPlug(unit, wiring.plugIndex(pin)));
                }
            }
        }
    }

    private void touch(Wire one, Wire other, int a, int b, SortedSet<Circumstance> told) {
        if (bench.circuit().nets().same(a, b)) {
            return;
        }
        List<Wire> wires = List.of(one, other);
        FaultKind kind = kind(one, other);
        String ids = String.join(" and ", Bench.rows(wires));
        bench.add(
                kind,
                wiring.name(a) + " with " + wiring.name(b),
                new Defect.Shorted(a, b),
                ids + (legs(one, other) ? " H and L touch" : " shorted: " + what(one, other)),
                Bench.rows(wires),
                Repair.lead(one.lead().id()),
                bench.places().atLead(wires),
                told,
                List.of(new Change.Added(a, b, 0)));
    }

    private String what(Wire one, Wire other) {
        return bench.pin(one.fromPin()) + " with " + bench.pin(other.fromPin());
    }

    private FaultKind kind(Wire one, Wire other) {
        if (bench.isReturn(one) || bench.isReturn(other)) {
            return FaultKind.SHORT_TO_ZERO;
        }
        return supply(one) || supply(other) ? FaultKind.SHORT_TO_RAIL : FaultKind.SHORT_TO_NEIGHBOUR;
    }

    private boolean supply(Wire wire) {
        return bench.supply(wire.fromPin()) || bench.supply(wire.toPin());
    }

    private boolean legs(Wire one, Wire other) {
        int a = one.fromPin();
        int b = other.fromPin();
        return (wiring.is(a, PinRole.CAN_H) && wiring.is(b, PinRole.CAN_L))
                || (wiring.is(a, PinRole.CAN_L) && wiring.is(b, PinRole.CAN_H));
    }

    private void crossed(Wire one, Wire other, SortedSet<Circumstance> told) {
        if (bench.circuit().nets().same(one.fromPin(), other.fromPin())) {
            return;
        }
        boolean pair = legs(one, other);
        String lead = one.lead().id();
        bench.add(
                pair ? FaultKind.SWAPPED_PAIR : FaultKind.SWAPPED_PINS,
                lead + " " + what(one, other),
                new Defect.Crossed(one, other),
                pair ? "H and L swapped in " + lead : "swapped in " + lead + ": " + what(one, other),
                List.of(lead),
                Repair.lead(lead),
                bench.places().atLead(List.of(one, other)),
                told,
                List.of(
                        new Change.Moved(wiring.toContactEdge(one), one.toEnd(), other.toPin()),
                        new Change.Moved(wiring.toContactEdge(other), other.toEnd(), one.toPin())));
    }

    /** A conductor that passes an edge or carbon without a guard may chafe through to the frame, which is 0V. */
    private void chafed() {
        int frame = frame();
        for (Wire wire : wiring.wires()) {
            SortedSet<Circumstance> told = bench.places().ofWire(wire);
            boolean apart = frame >= 0 && !bench.circuit().nets().same(frame, wire.fromEnd());
            if (bench.whole(wire) && told.contains(Circumstance.CHAFE) && apart) {
                String lead = wire.lead().id();
                bench.add(
                        FaultKind.SHORT_TO_ZERO,
                        lead + " " + bench.pin(wire.fromPin()) + " to the frame",
                        new Defect.Shorted(wire.fromEnd(), frame),
                        lead + " chafed through to the frame: " + bench.pin(wire.fromPin()),
                        List.of(lead),
                        Repair.lead(lead),
                        bench.places().atLead(List.of(wire)),
                        new TreeSet<>(told),
                        List.of(new Change.Added(wire.fromEnd(), frame, 0)));
            }
        }
    }

    /** The first 0V pin that is wired; -1 when there is none. */
    private int frame() {
        for (int pin = 0; pin < wiring.pinCount(); pin++) {
            if (wiring.is(pin, PinRole.ZERO_V) && wiring.wiresAt(pin).length > 0) {
                return pin;
            }
        }
        return -1;
    }
}
