package ringout.solve.dc;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.Set;
import ringout.solve.dc.DcElement.Diode;
import ringout.solve.dc.DcElement.Regulator;
import ringout.solve.network.FactorisedNetwork;
import ringout.solve.network.NetworkSolution;
import ringout.solve.network.NodeVoltage;

/**
 * Which diodes and regulator outputs conduct. A conducting one must not carry current backwards, a blocking one must not
 * see more than its forward voltage (complementarity).
 *
 * <p>All conduct at first; then all that contradict their state change it at once, until none does. Should a set of states
 * come back, only the first contradicting one changes from then on, which cannot go round in a network of resistances
 * (K. G. Murty, Note on a Bard-type scheme for solving the complementarity problem, 1974).
 *
 * <p>Whether a blocking diode between two islands would conduct cannot be read off, since no voltage is defined across
 * it. For that question alone, blocking diodes are given a large resistance; it is never part of a solution.
 */
final class Switching {

    private static final double SENSING_OHMS = 1e6;
    private static final double TOLERANCE = 1e-9;

    /** Volts; what rounding of amperes makes of a megohm is a hundred times smaller. */
    private static final double SENSING_TOLERANCE = 1e-5;

    private final CircuitNetwork circuit;
    private final boolean[] conducting;
    private final Set<BitSet> seen = new HashSet<>();
    private boolean oneAtATime;
    private boolean goesRound;

    Switching(CircuitNetwork circuit) {
        this.circuit = circuit;
        conducting = new boolean[circuit.circuit().elements().size()];
        Arrays.fill(conducting, true);
        seen.add(states());
    }

    /** {@return by element, whether it conducts; true for what is not switched} */
    boolean[] conducting() {
        return conducting.clone();
    }

    /** {@return the network in the present states} */
    FactorisedNetwork factorise() {
        return circuit.factorise(conducting, Double.POSITIVE_INFINITY);
    }

    /** Starts on other currents: states that were met before may come again. */
    void begin() {
        seen.clear();
        seen.add(states());
        oneAtATime = false;
        goesRound = false;
    }

    /** Changes the states that contradict a flow; false if none does, or they go round. */
    boolean revise(LoadFlow flow) {
        double amps = TOLERANCE * (1 + Arrays.stream(flow.amps()).max().orElse(0));
        NetworkSolution sensed = needsSensing(flow.solution()) ? sense(flow) : flow.solution();
        boolean any = false;
        for (int k = 0; k < circuit.switched().length && !(any && oneAtATime); k++) {
            int e = circuit.switched()[k];
            if (contradicts(e, flow, sensed, amps)) {
                conducting[e] = !conducting[e];
                any = true;
            }
        }
        if (any && !seen.add(states())) {
            goesRound = oneAtATime;
            oneAtATime = true;
            seen.clear();
            seen.add(states());
        }
        return any && !goesRound;
    }

    /** {@return whether any diode or regulator does not conduct} */
    boolean anyBlocks() {
        return Arrays.stream(circuit.switched()).anyMatch(e -> !conducting[e]);
    }

    /** {@return whether the states came back although one changed at a time} */
    boolean goesRound() {
        return goesRound;
    }

    private boolean contradicts(int e, LoadFlow flow, NetworkSolution sensed, double ampsTolerance) {
        if (circuit.element(e) instanceof Regulator && !flow.fed(circuit.draw(e))) {
            return conducting[e];
        }
        double emf = flow.converters().emf()[circuit.branch(e)];
        if (conducting[e]) {
            return (across(e, flow.solution()) + emf) / ohms(e) < -ampsTolerance;
        }
        boolean apart = !flow.solution().factorised().connected(from(e), to(e));
        boolean askSensed = apart && circuit.element(e) instanceof Diode;
        double tolerance = askSensed ? SENSING_TOLERANCE : TOLERANCE * (1 + Math.abs(emf));
        return across(e, askSensed ? sensed : flow.solution()) + emf > tolerance;
    }

    /** {@return volts of the first end against the second; 0 between islands, where a fed regulator makes the voltage} */
    private double across(int e, NetworkSolution solution) {
        return solution.between(from(e), to(e)) instanceof NodeVoltage.Volts v ? v.value() : 0;
    }

    private int from(int e) {
        return circuit.network().from(circuit.branch(e));
    }

    private int to(int e) {
        return circuit.network().to(circuit.branch(e));
    }

    private double ohms(int e) {
        return circuit.network().ohms(circuit.branch(e));
    }

    private boolean needsSensing(NetworkSolution solution) {
        for (int e : circuit.switched()) {
            if (!conducting[e] && circuit.element(e) instanceof Diode) {
                if (!solution.factorised().connected(from(e), to(e))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Blocking elements as large resistances and nothing else: neither a drop nor an output voltage is in them. */
    private NetworkSolution sense(LoadFlow flow) {
        double[] emf = flow.converters().emf().clone();
        for (int e : circuit.switched()) {
            if (!conducting[e]) {
                emf[circuit.branch(e)] = 0;
            }
        }
        return new Excitation(circuit, circuit.factorise(conducting, SENSING_OHMS)).solve(emf, flow.amps());
    }

    private BitSet states() {
        BitSet set = new BitSet();
        for (int k = 0; k < circuit.switched().length; k++) {
            set.set(k, conducting[circuit.switched()[k]]);
        }
        return set;
    }
}
