package ringout.solve.power;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.power.PowerGraph;
import ringout.model.PinRole;

/**
 * A supply or 0V net that no source reaches in a state: its voltage is not 0 but undefined, and a meter there shows what its
 * own leads pick up.
 *
 * @param net number of the net in the circuit
 * @param pins its supply and 0V pins of units aboard, ascending
 */
public record FloatingNet(int net, List<Integer> pins) {
    /** Keeps its own copy of the pins. */
    public FloatingNet {
        pins = List.copyOf(pins);
    }

    /** {@return the floating nets of an operating point, in the order of their first pins} */
    public static List<FloatingNet> of(PowerFlow flow) {
        Circuit circuit = flow.circuit();
        Wiring wiring = circuit.wiring();
        Map<Integer, List<Integer>> byNet = new LinkedHashMap<>();
        for (int pin = 0; pin < wiring.pinCount(); pin++) {
            PinRole role = wiring.pin(pin).role().or(PinRole.NONE);
            boolean supply = PowerGraph.isSupply(role) || role == PinRole.ZERO_V || role == PinRole.PACK_MINUS;
            if (supply && circuit.aboard(wiring.unitOf(pin)) && flow.floats(pin)) {
                byNet.computeIfAbsent(circuit.nets().of(pin), key -> new ArrayList<>())
                        .add(pin);
            }
        }
        return byNet.entrySet().stream()
                .map(entry -> new FloatingNet(entry.getKey(), entry.getValue()))
                .toList();
    }
}
