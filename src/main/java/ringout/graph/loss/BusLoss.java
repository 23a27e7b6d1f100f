package ringout.graph.loss;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.model.UnitKind;

/** What cuts a member off the flight controller on its bus. A member of several buses is cut off when all of them are. */
public final class BusLoss {
    private final Map<Integer, Set<Integer>> byUnit = new TreeMap<>();

    private BusLoss(Circuit circuit) {
        Buses buses = Buses.of(circuit);
        SignalLoss signals = SignalLoss.of(circuit);
        for (BusSegment segment : buses.segments()) {
            if (segment.wired()) {
                for (BusHub chief : buses.nodes(segment)) {
                    if (circuit.wiring().directory().type(chief.unit()).kind().is(UnitKind.CONTROLLER)) {
                        signals.fromHub(chief).forEach(this::note);
                    }
                }
            }
        }
    }

    private void note(int unit, Set<Integer> items) {
        Set<Integer> before = byUnit.get(unit);
        Set<Integer> both = new TreeSet<>(items);
        if (before != null) {
            both.retainAll(before);
        }
        byUnit.put(unit, both);
    }

    /** The losses of a circuit, found once. */
    public static BusLoss of(Circuit circuit) {
        return circuit.know(BusLoss.class, BusLoss::new);
    }

    /** Items that cut off each unit on a bus with a flight controller, by number of the unit. */
    public Map<Integer, Set<Integer>> byUnit() {
        return Collections.unmodifiableMap(byUnit);
    }
}
