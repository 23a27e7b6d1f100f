package ringout.solve.dc;

import java.util.Arrays;
import ringout.solve.dc.DcElement.Diode;
import ringout.solve.dc.DcElement.Regulator;

/** Names what each element does in a settled flow. */
final class States {

    private States() {}

    static ElementState[] of(CircuitNetwork circuit, Attempt.Settled settled) {
        ElementState[] states = new ElementState[circuit.circuit().elements().size()];
        Arrays.fill(states, ElementState.WORKING);
        for (int e = 0; e < states.length; e++) {
            DcElement element = circuit.element(e);
            int draw = circuit.draw(e);
            if (draw != CircuitNetwork.NONE && !settled.flow().fed(draw)) {
                states[e] = settled.flow().reversed(draw) ? ElementState.REVERSED : ElementState.UNFED;
            } else if (element instanceof Diode && !settled.conducts(e)) {
                states[e] = ElementState.BLOCKING;
            } else if (element instanceof Regulator r) {
                states[e] = regulator(circuit, settled, e, r);
            }
        }
        return states;
    }

    private static ElementState regulator(CircuitNetwork circuit, Attempt.Settled settled, int e, Regulator r) {
        if (!settled.conducts(e)) {
            return ElementState.BLOCKING;
        }
        double emf = settled.flow().converters().emf()[circuit.branch(e)];
        if (emf >= r.rating().volts()) {
            return ElementState.WORKING;
        }
        return emf < settled.cap(e) ? ElementState.DROPPED_OUT : ElementState.LIMITED;
    }
}
