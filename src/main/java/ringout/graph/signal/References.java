package ringout.graph.signal;

import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.index.UnionFind;
import ringout.model.PartKind;
import ringout.model.PinRole;

/**
 * Which 0V points are one reference: nets joined by conductors, and by parts of low resistance such as a sense resistor in the return, a link, a closed fuse or switch.
 */
public final class References {
    private static final int NONE = -1;

    private final Circuit circuit;
    private final UnionFind groups;

    private References(Circuit circuit) {
        this.circuit = circuit;
        this.groups = new UnionFind(circuit.nets().count());
        for (Part part : circuit.wiring().parts()) {
            if (circuit.live().hasEdge(part.edge()) && low(part)) {
                groups.union(circuit.nets().of(part.from()), circuit.nets().of(part.to()));
            }
        }
    }

    /** The references of a circuit, found once. */
    public static References of(Circuit circuit) {
        return circuit.know(References.class, References::new);
    }

    private static boolean low(Part part) {
        if (part.origin() instanceof Part.Inner inner) {
            return inner.part().kind().known().map(References::low).orElse(false);
        }
        return part.origin() instanceof Part.LeadFuse;
    }

    private static boolean low(PartKind kind) {
        return switch (kind) {
            case LINK, FUSE, SWITCH, SENSE_RESISTOR -> true;
            default -> false;
        };
    }

    /** The 0V pin a signal pin goes with: of its plug, else of its unit; -1 when the unit has none. */
    public int zeroPin(int pin) {
        Wiring wiring = circuit.wiring();
        int unit = wiring.unitOf(pin);
        int plug = wiring.plugIndex(pin);
        int own = zero(wiring.firstPin(unit, plug), wiring.endPin(unit, plug));
        return own != NONE ? own : zero(wiring.firstPin(unit), wiring.endPin(unit));
    }

    private int zero(int first, int end) {
        for (int pin = first; pin < end; pin++) {
            if (circuit.wiring().is(pin, PinRole.ZERO_V)) {
                return pin;
            }
        }
        return NONE;
    }

    /** Whether two points have one reference. */
    public boolean same(int a, int b) {
        return groups.find(circuit.nets().of(a)) == groups.find(circuit.nets().of(b));
    }
}
