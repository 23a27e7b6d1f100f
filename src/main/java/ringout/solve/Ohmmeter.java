package ringout.solve;

import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.Buses;
import ringout.graph.index.IndexGraph;
import ringout.model.BusPort;
import ringout.model.PartKind;
import ringout.model.PartRating;
import ringout.solve.network.EffectiveResistance;
import ringout.solve.network.NetworkBuilder;
import ringout.solve.network.Resistance;
import ringout.solve.network.ResistiveNetwork;

/**
 * What an ohmmeter reads between two points of a circuit with the power off and the packs out: conductors, contacts,
 * terminators, node inputs, fuses, closed switches, sense resistors and links count; sources, regulators and diodes do
 * not conduct. The reading is taken at 20 degC by a meter whose leads are zeroed.
 */
public final class Ohmmeter {
    private static final double TERMINATOR_OHM = 120;
    private static final double MILLI = 0.001;

    private final Circuit circuit;
    private final EffectiveResistance resistance;

    private Ohmmeter(Circuit circuit) {
        this.circuit = circuit;
        IndexGraph live = circuit.live();
        NetworkBuilder network = ResistiveNetwork.builder(live.vertexCount());
        for (int edge = 0; edge < live.edgeBound(); edge++) {
            if (live.hasEdge(edge)) {
                double ohm = ohm(edge);
                if (Double.isFinite(ohm)) {
                    network.resistor(live.from(edge), live.to(edge), ohm);
                }
            }
        }
        nodeInputs(network);
        this.resistance = EffectiveResistance.of(network.build());
    }

    /** The meter for a circuit, made once. */
    public static Ohmmeter of(Circuit circuit) {
        return circuit.know(Ohmmeter.class, Ohmmeter::new);
    }

    private double ohm(int edge) {
        Wiring wiring = circuit.wiring();
        int ref = wiring.ref(edge);
        return switch (wiring.kind(edge)) {
            case CONDUCTOR -> Resistivity.ohm(wiring.wires().get(ref));
            case CONTACT -> contact(edge);
            case JOIN -> 0;
            case PART -> part(wiring.parts().get(ref));
        };
    }

    private double contact(int edge) {
        Wiring wiring = circuit.wiring();
        int a = wiring.graph().from(edge);
        int pin = wiring.isPin(a) ? a : wiring.graph().to(edge);
        return Resistivity.contactOhm(wiring, pin);
    }

    private static double part(Part part) {
        if (part.origin() instanceof Part.Terminator terminator) {
            return terminator.port().terminatorOhm().or(TERMINATOR_OHM);
        }
        if (part.origin() instanceof Part.Inner inner) {
            PartRating rating = inner.part().rating();
            return switch (inner.part().kind().known().orElse(PartKind.REGULATOR)) {
                case LINK, FUSE, SWITCH, SENSE_RESISTOR ->
                    rating.milliohm()
                            .known()
                            .map(m -> m * MILLI)
                            .orElse(rating.ohm().or(0.0));
                case RESISTOR -> rating.ohm().or(Double.POSITIVE_INFINITY);
                default -> Double.POSITIVE_INFINITY;
            };
        }
        return 0;
    }

    private void nodeInputs(NetworkBuilder network) {
        Buses buses = Buses.of(circuit);
        for (BusHub hub : buses.hubs()) {
            if (hub.member() && hub.high() >= 0 && hub.low() >= 0) {
                circuit.wiring()
                        .directory()
                        .layout(hub.unit())
                        .port(hub.port())
                        .map(BusPort::nodeOhm)
                        .flatMap(ohm -> ohm.known())
                        .ifPresent(ohm -> network.resistor(hub.high(), hub.low(), ohm));
            }
        }
    }

    /** The reading between two vertices of the typed graph. */
    public Resistance between(int a, int b) {
        return resistance.between(a, b);
    }
}
