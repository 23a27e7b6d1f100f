package ringout.trace.predict;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.PartKind;
import ringout.solve.PartResistance;
import ringout.solve.Resistivity;
import ringout.solve.network.NetworkBuilder;
import ringout.solve.network.ResistiveNetwork;
import ringout.solve.power.LoadFigure;
import ringout.solve.power.PackFigure;
import ringout.solve.power.PowerFlow;
import ringout.solve.power.RegulatorFigure;

/**
 * The supply of a circuit as resistances and sources, made at its operating point: every load and every input of a regulator
 * is the resistance that takes its current there, every output of a regulator a source. Its voltages are those of the
 * operating point; around it changes are changes of low rank.
 */
final class SupplyModel {
    static final int NONE = -1;

    /** Well below any contact, so that a contact of which nothing is told can still open. */
    private static final double LEAST_OHM = 1e-5;

    /** Inside a regulator, in ohm, as the operating point has it. */
    private static final double REGULATOR_OHM = 1e-4;

    /** Inside a pack that gives no current at its operating point, so that its own cannot be told from it, ohm. Judgement, no source. */
    private static final double PACK_OHM = 0.01;

    private final Wiring wiring;
    private final PowerGraph power;
    private final PowerReach reach;
    private final NetworkBuilder network;
    private final int[] elementOfEdge;
    private final int[] elementOfSource;
    private final Map<Integer, List<Integer>> loadsOfUnit = new HashMap<>();
    private final List<Regulator> regulators = new ArrayList<>();
    private final Map<Integer, Double> sourceOhm = new HashMap<>();
    private final ResistiveNetwork built;

    /**
     * A regulator.
     *
     * @param source number of its source
     * @param in vertex of its input
     * @param inZero vertex of the return of its input
     * @param inVolts voltage at its input in the healthy circuit
     * @param input element that takes its input current, or {@link #NONE}
     * @param outAmps current out of it in the healthy circuit
     */
    record Regulator(int source, int in, int inZero, double inVolts, int input, double outAmps) {}

    SupplyModel(Circuit circuit, PowerFlow flow, PowerReach reach) {
        this.wiring = circuit.wiring();
        this.power = PowerGraph.of(circuit);
        this.reach = reach;
        int vertices = wiring.graph().vertexCount();
        this.network = ResistiveNetwork.builder(vertices);
        this.elementOfEdge = new int[wiring.graph().edgeBound()];
        Arrays.fill(elementOfEdge, NONE);
        this.elementOfSource = new int[power.sources().size()];
        Arrays.fill(elementOfSource, NONE);
        for (int edge = 0; edge < circuit.live().edgeBound(); edge++) {
            if (circuit.live().hasEdge(edge)) {
                edge(edge, flow);
            }
        }
        flow.packs().forEach(this::pack);
        flow.regulators().forEach(this::regulator);
        flow.loads().forEach(this::load);
        for (PowerSource source : power.sources()) {
            if (source.minus() >= 0
                    && power.works(source)
                    && power.bottom(source).index() == source.index()) {
                network.reference(source.minus());
            }
        }
        built = network.build();
    }

    private boolean inside(int vertex) {
        return reach.fed(vertex) || reach.returned(vertex);
    }

    private void edge(int edge, PowerFlow flow) {
        int a = wiring.graph().from(edge);
        int b = wiring.graph().to(edge);
        if (!inside(a) || !inside(b)) {
            return;
        }
        int ref = wiring.ref(edge);
        double ohm =
                switch (wiring.kind(edge)) {
                    case CONDUCTOR ->
                        Math.max(LEAST_OHM, Resistivity.ohm(wiring.wires().get(ref)));
                    case CONTACT -> Math.max(LEAST_OHM, Resistivity.contactOhm(wiring, wiring.isPin(a) ? a : b));
                    case JOIN -> 0;
                    case PART -> part(wiring.parts().get(ref), flow);
                };
        if (!Double.isNaN(ohm)) {
            elementOfEdge[edge] = network.resistor(a, b, ohm);
        }
    }

    /** A diode is what it drops at its current; one that does not conduct is open. */
    private double part(Part part, PowerFlow flow) {
        boolean resistor =
                part.origin() instanceof Part.Inner inner && inner.part().kind().is(PartKind.RESISTOR);
        if (PowerGraph.isDiode(part)) {
            double amps = flow.amps(part);
            double volts = flow.volts(part.from(), part.to()).orElse(0);
            return amps > 0 ? Math.max(LEAST_OHM, volts / amps) : Double.POSITIVE_INFINITY;
        }
        return resistor || PartResistance.ohm(part).isEmpty()
                ? Double.NaN
                : Math.max(LEAST_OHM, PartResistance.ohm(part).getAsDouble());
    }

    private void pack(PackFigure pack) {
        double lost = pack.openVolts() - pack.volts();
        double ohm = pack.amps() > 0 && lost > 0 ? lost / pack.amps() : PACK_OHM;
        PowerSource source = pack.source();
        atItsLoad(source, pack.volts(), pack.amps());
        elementOfSource[source.index()] = network.source(source.minus(), source.plus(), pack.openVolts(), ohm);
    }

    private void regulator(RegulatorFigure figure) {
        PowerSource source = figure.source();
        int in = source.inputs().stream().filter(reach::fed).findFirst().orElse(NONE);
        if (in < 0 || source.minus() < 0 || figure.outVolts() <= 0) {
            return;
        }
        atItsLoad(source, figure.outVolts(), figure.outAmps());
        double emf = figure.outVolts() + figure.outAmps() * REGULATOR_OHM;
        elementOfSource[source.index()] = network.source(source.minus(), source.plus(), emf, REGULATOR_OHM);
        int zero = inputZero(source, in);
        int input = figure.inAmps() > 0 && figure.inVolts() > 0
                ? network.resistor(in, zero, figure.inVolts() / figure.inAmps())
                : NONE;
        regulators.add(new Regulator(source.index(), in, zero, figure.inVolts(), input, figure.outAmps()));
    }

    private void atItsLoad(PowerSource source, double volts, double amps) {
        if (volts > 0 && amps > 0) {
            sourceOhm.put(source.index(), volts / amps);
        }
    }

    /** The resistance that takes a part of the voltage of a source from what it feeds; 0 when it feeds nothing. */
    double sagOhm(int source, double part) {
        return sourceOhm.getOrDefault(source, 0.0) * part / (1 - part);
    }

    private int inputZero(PowerSource source, int in) {
        if (source.kind() == PowerSource.Kind.REGULATOR) {
            return source.minus();
        }
        return power.consumersOf(source.unit()).stream()
                .filter(taker -> taker.zero() >= 0 && power.ties().same(taker.plus(), in))
                .map(Consumer::zero)
                .findFirst()
                .orElse(source.minus());
    }

    private void load(LoadFigure figure) {
        if (figure.fed()
                && figure.amps() > 0
                && figure.volts() > 0
                && figure.load().zero() >= 0) {
            int element = network.resistor(figure.load().plus(), figure.load().zero(), figure.volts() / figure.amps());
            loadsOfUnit
                    .computeIfAbsent(figure.load().unit(), key -> new ArrayList<>())
                    .add(element);
        }
    }

    ResistiveNetwork network() {
        return built;
    }

    /** The element of an edge, or {@link #NONE}. Joins inside units are 0 ohm. */
    int ofEdge(int edge) {
        return edge < elementOfEdge.length ? elementOfEdge[edge] : NONE;
    }

    /** The element of a source, or {@link #NONE}. */
    int ofSource(int source) {
        return elementOfSource[source];
    }

    /** The elements of what a unit draws. */
    List<Integer> loadsOf(int unit) {
        return loadsOfUnit.getOrDefault(unit, List.of());
    }

    List<Regulator> regulators() {
        return regulators;
    }

    /** Whether power or its return comes to a vertex in the healthy circuit. */
    boolean holds(int vertex) {
        return inside(vertex);
    }
}
