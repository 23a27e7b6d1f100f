package ringout.check.form;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.Directory;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.Limit;
import ringout.solve.power.LoadCase;
import ringout.solve.power.OperatingPoint;

/** An aircraft in one declared state, as a check sees it. */
public final class Situation {
    private final Circuit circuit;
    private final Map<String, Limit> limits = new HashMap<>();
    private final Set<String> flightCritical = new HashSet<>();

    /** Sees a circuit. */
    public Situation(Circuit circuit) {
        this.circuit = circuit;
        aircraft().project().limits().forEach(limit -> limits.put(limit.name(), limit));
        aircraft().functions().stream()
                .filter(function -> function.flightCritical().or(false))
                .forEach(function -> flightCritical.addAll(function.chain()));
    }

    /** The typed graph in this state. */
    public Circuit circuit() {
        return circuit;
    }

    /** The circuit with everything aboard, plugged and switched on, whatever the state takes away. */
    public Circuit whole() {
        return circuit.whole();
    }

    /** The typed graph with every plug made. */
    public Wiring wiring() {
        return circuit.wiring();
    }

    /** What is aboard, by name. */
    public Directory directory() {
        return circuit.wiring().directory();
    }

    /** The aircraft as read. */
    public Aircraft aircraft() {
        return circuit.wiring().aircraft();
    }

    /** Name of the state. */
    public String state() {
        return circuit.state().name();
    }

    /** What flows in this state in a case of loads; each case is solved once. */
    public OperatingPoint operatingPoint(LoadCase of) {
        return OperatingPoint.of(circuit, of);
    }

    /** Whether the state is one on the bench. */
    public boolean bench() {
        return circuit.state().bench().or(false);
    }

    /** A limit: the project's own where it has one, with its reason as the source. */
    public Threshold limit(Threshold standard) {
        Limit own = limits.get(standard.name());
        if (own == null || !own.value().isKnown()) {
            return standard;
        }
        String reason = "project limit: " + own.reason().or("no reason given");
        return new Threshold(standard.name(), own.value().or(standard.value()), standard.unit(), reason);
    }

    /** Whether flight depends on a unit: it is in the chain of a flight-critical function. */
    public boolean flightCritical(String unit) {
        return flightCritical.contains(unit);
    }
}
