package ringout.solve.dc;

import ringout.solve.dc.DcElement.Diode;
import ringout.solve.dc.DcElement.Load;
import ringout.solve.dc.DcElement.Regulator;
import ringout.solve.dc.DcElement.Resistor;
import ringout.solve.dc.DcElement.Source;
import ringout.solve.network.BranchCurrents;
import ringout.solve.network.NetworkSolution;
import ringout.solve.network.NodeVoltage;

/** A circuit at rest: voltages, currents, heat, states, and the figures that verify them. Immutable. */
public final class SolvedPoint implements DcOutcome {

    private static final double ROUNDING = 1e-15;

    private final CircuitNetwork circuit;
    private final NetworkSolution solution;
    private final BranchCurrents currents;
    private final double[] drawn;
    private final double[] drawVolts;
    private final ElementState[] states;
    private final LoadFlow flow;
    private final int weakest;
    private final int solves;

    SolvedPoint(CircuitNetwork circuit, Attempt.Settled settled, int solves) {
        this.circuit = circuit;
        flow = settled.flow();
        solution = flow.solution();
        currents = solution.currents();
        drawn = flow.amps();
        drawVolts = flow.volts();
        states = States.of(circuit, settled);
        weakest = weakest(circuit, flow);
        this.solves = solves;
    }

    private static int weakest(CircuitNetwork circuit, LoadFlow flow) {
        int weakest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < circuit.draws(); i++) {
            double left = flow.fed(i) ? flow.volts()[i] / flow.openVolts()[i] : Double.POSITIVE_INFINITY;
            // Equal loads differ by rounding; the first of them is named.
            if (left < least * (1 - 1e-9)) {
                least = left;
                weakest = circuit.drawElement(i);
            }
        }
        return weakest;
    }

    /** {@return the voltage of a node against the reference of its island} */
    public NodeVoltage voltage(int node) {
        return solution.voltage(node);
    }

    /** {@return the voltage of the first node against the second} */
    public NodeVoltage between(int a, int b) {
        return solution.between(a, b);
    }

    /**
     * The current of an element.
     *
     * @return amperes, positive from the first node of a resistor to its second, out of a source's plus pole, into a load's
     *     plus terminal, from anode to cathode, out of a regulator's output
     */
    public double amps(int element) {
        int n = circuit.branch(element);
        return n == CircuitNetwork.NONE ? drawn[circuit.draw(element)] : currents.amps(n);
    }

    /** {@return the current a regulator takes at its input; for any other element its current} */
    public double inputAmps(int element) {
        boolean isRegulator = circuit.element(element) instanceof Regulator;
        return isRegulator ? drawn[circuit.draw(element)] : amps(element);
    }

    /**
     * The power that becomes heat in an element, or is delivered to a load.
     *
     * @return watts: of a conductor and a source, resistance times current squared; of a diode, voltage times current; of
     *     a regulator, input power less output power; of a load, what it takes
     */
    public double watts(int element) {
        DcElement of = circuit.element(element);
        double amps = amps(element);
        if (of instanceof Resistor r) {
            return amps == 0 ? 0 : amps * amps * r.ohms();
        } else if (of instanceof Source s) {
            return amps * amps * s.ohms();
        } else if (of instanceof Diode d) {
            return amps * (d.dropVolts() + amps * d.ohms());
        } else if (of instanceof Load l) {
            return l.draw() instanceof Draw.Resistive r
                    ? amps * amps * r.ohms()
                    : amps * drawVolts[circuit.draw(element)];
        } else if (of instanceof Regulator r) {
            double output = amps * volts(r.outPlus(), r.outMinus());
            return inputAmps(element) * drawVolts[circuit.draw(element)] - output;
        }
        throw new IllegalStateException("unknown element " + of);
    }

    private double volts(int a, int b) {
        return between(a, b) instanceof NodeVoltage.Volts v ? v.value() : 0;
    }

    /** {@return what an element does} */
    public ElementState state(int element) {
        return states[element];
    }

    /** {@return the load or regulator that has lost the largest part of its open-circuit voltage} */
    public int weakest() {
        return weakest;
    }

    /**
     * By how much the constant-power loads can certainly grow, from one linear solution.
     *
     * @return a factor of at least 1; infinity without such loads; 0 when this one solution cannot tell. Proven for loads
     *     against one common node, observed for others; {@link DcSolver#loadMargin} computes the true margin
     */
    public double certifiedGrowth() {
        return flow.certifiedGrowth();
    }

    /** {@return the largest violation of Kirchhoff's current law at a node, relative to the largest current} */
    public double kirchhoffResidual() {
        return currents.kirchhoffResidual();
    }

    /**
     * The difference of power given by sources and power found in all elements, relative to the power given.
     *
     * @return a pure number; 0 when the power given is mere rounding of the sources' short-circuit power, so that in truth
     *     none is given
     */
    public double powerImbalance() {
        double given = 0;
        double gross = 0;
        double found = 0;
        double shortCircuit = 0;
        for (int e = 0; e < states.length; e++) {
            found += watts(e);
            if (circuit.element(e) instanceof Source s) {
                given += s.volts() * amps(e);
                gross += Math.abs(s.volts() * amps(e));
                shortCircuit += s.volts() * s.volts() / s.ohms();
            }
        }
        return gross <= ROUNDING * shortCircuit ? 0 : Math.abs(given - found) / gross;
    }

    /** {@return how many linear solutions it took, a measure of the work} */
    public int linearSolutions() {
        return solves;
    }
}
