package ringout.solve.meter;

import java.util.Arrays;
import java.util.List;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.solve.MeterElement;
import ringout.solve.MeterElements;

/** Which elements a conductor is made of. */
final class WireElements {
    private static final int NONE = -1;

    private final int[] conductor;
    private final int[] fromContact;
    private final int[] toContact;

    private WireElements(Circuit circuit) {
        int wires = circuit.wiring().wires().size();
        conductor = new int[wires];
        fromContact = new int[wires];
        toContact = new int[wires];
        Arrays.fill(fromContact, NONE);
        List<MeterElement> elements = MeterElements.of(circuit);
        for (int i = 0; i < elements.size(); i++) {
            if (elements.get(i).piece() instanceof MeterElement.OfWire of) {
                conductor[of.wire().index()] = i;
            } else if (elements.get(i).piece() instanceof MeterElement.OfContact of) {
                boolean first = fromContact[of.wire().index()] == NONE;
                (first ? fromContact : toContact)[of.wire().index()] = i;
            }
        }
    }

    static WireElements of(Circuit circuit) {
        return circuit.know(WireElements.class, WireElements::new);
    }

    int conductor(Wire wire) {
        return conductor[wire.index()];
    }

    int fromContact(Wire wire) {
        return fromContact[wire.index()];
    }

    int toContact(Wire wire) {
        return toContact[wire.index()];
    }

    /** The contact of a conductor at one of its pins. */
    int contact(Wire wire, int pin) {
        return pin == wire.fromPin() ? fromContact(wire) : toContact(wire);
    }
}
