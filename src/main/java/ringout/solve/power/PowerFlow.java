package ringout.solve.power;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringout.graph.Circuit;
import ringout.graph.EdgeKind;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.solve.dc.DcElement;
import ringout.solve.dc.ElementState;
import ringout.solve.dc.SolvedPoint;
import ringout.solve.network.Condensed;
import ringout.solve.network.NodeVoltage;

/**
 * Every voltage, current and heat of an aircraft in one state and one case of loads. Vertices, edges and wires are those
 * of its {@link Wiring}. What power does not reach floats: it has no voltage, and never a number.
 */
public final class PowerFlow implements OperatingPoint {
    private final PowerModel model;
    private final SolvedPoint point;
    private final PowerGraph power;
    private final Wiring wiring;
    private final List<LoadFigure> loads;
    private final List<PackFigure> packs;
    private final List<RegulatorFigure> regulators;
    private final Condensed small;
    private final double[] amps;
    private final double[] intoPin;

    PowerFlow(PowerModel model, SolvedPoint point) {
        this.model = model;
        this.point = point;
        power = PowerGraph.of(model.circuit());
        wiring = model.circuit().wiring();
        small = model.net().small();
        amps = findAmps();
        intoPin = intoPin();
        loads = findLoads();
        packs = findPacks();
        regulators = findRegulators();
    }

    @Override
    public LoadCase loadCase() {
        return model.of();
    }

    @Override
    public List<Assumption> assumed() {
        return model.assumed();
    }

    /** {@return the circuit it was computed for} */
    public Circuit circuit() {
        return model.circuit();
    }

    /** {@return the voltage of a vertex against the minus of the lowest pack of its island} */
    public NodeVoltage voltage(int vertex) {
        int node = model.domain().node(vertex);
        if (node == PowerDomain.OUTSIDE) {
            return new NodeVoltage.Floating();
        }
        NodeVoltage anchor = point.voltage(small.anchor(node));
        return anchor instanceof NodeVoltage.Volts v ? new NodeVoltage.Volts(v.value() - drop(node)) : anchor;
    }

    /** {@return the voltage in V of a vertex against another; empty when one of them floats against the other} */
    public OptionalDouble volts(int plus, int minus) {
        int a = model.domain().node(plus);
        int b = model.domain().node(minus);
        boolean within = a != PowerDomain.OUTSIDE && b != PowerDomain.OUTSIDE;
        return within && point.between(small.anchor(a), small.anchor(b)) instanceof NodeVoltage.Volts v
                ? OptionalDouble.of(v.value() - drop(a) + drop(b))
                : OptionalDouble.empty();
    }

    /** Volts from the anchor of a node down to the node. */
    private double drop(int node) {
        int way = small.way(node);
        return way == ConductorNet.NONE ? 0 : point.amps(way) * small.ahead(node);
    }

    /** {@return whether no voltage can be told of a vertex: no source reaches it} */
    public boolean floats(int vertex) {
        return voltage(vertex) instanceof NodeVoltage.Floating;
    }

    /** {@return the current of a conductor in A, positive from the from end of its row to the to end} */
    public double amps(Wire wire) {
        return amps(wiring.conductorEdge(wire));
    }

    /** {@return the heat of a conductor in W, its contacts apart} */
    public double heat(Wire wire) {
        return heat(wiring.conductorEdge(wire));
    }

    /** {@return the current that enters a unit by a pin in A; negative when it leaves there} */
    public double intoPin(int pin) {
        return intoPin[pin];
    }

    /**
     * {@return the current of a conductor, contact, join or of a part that is a resistance, in A, positive from the first
     * vertex of its edge to the second; 0 outside the supply}
     */
    public double amps(int edge) {
        int row = model.net().row(edge);
        return row == ConductorNet.NONE ? 0 : amps[row];
    }

    /** {@return the heat of a conductor, contact or of a part that is a resistance, in W} */
    public double heat(int edge) {
        int row = model.net().row(edge);
        return row == ConductorNet.NONE || amps[row] == 0
                ? 0
                : amps[row] * amps[row] * model.net().ohms(row);
    }

    /** {@return the current of a part in A, positive from its from to its to; of a pack and a regulator, out of its plus} */
    public double amps(Part part) {
        int element = model.ofPart(part.index());
        return element == PowerModel.NONE ? amps(part.edge()) : point.amps(element);
    }

    /** {@return the heat of a part in W} */
    public double heat(Part part) {
        int element = model.ofPart(part.index());
        return element == PowerModel.NONE ? heat(part.edge()) : point.watts(element);
    }

    /** {@return what a part does; unfed when power does not reach it} */
    public ElementState state(Part part) {
        int element = model.ofPart(part.index());
        if (element != PowerModel.NONE) {
            return point.state(element);
        }
        return model.net().row(part.edge()) == ConductorNet.NONE ? ElementState.UNFED : ElementState.WORKING;
    }

    /** {@return what every load of the units aboard gets that power can reach, in the order of the units} */
    public List<LoadFigure> loads() {
        return loads;
    }

    /** {@return what every pack gives that is aboard and on} */
    public List<PackFigure> packs() {
        return packs;
    }

    /** {@return what every regulator does that works in this state} */
    public List<RegulatorFigure> regulators() {
        return regulators;
    }

    /** {@return the power all packs and outputs give at their inner voltage in W} */
    public double sourceWatts() {
        double sum = 0;
        for (int e = 0; e < model.dc().elements().size(); e++) {
            sum += model.dc().elements().get(e) instanceof DcElement.Source s ? s.volts() * point.amps(e) : 0;
        }
        return sum;
    }

    /** {@return the largest violation of Kirchhoff's current law, relative to the largest current} */
    public double kirchhoffResidual() {
        return point.kirchhoffResidual();
    }

    /** {@return power given less power found, relative to the power given} */
    public double powerImbalance() {
        return point.powerImbalance();
    }

    private double[] findAmps() {
        double[] left = new double[small.resistors()];
        for (int r = 0; r < left.length; r++) {
            left[r] = point.amps(r);
        }
        return small.amps(left, inflow());
    }

    /** What packs, loads, regulators and diodes drive into the nodes of the conductors. */
    private double[] inflow() {
        double[] into = new double[model.domain().count()];
        for (int e = small.resistors(); e < model.dc().elements().size(); e++) {
            int[] at = model.terminals(e);
            // All of them take at their first node what they give at their second: a source at minus and plus.
            into[at[0]] -= point.inputAmps(e);
            into[at[1]] += point.inputAmps(e);
            if (model.dc().elements().get(e) instanceof DcElement.Regulator) {
                into[at[2]] += point.amps(e);
                into[at[3]] -= point.amps(e);
            }
        }
        return into;
    }

    private double[] intoPin() {
        double[] into = new double[wiring.pinCount()];
        for (int edge = 0; edge < model.circuit().live().edgeBound(); edge++) {
            if (model.net().row(edge) != ConductorNet.NONE && wiring.kind(edge) == EdgeKind.CONTACT) {
                int from = wiring.graph().from(edge);
                boolean leaves = wiring.isPin(from);
                into[leaves ? from : wiring.graph().to(edge)] += leaves ? -amps(edge) : amps(edge);
            }
        }
        return into;
    }

    private List<LoadFigure> findLoads() {
        List<LoadFigure> found = new ArrayList<>();
        for (PlacedLoad load : power.loads()) {
            int element = model.ofLoad(load.index());
            if (element != PowerModel.NONE) {
                ElementState state = point.state(element);
                boolean fed = state == ElementState.WORKING;
                double volts = fed ? volts(load.plus(), load.zero()).orElse(0) : 0;
                found.add(new LoadFigure(load, volts, point.amps(element), state));
            }
        }
        return List.copyOf(found);
    }

    private List<PackFigure> findPacks() {
        List<PackFigure> found = new ArrayList<>();
        for (PowerSource source : power.sources()) {
            int e = model.ofSource(source.index());
            if (e != PowerModel.NONE && model.dc().elements().get(e) instanceof DcElement.Source s) {
                double volts = volts(source.plus(), source.minus()).orElse(s.volts());
                found.add(new PackFigure(source, s.volts(), volts, point.amps(e), point.watts(e)));
            }
        }
        return List.copyOf(found);
    }

    private List<RegulatorFigure> findRegulators() {
        List<RegulatorFigure> found = new ArrayList<>();
        for (PowerSource source : power.sources()) {
            int e = model.ofSource(source.index());
            if (e != PowerModel.NONE && model.dc().elements().get(e) instanceof DcElement.Regulator r) {
                found.add(new RegulatorFigure(
                        source,
                        between(r.inPlus(), r.inMinus()),
                        point.inputAmps(e),
                        between(r.outPlus(), r.outMinus()),
                        point.amps(e),
                        point.watts(e),
                        point.state(e)));
            }
        }
        return List.copyOf(found);
    }

    private double between(int a, int b) {
        return point.between(a, b) instanceof NodeVoltage.Volts v ? v.value() : 0;
    }
}
