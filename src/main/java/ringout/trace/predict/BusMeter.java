package ringout.trace.predict;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.bus.Buses;
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
    private final Map<Integer, Set<Integer>> netsOf = new HashMap<>();

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

    private Reading reading(String id, List<Change> faults, FieldTest.BusOhms at) {
        int high = leg(at.unit(), at.plug(), PinRole.CAN_H).orElse(-1);
        boolean matters = high >= 0 && !faults.isEmpty() && touches(faults, high);
        return matters ? kept(id, faults, at) : kept("", List.of(), at);
    }

    private Reading kept(String id, List<Change> fault, FieldTest.BusOhms at) {
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

    /** Ohms from a bus contact to another contact, everything mated. */
    public Reading between(Candidate candidate, int pin, int other) {
        boolean matters = !candidate.changes().isEmpty() && touches(candidate.changes(), pin);
        String key = (matters ? candidate.id() : "") + "|" + pin + "|" + other;
        Reading reading = known.get(key);
        if (reading == null) {
            reading = network.reading(pin, other, matters ? candidate.changes() : List.of());
            known.put(key, reading);
        }
        return reading;
    }

    /** Whether changes touch a net of the bus that a contact is on: others cannot change what is read between its legs. */
    private boolean touches(List<Change> changes, int pin) {
        Set<Integer> nets = netsOf.computeIfAbsent(pin, this::busNets);
        return new Edited(circuit, changes)
                .touched().stream()
                        .anyMatch(vertex -> nets.contains(circuit.nets().of(vertex)));
    }

    private Set<Integer> busNets(int pin) {
        Buses buses = Buses.of(circuit);
        Set<Integer> nets = new TreeSet<>(Set.of(circuit.nets().of(pin)));
        buses.hubOfPin(pin).ifPresent(hub -> {
            for (int index : buses.segment(hub).hubs()) {
                for (int leg : new int[] {
                    buses.hubs().get(index).high(), buses.hubs().get(index).low()
                }) {
                    if (leg >= 0) {
                        nets.add(circuit.nets().of(leg));
                    }
                }
            }
        });
        return nets;
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
