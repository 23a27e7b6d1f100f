package ringout.trace.predict;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.PinRole;
import ringout.solve.meter.Change;
import ringout.solve.meter.MeterNetwork;
import ringout.solve.meter.Reading;
import ringout.trace.candidate.Candidate;

/**
 * What an ohmmeter shows between the legs of a bus with a fault in it, power off, plug mated or pulled. Every reading is that
 * of the network with the changes of the fault and of the pulled plug; each is computed once.
 */
public final class BusMeter {
    private final Circuit circuit;
    private final Wiring wiring;
    private final MeterNetwork network;
    private final Map<String, Reading> known = new HashMap<>();

    private BusMeter(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.network = MeterNetwork.of(circuit);
    }

    /** The meter of a circuit. */
    public static BusMeter of(Circuit circuit) {
        return circuit.know(BusMeter.class, BusMeter::new);
    }

    /** The contact of a leg at a plug that a conductor is mated with. */
    OptionalInt leg(int unit, int plug, PinRole role) {
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            if (wiring.is(pin, role) && wiring.wiresAt(pin).length > 0 && circuit.mated(pin)) {
                return OptionalInt.of(pin);
            }
        }
        return OptionalInt.empty();
    }

    /** What the meter shows at a plug that has both legs. */
    public Reading reading(Candidate candidate, FieldTest.BusOhms at) {
        return reading(candidate.id(), candidate.changes(), at);
    }

    /** What the meter shows when nothing is wrong. */
    public Reading healthy(FieldTest.BusOhms at) {
        return reading("", List.of(), at);
    }

    private Reading reading(String id, List<Change> fault, FieldTest.BusOhms at) {
        String key = id + "|" + at;
        Reading reading = known.get(key);
        if (reading == null) {
            reading = find(fault, at);
            known.put(key, reading);
        }
        return reading;
    }

    private Reading find(List<Change> fault, FieldTest.BusOhms at) {
        int high = leg(at.unit(), at.plug(), PinRole.CAN_H).orElse(-1);
        int low = leg(at.unit(), at.plug(), PinRole.CAN_L).orElse(-1);
        if (high < 0 || low < 0) {
            return new Reading.NoConnection();
        }
        if (at.side() == FieldTest.BusOhms.Side.MATED) {
            return network.reading(high, low, fault);
        }
        List<Change> changes = with(fault, pulled(at.unit(), at.plug()));
        return at.side() == FieldTest.BusOhms.Side.INTO_UNIT
                ? network.reading(high, low, changes)
                : network.reading(end(high), end(low), changes);
    }

    /** Ohms between any two contacts, everything mated. */
    public Reading between(Candidate candidate, int a, int b) {
        return network.reading(a, b, candidate.changes());
    }

    private int end(int pin) {
        return wiring.wires().get(wiring.wiresAt(pin)[0]).endAt(pin);
    }

    /** What pulling a plug opens. */
    List<Change> pulled(int unit, int plug) {
        List<Change> opened = new ArrayList<>();
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            for (int w : wiring.wiresAt(pin)) {
                Wire wire = wiring.wires().get(w);
                int contact = pin == wire.fromPin() ? wiring.fromContactEdge(wire) : wiring.toContactEdge(wire);
                opened.add(new Change.Opened(contact));
            }
        }
        return opened;
    }

    /** A pulled plug takes with it what the fault did to its contacts. */
    static List<Change> with(List<Change> fault, List<Change> pulled) {
        List<Change> all = new ArrayList<>(fault);
        for (Change change : pulled) {
            int element = ((Change.Opened) change).element();
            all.removeIf(other -> (other instanceof Change.Moved moved && moved.element() == element)
                    || (other instanceof Change.Opened opened && opened.element() == element));
            all.add(change);
        }
        return all;
    }
}
