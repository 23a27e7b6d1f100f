package ringout.solve.network;

/** Collects the parts of a {@link ResistiveNetwork}. Elements and injections are numbered in the order of addition. */
public final class NetworkBuilder {

    private final int nodes;
    private final IntRow from = new IntRow();
    private final IntRow to = new IntRow();
    private final DoubleRow ohms = new DoubleRow();
    private final DoubleRow emf = new DoubleRow();
    private final IntRow injectionFrom = new IntRow();
    private final IntRow injectionTo = new IntRow();
    private final DoubleRow injectionAmps = new DoubleRow();
    private final IntRow references = new IntRow();

    NetworkBuilder(int nodes) {
        if (nodes < 0) {
            throw new IllegalArgumentException("node count " + nodes + " is negative");
        }
        this.nodes = nodes;
    }

    /**
     * Adds a resistor.
     *
     * @param a first node
     * @param b second node; current is positive from the first to the second
     * @param resistance ohms, 0 (one point) to infinity (fitted, but open)
     * @return the number of the element
     */
    public int resistor(int a, int b, double resistance) {
        requireOhms(resistance, false);
        return element(a, b, resistance, 0);
    }

    /**
     * Adds a voltage source with its internal resistance.
     *
     * @param minus node of the minus pole
     * @param plus node of the plus pole; current is positive when it leaves this pole
     * @param volts open-circuit voltage
     * @param resistance internal ohms, above 0; infinity disconnects the source
     * @return the number of the element
     */
    public int source(int minus, int plus, double volts, double resistance) {
        requireFinite(volts, "voltage");
        requireOhms(resistance, true);
        return element(minus, plus, resistance, volts);
    }

    /**
     * Adds a current that leaves the network at one node and enters it at another: a constant-current load from its plus
     * to its minus terminal.
     *
     * @param a node the current leaves the network at
     * @param b node the current enters the network at
     * @param amps current
     * @return the number of the injection
     */
    public int inject(int a, int b, double amps) {
        requireFinite(amps, "current");
        injectionFrom.add(node(a));
        injectionTo.add(node(b));
        injectionAmps.add(amps);
        return injectionAmps.size() - 1;
    }

    /** Names a node the zero of its island, unless the island has one already. */
    public NetworkBuilder reference(int node) {
        references.add(node(node));
        return this;
    }

    /** {@return the network as it stands} */
    public ResistiveNetwork build() {
        return new ResistiveNetwork(this);
    }

    private int element(int a, int b, double resistance, double volts) {
        from.add(node(a));
        to.add(node(b));
        ohms.add(resistance);
        emf.add(volts);
        return ohms.size() - 1;
    }

    private int node(int node) {
        if (node < 0 || node >= nodes) {
            throw new IllegalArgumentException("node " + node + " in a network of " + nodes);
        }
        return node;
    }

    static void requireOhms(double value, boolean source) {
        if (Double.isNaN(value) || value < 0) {
            throw new IllegalArgumentException("resistance " + value + " ohm");
        }
        if (source && value == 0) {
            throw new IllegalArgumentException("a source of 0 ohm: give its internal resistance");
        }
    }

    static void requireFinite(double value, String what) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " " + value);
        }
    }

    int nodes() {
        return nodes;
    }

    IntRow from() {
        return from;
    }

    IntRow to() {
        return to;
    }

    DoubleRow ohms() {
        return ohms;
    }

    DoubleRow emf() {
        return emf;
    }

    IntRow injectionFrom() {
        return injectionFrom;
    }

    IntRow injectionTo() {
        return injectionTo;
    }

    DoubleRow injectionAmps() {
        return injectionAmps;
    }

    IntRow references() {
        return references;
    }
}
