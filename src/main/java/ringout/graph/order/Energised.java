package ringout.graph.order;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.index.IndexGraph;
import ringout.model.Datum;
import ringout.model.PartKind;
import ringout.model.PinRole;

/**
 * What has power after a step that energises: all that supply reaches from the units it names, through the leads made by
 * then and the parts inside units, and all that their 0V reaches. A lead that no step makes counts as made. Switches count
 * as closed, regulators as on.
 */
public final class Energised {
    private static final Set<PartKind> ONE_WAY = Set.of(
            PartKind.SOURCE,
            PartKind.DIODE,
            PartKind.IDEAL_DIODE,
            PartKind.REGULATOR,
            PartKind.LINEAR_REGULATOR,
            PartKind.ISOLATED_CONVERTER);

    private final Circuit circuit;
    private final Wiring wiring;
    private final BitSet made;
    private final BitSet supplied;
    private final BitSet returned;

    private Energised(Circuit circuit, PlanStep step, BitSet made) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.made = made;
        Deque<Integer> supply = new ArrayDeque<>();
        Deque<Integer> zero = new ArrayDeque<>();
        for (Item item : step.items()) {
            if (item instanceof Item.OfUnit of && circuit.aboard(of.unit())) {
                start(wiring.firstPin(of.unit()), wiring.endPin(of.unit()), supply, zero);
            } else if (item instanceof Item.OfPlug of && circuit.aboard(of.unit())) {
                start(wiring.firstPin(of.unit(), of.plug()), wiring.endPin(of.unit(), of.plug()), supply, zero);
            }
        }
        this.supplied = reach(supply, true);
        this.returned = reach(zero, false);
    }

    /** What has power after a step. */
    public static Energised after(Circuit circuit, PlanStep step) {
        BuildPlan plan = BuildPlan.of(circuit);
        int rows = circuit.wiring().aircraft().leads().size();
        BitSet made = new BitSet(rows);
        for (int row = 0; row < rows; row++) {
            made.set(row, plan.made(row, step.index()));
        }
        return new Energised(circuit, step, made);
    }

    /** The same with every lead of the list made. */
    public Energised complete(PlanStep step) {
        BitSet all = new BitSet();
        all.set(0, wiring.aircraft().leads().size());
        return new Energised(circuit, step, all);
    }

    private void start(int first, int end, Deque<Integer> supply, Deque<Integer> zero) {
        for (int pin = first; pin < end; pin++) {
            if (supplies(pin) || wiring.is(pin, PinRole.PACK_PLUS)) {
                supply.add(pin);
            } else if (wiring.is(pin, PinRole.ZERO_V) || wiring.is(pin, PinRole.PACK_MINUS)) {
                zero.add(pin);
            }
        }
    }

    private boolean supplies(int pin) {
        return wiring.is(pin, PinRole.SUPPLY_IN)
                || wiring.is(pin, PinRole.SUPPLY_OUT)
                || wiring.is(pin, PinRole.SUPPLY_THROUGH);
    }

    private BitSet reach(Deque<Integer> open, boolean throughParts) {
        BitSet seen = new BitSet();
        open.forEach(seen::set);
        IndexGraph graph = circuit.live();
        while (!open.isEmpty()) {
            int here = open.remove();
            int end = graph.endSlot(here);
            for (int slot = graph.firstSlot(here); slot < end; slot = graph.nextSlot(slot, end)) {
                int there = graph.slotVertex(slot);
                if (!seen.get(there) && passes(graph.slotEdge(slot), here, there, throughParts)) {
                    seen.set(there);
                    open.add(there);
                }
            }
        }
        return seen;
    }

    private boolean passes(int edge, int here, int there, boolean throughParts) {
        int ref = wiring.ref(edge);
        return switch (wiring.kind(edge)) {
            case CONDUCTOR, CONTACT -> made.get(wiring.wires().get(ref).leadIndex());
            case JOIN -> true;
            case PART -> throughParts && conducts(wiring.parts().get(ref), here, there);
        };
    }

    private boolean conducts(Part part, int here, int there) {
        boolean forward = part.from() == here && part.to() == there;
        if (part.origin() instanceof Part.LeadFuse fuse) {
            return made.get(wiring.wires().get(fuse.wire()).leadIndex());
        }
        if (part.origin() instanceof Part.Inner inner && inner.part().kind() instanceof Datum.Known<PartKind> kind) {
            return kind.value() != PartKind.RESISTOR && (forward || !ONE_WAY.contains(kind.value()));
        }
        return false;
    }

    /** Whether a unit takes power. */
    public boolean powers(int unit) {
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if (supplied.get(pin) && supplies(pin)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the 0V of a unit is joined to that of the source. */
    public boolean returns(int unit) {
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if (returned.get(pin) && wiring.is(pin, PinRole.ZERO_V)) {
                return true;
            }
        }
        return false;
    }
}
