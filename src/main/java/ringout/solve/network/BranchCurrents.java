package ringout.solve.network;

/**
 * Currents of all elements of a solved network, 0 Ω elements included, and the figures that verify them.
 *
 * <p>The difference of two potentials over a milliohm keeps few digits, because the potentials are rounded to a part in
 * 1e16 of volts. So the currents that Kirchhoff's current law misses at the nodes are solved for once more, and the small
 * correction, which has its own full set of digits, is added to the currents themselves.
 *
 * <p>A 0 Ω element carries what the law leaves for it at its ends. In a ring of 0 Ω elements that is not unique; the
 * split given is the one of equal small resistances.
 */
public final class BranchCurrents {

    private static final int CORRECTIONS = 2;
    private static final double ROUNDING = 1e-15;

    private final double[] amps;
    private final double residual;

    private BranchCurrents(double[] amps, double residual) {
        this.amps = amps;
        this.residual = residual;
    }

    static BranchCurrents of(NetworkSolution solution) {
        FactorisedNetwork factorised = solution.factorised();
        NetworkStructure structure = factorised.structure();
        ResistiveNetwork network = factorised.network();
        double[] amps = new double[network.elements()];
        for (int e = 0; e < amps.length; e++) {
            if (network.ohms(e) > 0) {
                double volts = structure.carries(e)
                        ? solution.potential(network.from(e)) - solution.potential(network.to(e))
                        : 0;
                amps[e] = (volts + solution.excitation().emf(e)) * network.siemens(e);
            }
        }
        for (int round = 0; round < CORRECTIONS; round++) {
            correct(amps, solution);
        }
        contract(amps, solution);
        return new BranchCurrents(amps, residual(amps, solution));
    }

    /** {@return the current of an element in amperes, positive from its first node to its second} */
    public double amps(int element) {
        // No negative zero: an open element carries 0, whichever way its voltage points.
        return amps[element] + 0.0;
    }

    /**
     * The largest sum of currents at any node, which Kirchhoff's current law wants to be zero, relative to the largest
     * current of the network, injected ones included.
     *
     * @return a pure number; a few 1e-16 when all is well; 0 when all currents are mere rounding of the short-circuit
     *     currents of the sources, so that in truth none flows
     */
    public double kirchhoffResidual() {
        return residual;
    }

    private static double residual(double[] amps, NetworkSolution solution) {
        double scale = largest(amps);
        ResistiveNetwork excitation = solution.excitation();
        for (int i = 0; i < excitation.injections(); i++) {
            scale = Math.max(scale, solution.flows(i) ? Math.abs(excitation.injectionAmps(i)) : 0);
        }
        return scale <= ROUNDING * shortCircuit(solution) ? 0 : largest(excess(amps, solution)) / scale;
    }

    private static double shortCircuit(NetworkSolution solution) {
        ResistiveNetwork network = solution.factorised().network();
        double largest = 0;
        for (int e = 0; e < network.elements(); e++) {
            if (network.ohms(e) > 0) {
                largest = Math.max(largest, Math.abs(solution.excitation().emf(e)) * network.siemens(e));
            }
        }
        return largest;
    }

    private static void correct(double[] amps, NetworkSolution solution) {
        FactorisedNetwork factorised = solution.factorised();
        NetworkStructure structure = factorised.structure();
        ResistiveNetwork network = factorised.network();
        double[] missing = new double[structure.unknowns()];
        double[] excess = excess(amps, solution);
        for (int v = 0; v < excess.length; v++) {
            int position = structure.position(v);
            if (position != NetworkStructure.AT_DATUM) {
                missing[position] += excess[v];
            }
        }
        factorised.factor().forward(missing);
        double[] correction = factorised.factor().backward(missing);
        for (int e = 0; e < amps.length; e++) {
            if (structure.carries(e)) {
                amps[e] += (at(correction, structure.position(network.from(e)))
                                - at(correction, structure.position(network.to(e))))
                        * network.siemens(e);
            }
        }
    }

    private static double at(double[] values, int position) {
        return position == NetworkStructure.AT_DATUM ? 0 : values[position];
    }

    /** Current that arrives at each node and does not leave it. */
    private static double[] excess(double[] amps, NetworkSolution solution) {
        ResistiveNetwork network = solution.factorised().network();
        ResistiveNetwork excitation = solution.excitation();
        double[] excess = new double[network.nodes()];
        for (int e = 0; e < amps.length; e++) {
            excess[network.from(e)] -= amps[e];
            excess[network.to(e)] += amps[e];
        }
        for (int i = 0; i < excitation.injections(); i++) {
            if (solution.flows(i)) {
                excess[excitation.injectionFrom(i)] -= excitation.injectionAmps(i);
                excess[excitation.injectionTo(i)] += excitation.injectionAmps(i);
            }
        }
        return excess;
    }

    /** The 0 Ω elements, as equal resistances of their own, carry the excess of each point from node to node. */
    private static void contract(double[] amps, NetworkSolution solution) {
        ResistiveNetwork network = solution.factorised().network();
        IntRow contracted = new IntRow();
        for (int e = 0; e < amps.length; e++) {
            if (network.ohms(e) == 0) {
                contracted.add(e);
            }
        }
        if (contracted.size() == 0) {
            return;
        }
        NetworkBuilder inner = ResistiveNetwork.builder(network.nodes());
        for (int k = 0; k < contracted.size(); k++) {
            inner.resistor(network.from(contracted.get(k)), network.to(contracted.get(k)), 1);
        }
        double[] excess = excess(amps, solution);
        int[] collector = new int[network.nodes()];
        java.util.Arrays.fill(collector, -1);
        for (int v = 0; v < excess.length; v++) {
            int point = solution.factorised().structure().point(v);
            collector[point] = collector[point] < 0 ? v : collector[point];
            if (collector[point] != v && excess[v] != 0) {
                inner.inject(collector[point], v, excess[v]);
            }
        }
        BranchCurrents split = FactorisedNetwork.of(inner.build()).solve().currents();
        for (int k = 0; k < contracted.size(); k++) {
            amps[contracted.get(k)] = split.amps(k);
        }
    }

    private static double largest(double[] values) {
        double largest = 0;
        for (double value : values) {
            largest = Math.max(largest, Math.abs(value));
        }
        return largest;
    }
}
