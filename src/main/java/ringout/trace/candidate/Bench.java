package ringout.trace.candidate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.PinRole;
import ringout.solve.meter.Change;

/** What all makers of candidates work with: the circuit, the weights, and the list that grows. */
final class Bench {
    private final Circuit circuit;
    private final PriorTable priors;
    private final Places places;
    private final Map<String, Candidate> made = new LinkedHashMap<>();

    Bench(Circuit circuit, PriorTable priors, Recency recency) {
        this.circuit = circuit;
        this.priors = priors;
        this.places = new Places(circuit, recency);
    }

    Circuit circuit() {
        return circuit;
    }

    Wiring wiring() {
        return circuit.wiring();
    }

    Places places() {
        return places;
    }

    /** The candidates so far; the first of two with one identity stays. */
    List<Candidate> all() {
        return List.copyOf(made.values());
    }

    String unit(int unit) {
        return wiring().directory().name(unit);
    }

    /** Adds a candidate; its identity is its kind and place. */
    void add(
            FaultKind kind,
            String place,
            Defect defect,
            String title,
            List<String> rows,
            Repair repair,
            Opening opening,
            SortedSet<Circumstance> told,
            List<Change> changes) {
        double weight = priors.base(kind);
        SortedSet<Circumstance> because = new TreeSet<>();
        for (Circumstance when : told) {
            double factor = priors.factor(kind, when);
            weight *= factor;
            if (factor != 1) {
                because.add(when);
            }
        }
        String id = kind.words() + ": " + place;
        made.putIfAbsent(id, new Candidate(id, kind, defect, title, rows, repair, opening, weight, because, changes));
    }

    /** Whether a contact is made in this state. */
    boolean live(int edge) {
        return circuit.live().hasEdge(edge);
    }

    int contact(Wire wire, int pin) {
        return pin == wire.fromPin() ? wiring().fromContactEdge(wire) : wiring().toContactEdge(wire);
    }

    /** Whether a conductor conducts from pin to pin in this state. */
    boolean whole(Wire wire) {
        return live(wiring().conductorEdge(wire))
                && live(wiring().fromContactEdge(wire))
                && live(wiring().toContactEdge(wire));
    }

    /** Whether a conductor is a return: 0V or pack minus at one of its ends. */
    boolean isReturn(Wire wire) {
        return zero(wire.fromPin()) || zero(wire.toPin());
    }

    boolean zero(int pin) {
        return wiring().is(pin, PinRole.ZERO_V) || wiring().is(pin, PinRole.PACK_MINUS);
    }

    boolean supply(int pin) {
        return wiring().role(pin).map(ringout.graph.power.PowerGraph::isSupply).orElse(false);
    }

    /** The conductors of this state by number of their row, in the order of the rows. */
    Map<Integer, List<Wire>> leads() {
        Map<Integer, List<Wire>> byRow = new LinkedHashMap<>();
        for (Wire wire : wiring().wires()) {
            if (whole(wire)) {
                byRow.computeIfAbsent(wire.leadIndex(), key -> new ArrayList<>())
                        .add(wire);
            }
        }
        return byRow;
    }

    /** The edges of the contacts of a plug that are made, with their conductors. */
    Map<Integer, Wire> contacts(int unit, int plug) {
        Map<Integer, Wire> found = new LinkedHashMap<>();
        for (int pin = wiring().firstPin(unit, plug); pin < wiring().endPin(unit, plug); pin++) {
            for (int w : wiring().wiresAt(pin)) {
                Wire wire = wiring().wires().get(w);
                int contact = contact(wire, pin);
                if (live(contact)) {
                    found.put(contact, wire);
                }
            }
        }
        return found;
    }

    static List<String> rows(Iterable<Wire> wires) {
        Set<String> ids = new java.util.LinkedHashSet<>();
        wires.forEach(wire -> ids.add(wire.lead().id()));
        return List.copyOf(ids);
    }

    /** Short name of a pin for titles: UNIT-PLUG-PIN. */
    String pin(int pin) {
        return wiring().name(pin);
    }
}
