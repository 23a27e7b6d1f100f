package ringout.solve;

import ringout.graph.Circuit;
import ringout.solve.network.EffectiveResistance;
import ringout.solve.network.NetworkBuilder;
import ringout.solve.network.Resistance;
import ringout.solve.network.ResistiveNetwork;

/**
 * What an ohmmeter reads between two points of a circuit with the power off and the packs out, over the elements of
 * {@link MeterElements} at their nominal values. The reading is taken at 20 degC by a meter whose leads are zeroed.
 */
public final class Ohmmeter {
    private final EffectiveResistance resistance;

    private Ohmmeter(Circuit circuit) {
        NetworkBuilder network =
                ResistiveNetwork.builder(circuit.wiring().graph().vertexCount());
        for (MeterElement element : MeterElements.of(circuit)) {
            if (element.live()) {
                network.resistor(element.a(), element.b(), element.ohm());
            }
        }
        this.resistance = EffectiveResistance.of(network.build());
    }

    /** The meter for a circuit, made once. */
    public static Ohmmeter of(Circuit circuit) {
        return circuit.know(Ohmmeter.class, Ohmmeter::new);
    }

    /** The reading between two vertices of the typed graph. */
    public Resistance between(int a, int b) {
        return resistance.between(a, b);
    }
}
