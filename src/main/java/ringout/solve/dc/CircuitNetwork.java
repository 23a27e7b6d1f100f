package ringout.solve.dc;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import ringout.solve.dc.DcElement.Diode;
import ringout.solve.dc.DcElement.Load;
import ringout.solve.dc.DcElement.Regulator;
import ringout.solve.dc.DcElement.Resistor;
import ringout.solve.dc.DcElement.Source;
import ringout.solve.network.FactorisedNetwork;
import ringout.solve.network.NetworkBuilder;
import ringout.solve.network.NetworkStructure;
import ringout.solve.network.ResistiveNetwork;

/**
 * A circuit as a linear network: what is not linear becomes a current that is driven through it or an element that is
 * switched on and off.
 *
 * <pre>
 *   resistor, resistive load    a resistance
 *   source                      a source
 *   other load                  a current from plus to minus ("draw")
 *   diode                       a source of minus its drop from anode to cathode, or open
 *   regulator                   a source at its output, or open, and a draw at its input
 * </pre>
 */
final class CircuitNetwork {

    static final int NONE = -1;

    private final DcCircuit circuit;
    private final ResistiveNetwork network;
    private final NetworkStructure structure;
    private final int[] branch;
    private final int[] draw;
    private final int[] drawElement;
    private final int[] switched;
    private @Nullable FactorisedNetwork base;

    private CircuitNetwork(DcCircuit circuit, Optional<NetworkStructure> like) {
        this.circuit = circuit;
        int count = circuit.elements().size();
        branch = new int[count];
        draw = new int[count];
        Arrays.fill(branch, NONE);
        Arrays.fill(draw, NONE);
        NetworkBuilder builder = ResistiveNetwork.builder(circuit.nodes());
        for (int e = 0; e < count; e++) {
            add(builder, e, circuit.elements().get(e));
        }
        circuit.references().forEach(builder::reference);
        network = builder.build();
        structure = like.filter(known -> known.serves(network)).orElseGet(() -> NetworkStructure.of(network));
        drawElement = new int[network.injections()];
        for (int e = 0; e < count; e++) {
            if (draw[e] != NONE) {
                drawElement[draw[e]] = e;
            }
        }
        switched = IntStream.range(0, count).filter(this::isSwitched).toArray();
    }

    /** {@return the elements that are switched on and off by what they meet, ascending} */
    int[] switched() {
        return switched;
    }

    static CircuitNetwork of(DcCircuit circuit) {
        return new CircuitNetwork(circuit, Optional.empty());
    }

    /** {@return another circuit as a network, on the structure of this one if it has the same connections} */
    CircuitNetwork like(DcCircuit other) {
        return new CircuitNetwork(other, Optional.of(structure));
    }

    /** {@return whether another circuit's network stands on the structure of this one} */
    boolean sharesWith(CircuitNetwork other) {
        return structure == other.structure;
    }

    private void add(NetworkBuilder b, int e, DcElement element) {
        if (element instanceof Resistor r) {
            branch[e] = b.resistor(r.a(), r.b(), r.ohms());
        } else if (element instanceof Source s) {
            branch[e] = b.source(s.minus(), s.plus(), s.volts(), s.ohms());
        } else if (element instanceof Diode d) {
            branch[e] = b.source(d.anode(), d.cathode(), -d.dropVolts(), d.ohms());
        } else if (element instanceof Regulator r) {
            branch[e] = b.source(
                    r.outMinus(), r.outPlus(), r.rating().volts(), r.rating().ohms());
            draw[e] = b.inject(r.inPlus(), r.inMinus(), 0);
        } else if (element instanceof Load l) {
            if (l.draw() instanceof Draw.Resistive r) {
                branch[e] = b.resistor(l.plus(), l.minus(), r.ohms());
            } else {
                draw[e] = b.inject(l.plus(), l.minus(), 0);
            }
        }
    }

    DcCircuit circuit() {
        return circuit;
    }

    DcElement element(int e) {
        return circuit.elements().get(e);
    }

    /** {@return the linear network with all switched elements on and nothing drawn} */
    ResistiveNetwork network() {
        return network;
    }

    /** {@return the network's element of a circuit element, or {@link #NONE}} */
    int branch(int e) {
        return branch[e];
    }

    /** {@return the network's injection of a circuit element, or {@link #NONE}} */
    int draw(int e) {
        return draw[e];
    }

    /** {@return the circuit element of an injection} */
    int drawElement(int injection) {
        return drawElement[injection];
    }

    /** {@return the number of draws} */
    int draws() {
        return drawElement.length;
    }

    private boolean isSwitched(int e) {
        return element(e) instanceof Diode || element(e) instanceof Regulator;
    }

    /** {@return the network factorised with the elements that do not conduct at a given resistance} */
    FactorisedNetwork factorise(boolean[] conducting, double offOhms) {
        double[] ohms = new double[network.elements()];
        for (int n = 0; n < ohms.length; n++) {
            ohms[n] = network.ohms(n);
        }
        for (int e : switched) {
            if (!conducting[e]) {
                ohms[branch[e]] = offOhms;
            }
        }
        return base().with(network.withOhms(ohms));
    }

    /** The network with all switched elements on: what is off in some state differs from it in little. */
    private FactorisedNetwork base() {
        FactorisedNetwork known = base;
        if (known == null) {
            known = structure.factorise(network);
            base = known;
        }
        return known;
    }

    /** {@return the source voltages of the network with all regulators at their set voltage} */
    double[] emf() {
        double[] emf = new double[network.elements()];
        for (int n = 0; n < emf.length; n++) {
            emf[n] = network.emf(n);
        }
        return emf;
    }
}
