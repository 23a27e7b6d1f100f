package ringout.solve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.Buses;
import ringout.graph.index.IndexGraph;
import ringout.model.BusPort;
import ringout.model.PartKind;

/**
 * Everything an ohmmeter drives its current through with the power off and the packs out: conductors, contacts,
 * terminators, node inputs, fuses, closed switches, sense resistors, resistors and links. Sources, regulators and diodes
 * do not conduct. The element of an edge of the typed graph has the number of that edge; node inputs follow.
 */
public final class MeterElements {
    private static final double TERMINATOR_OHM = 120;

    private final Circuit circuit;
    private final List<MeterElement> elements = new ArrayList<>();

    private MeterElements(Circuit circuit) {
        this.circuit = circuit;
        IndexGraph graph = circuit.wiring().graph();
        for (int edge = 0; edge < graph.edgeBound(); edge++) {
            elements.add(element(graph, edge));
        }
        nodeInputs();
    }

    /** The elements of a circuit, those out of it too, found once. */
    public static List<MeterElement> of(Circuit circuit) {
        return Collections.unmodifiableList(circuit.know(MeterElements.class, MeterElements::new).elements);
    }

    private MeterElement element(IndexGraph graph, int edge) {
        Wiring wiring = circuit.wiring();
        int ref = wiring.ref(edge);
        int a = graph.from(edge);
        int b = graph.to(edge);
        boolean live = circuit.live().hasEdge(edge);
        return switch (wiring.kind(edge)) {
            case CONDUCTOR ->
                new MeterElement(
                        a,
                        b,
                        Math.max(0, Resistivity.ohm(wiring.wires().get(ref))),
                        live,
                        new MeterElement.OfWire(wiring.wires().get(ref)),
                        Tolerance.CONDUCTOR);
            case CONTACT -> contact(a, b, ref, live);
            case JOIN -> new MeterElement(a, b, 0, live, new MeterElement.OfJoin(ref), Tolerance.NONE);
            case PART -> part(a, b, wiring.parts().get(ref), live);
        };
    }

    private MeterElement contact(int a, int b, int wire, boolean live) {
        Wiring wiring = circuit.wiring();
        int pin = wiring.isPin(a) ? a : b;
        double ohm = Math.max(0, Resistivity.contactOhm(wiring, pin));
        MeterElement.Piece piece = new MeterElement.OfContact(wiring.wires().get(wire), pin);
        return new MeterElement(a, b, ohm, live, piece, Tolerance.CONTACT);
    }

    private static MeterElement part(int a, int b, Part part, boolean live) {
        double ohm = Math.max(0, ohm(part));
        return new MeterElement(
                a, b, ohm, live && Double.isFinite(ohm), new MeterElement.OfPart(part), tolerance(part));
    }

    private static double ohm(Part part) {
        if (part.origin() instanceof Part.Terminator terminator) {
            return terminator.port().terminatorOhm().or(TERMINATOR_OHM);
        }
        return PartResistance.ohm(part).orElse(Double.POSITIVE_INFINITY);
    }

    private static PartKind kind(Part.Inner inner) {
        return inner.part().kind().known().orElse(PartKind.REGULATOR);
    }

    private static Tolerance tolerance(Part part) {
        if (part.origin() instanceof Part.Terminator) {
            return Tolerance.TERMINATOR;
        }
        boolean resistor = part.origin() instanceof Part.Inner inner
                && (kind(inner) == PartKind.RESISTOR || kind(inner) == PartKind.SENSE_RESISTOR);
        return resistor ? Tolerance.RESISTOR : Tolerance.CLOSED_PART;
    }

    private void nodeInputs() {
        for (BusHub hub : Buses.of(circuit).hubs()) {
            if (hub.member() && hub.high() >= 0 && hub.low() >= 0) {
                Optional<Double> ohm = circuit.wiring()
                        .directory()
                        .layout(hub.unit())
                        .port(hub.typePort())
                        .map(BusPort::nodeOhm)
                        .flatMap(given -> given.known());
                if (ohm.isPresent()) {
                    MeterElement.Piece piece = new MeterElement.OfInput(hub.unit(), hub.port());
                    elements.add(new MeterElement(
                            hub.high(), hub.low(), Math.max(0, ohm.get()), true, piece, Tolerance.NODE_INPUT));
                }
            }
        }
    }
}
