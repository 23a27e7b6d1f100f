package ringout.plan.power;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.model.State;
import ringout.model.shape.Shape;

/** The circuit of a stage: what is not plugged is out of it. */
final class StageCircuits {
    private StageCircuits() {}

    /** {@return the aircraft with these plugs open and these units off it, besides what its state takes away} */
    static Circuit of(Circuit circuit, String stage, List<String> pulled, List<String> absent) {
        Shape<State> shape = Shape.of(State.class);
        State state = circuit.state();
        state = shape.with(state, "pulled", joined(state.pulled(), pulled));
        state = shape.with(state, "absent", joined(state.absent(), absent));
        return Circuit.of(circuit.wiring(), shape.with(state, "name", stage));
    }

    private static List<String> joined(List<String> some, List<String> others) {
        TreeSet<String> all = new TreeSet<>(some);
        all.addAll(others);
        return List.copyOf(new ArrayList<>(all));
    }
}
