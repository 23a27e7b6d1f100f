package ringout.solve.power;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.State;
import ringout.model.shape.Shape;
import ringout.solve.ProbePoint;

/** Operating points for tests, and the words to read them with. */
final class Flows {
    private Flows() {}

    static Circuit sample(String name) {
        return circuit(SmallAircraft.sample(name));
    }

    static Circuit circuit(Aircraft aircraft) {
        return Circuit.all(Wiring.of(aircraft)).get(0);
    }

    /** The same aircraft with units taken off or plugs pulled. */
    static Circuit without(Circuit circuit, String field, List<String> names) {
        Shape<State> shape = Shape.of(State.class);
        return Circuit.of(circuit.wiring(), shape.with(circuit.state(), field, names));
    }

    static PowerFlow flow(Circuit circuit, LoadCase of) {
        OperatingPoint point = OperatingPoint.of(circuit, of);
        assertTrue(point instanceof PowerFlow, point.toString());
        return (PowerFlow) point;
    }

    static int at(PowerFlow flow, String pin) {
        return ProbePoint.find(flow.circuit().wiring(), pin).orElseThrow();
    }

    static double volts(PowerFlow flow, String plus, String minus) {
        return flow.volts(at(flow, plus), at(flow, minus)).orElseThrow();
    }

    static Wire wire(PowerFlow flow, String lead) {
        return flow.circuit().wiring().wires().stream()
                .filter(wire -> wire.lead().id().equals(lead))
                .findFirst()
                .orElseThrow();
    }

    static double packAmps(PowerFlow flow) {
        return flow.packs().stream().mapToDouble(PackFigure::amps).sum();
    }

    static RegulatorFigure regulator(PowerFlow flow, String name) {
        return flow.regulators().stream()
                .filter(r -> r.source().name().startsWith(name))
                .findFirst()
                .orElseThrow();
    }

    static LoadFigure load(PowerFlow flow, String unit) {
        return flow.loads().stream()
                .filter(l -> flow.circuit()
                        .wiring()
                        .directory()
                        .name(l.load().unit())
                        .equals(unit))
                .findFirst()
                .orElseThrow();
    }
}
