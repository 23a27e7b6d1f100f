package ringout.solve.meter;

import java.util.List;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.solve.MeterElement;

/** A circuit with the meter on two of its vertices: what conducts to them, and where the meter's current goes. */
final class Probed {
    /** A current below this part of the meter's own changes no reading a meter could show. */
    static final double NO_CURRENT = 1e-6;

    private final Circuit circuit;
    private final MeterNetwork network;
    private final int a;
    private final int b;
    private final Island atA;
    private final Island atB;
    private final Optional<Island.Current> current;
    private final double[] load;

    Probed(Circuit circuit, int a, int b) {
        this.circuit = circuit;
        this.network = MeterNetwork.of(circuit);
        this.a = a;
        this.b = b;
        this.atA = network.island(a);
        this.atB = atA.has(b) ? atA : network.island(b);
        this.current = atA.has(b) ? Optional.of(atA.drive(a, b)) : Optional.empty();
        this.load = new double[network.elements().size()];
        current.ifPresent(this::note);
    }

    private void note(Island.Current driven) {
        List<Island.Member> members = atA.members();
        for (int i = 0; i < members.size(); i++) {
            load[members.get(i).number()] = Math.abs(driven.in(i));
        }
    }

    Circuit circuit() {
        return circuit;
    }

    Wiring wiring() {
        return circuit.wiring();
    }

    MeterNetwork network() {
        return network;
    }

    MeterElement element(int number) {
        return network.elements().get(number);
    }

    int a() {
        return a;
    }

    int b() {
        return b;
    }

    /** What conducts to the first point. */
    Island island() {
        return atA;
    }

    Optional<Island.Current> current() {
        return current;
    }

    boolean connected() {
        return current.isPresent();
    }

    Reading reading() {
        return connected() ? atA.reading(a, b) : new Reading.NoConnection();
    }

    /** A reading, and how many elements were solved for it. */
    record Solved(Reading reading, int elements) {}

    /** The reading with a fault. */
    Solved with(Fault fault) {
        Island island = network.island(a, fault.changes());
        Reading reading = island.has(b) ? island.reading(a, b) : new Reading.NoConnection();
        return new Solved(reading, island.members().size());
    }

    /** The part of the meter's current in an element, 0 to 1. */
    double load(int element) {
        return load[element];
    }

    /** Whether opening an element can change the reading. */
    boolean loaded(int element) {
        return load[element] > NO_CURRENT;
    }

    /** Whether a vertex conducts to one of the two points. */
    boolean near(int vertex) {
        return atA.has(vertex) || atB.has(vertex);
    }

    /** Whether joining two vertices can change the reading. */
    boolean joinMatters(int u, int v) {
        if (!connected()) {
            return (atA.has(u) && atB.has(v)) || (atA.has(v) && atB.has(u));
        }
        if (!atA.has(u) || !atA.has(v)) {
            return false;
        }
        Island.Current driven = current.orElseThrow();
        double across = Math.abs(driven.volts(u) - driven.volts(v));
        return across > NO_CURRENT * Math.abs(driven.volts(a));
    }

    /** Whether the meter is on a vertex. */
    boolean isPoint(int vertex) {
        return vertex == a || vertex == b;
    }
}
