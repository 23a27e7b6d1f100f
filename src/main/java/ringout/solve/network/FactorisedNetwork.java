package ringout.solve.network;

/**
 * A network with its values, factorised: ready to be solved for any source voltages and injected currents. Immutable.
 *
 * <p>Accuracy: the factorisation does not subtract ({@link Factor}), so potentials that come from sources and currents of
 * one sign against the reference have relative errors near 1e-15 whatever the range of resistances. Where currents of
 * both signs meet, the usual rounding of their sum is added.
 */
public final class FactorisedNetwork {

    private final NetworkStructure structure;
    private final ResistiveNetwork values;
    private final Factor factor;
    private final Islands islands;

    FactorisedNetwork(NetworkStructure structure, ResistiveNetwork values, Factor factor, Islands islands) {
        this.structure = structure;
        this.values = values;
        this.factor = factor;
        this.islands = islands;
    }

    /** {@return a network analysed and factorised in one go} */
    public static FactorisedNetwork of(ResistiveNetwork network) {
        return NetworkStructure.of(network).factorise(network);
    }

    /**
     * Factorises other values on the same connections. Where few resistances differ, as between the states of an aircraft,
     * only what they reach is computed anew.
     *
     * @param values a network derived from the one factorised here by other values
     * @return its factorisation
     */
    public FactorisedNetwork with(ResistiveNetwork values) {
        return structure.factorise(values, this);
    }

    /** {@return the solution for the source voltages and injected currents of the network itself} */
    public NetworkSolution solve() {
        return solve(values);
    }

    /**
     * Solves for other source voltages and injected currents.
     *
     * @param excitation a network with the same connections and resistances; only its voltages and currents are read
     * @return the solution
     */
    public NetworkSolution solve(ResistiveNetwork excitation) {
        if (excitation.elements() != values.elements()) {
            throw new IllegalArgumentException("the excitation belongs to a network with other elements");
        }
        double[] arrived = injected(excitation);
        factor.forward(arrived);
        return new NetworkSolution(this, excitation, arrived, factor.backward(arrived));
    }

    /** {@return by position of elimination, the current that sources and injections drive into the point} */
    double[] injected(ResistiveNetwork excitation) {
        double[] injected = new double[factor.shape.size];
        for (int s = 0; s < excitation.sources(); s++) {
            int e = excitation.source(s);
            if (structure.carries(e)) {
                double amps = excitation.emf(e) * values.siemens(e);
                add(injected, values.from(e), -amps);
                add(injected, values.to(e), amps);
            }
        }
        for (int i = 0; i < excitation.injections(); i++) {
            int a = excitation.injectionFrom(i);
            int b = excitation.injectionTo(i);
            if (islands.same(a, b)) {
                add(injected, a, -excitation.injectionAmps(i));
                add(injected, b, excitation.injectionAmps(i));
            }
        }
        return injected;
    }

    private void add(double[] amps, int node, double current) {
        int position = structure.position(node);
        if (position != NetworkStructure.AT_DATUM) {
            amps[position] += current;
        }
    }

    /** {@return whether conducting elements join two nodes} */
    public boolean connected(int a, int b) {
        return islands.same(a, b);
    }

    /** {@return whether the island of a node has a reference, so that the node has a voltage} */
    public boolean grounded(int node) {
        return islands.reference(node) >= 0;
    }

    /** {@return the structure this factorisation was made on} */
    public NetworkStructure structure() {
        return structure;
    }

    /** {@return the network with the factorised values} */
    public ResistiveNetwork network() {
        return values;
    }

    Factor factor() {
        return factor;
    }

    Islands islands() {
        return islands;
    }
}
