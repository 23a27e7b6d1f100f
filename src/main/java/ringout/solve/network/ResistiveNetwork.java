package ringout.solve.network;

/**
 * A network of resistances and voltage sources between numbered nodes, with currents driven into it. Immutable.
 *
 * <pre>
 *   resistor        from o----[ ohms ]----o to                 current positive from -> to
 *   source         minus o--(- emf +)--[ ohms ]----o plus      current positive minus -> plus, out of the plus pole
 *   injection       from o-------( amps -> )-------o to        leaves the network at from, enters it at to
 * </pre>
 *
 * <p>A source always has an internal resistance. A resistance of 0 Ω makes two nodes one point; infinity is an element
 * that is fitted but does not conduct (an open switch), kept so that the same pattern serves when it does.
 *
 * <p>A reference names the zero of its island and carries no current. When an island has several, the one named first
 * counts. An island without a reference still has currents and differences, but no voltage of a single node.
 */
public final class ResistiveNetwork {

    private final int nodes;
    private final int[] from;
    private final int[] to;
    private final double[] ohms;
    private final double[] emf;
    private final int[] injectionFrom;
    private final int[] injectionTo;
    private final double[] injectionAmps;
    private final int[] references;

    /** The same object in networks that are known to differ in values only. */
    private final Object connections;

    private final int[] sources;

    /** Networks that differ in a few resistances only do not divide for the others again. */
    private final double[] siemens;

    ResistiveNetwork(NetworkBuilder b) {
        nodes = b.nodes();
        from = b.from().toArray();
        to = b.to().toArray();
        ohms = b.ohms().toArray();
        emf = b.emf().toArray();
        injectionFrom = b.injectionFrom().toArray();
        injectionTo = b.injectionTo().toArray();
        injectionAmps = b.injectionAmps().toArray();
        references = b.references().toArray();
        connections = new Object();
        sources = nonZero(emf);
        siemens = new double[ohms.length];
        for (int e = 0; e < ohms.length; e++) {
            siemens[e] = 1 / ohms[e];
        }
    }

    private ResistiveNetwork(
            ResistiveNetwork n,
            double[] ohms,
            double[] emf,
            int[] injectionFrom,
            int[] injectionTo,
            double[] injectionAmps) {
        nodes = n.nodes;
        from = n.from;
        to = n.to;
        references = n.references;
        this.ohms = ohms;
        this.emf = emf;
        this.injectionFrom = injectionFrom;
        this.injectionTo = injectionTo;
        this.injectionAmps = injectionAmps;
        connections = contractsTheSame(ohms, n.ohms) ? n.connections : new Object();
        sources = emf == n.emf ? n.sources : nonZero(emf);
        siemens = ohms == n.ohms ? n.siemens : changed(n.siemens, n.ohms, ohms);
    }

    private static double[] changed(double[] siemens, double[] before, double[] ohms) {
        double[] now = siemens.clone();
        for (int e = 0; e < ohms.length; e++) {
            if (ohms[e] != before[e]) {
                now[e] = 1 / ohms[e];
            }
        }
        return now;
    }

    private static boolean contractsTheSame(double[] ohms, double[] before) {
        boolean same = true;
        for (int e = 0; same && ohms != before && e < ohms.length; e++) {
            same = (ohms[e] == 0) == (before[e] == 0);
        }
        return same;
    }

    private static int[] nonZero(double[] emf) {
        IntRow found = new IntRow();
        for (int e = 0; e < emf.length; e++) {
            if (emf[e] != 0) {
                found.add(e);
            }
        }
        return found.toArray();
    }

    /** {@return an empty network of a number of nodes, to be filled} */
    public static NetworkBuilder builder(int nodes) {
        return new NetworkBuilder(nodes);
    }

    /** {@return the same network with other resistances, one for each element} */
    public ResistiveNetwork withOhms(double[] newOhms) {
        requireLength(newOhms, elements(), "resistances");
        for (int e = 0; e < newOhms.length; e++) {
            NetworkBuilder.requireOhms(newOhms[e], emf[e] != 0);
        }
        return new ResistiveNetwork(this, newOhms.clone(), emf, injectionFrom, injectionTo, injectionAmps);
    }

    /** {@return the same network with other source voltages, one for each element, 0 for a resistor} */
    public ResistiveNetwork withEmf(double[] newEmf) {
        requireLength(newEmf, elements(), "voltages");
        for (int e = 0; e < newEmf.length; e++) {
            NetworkBuilder.requireFinite(newEmf[e], "voltage");
            NetworkBuilder.requireOhms(ohms[e], newEmf[e] != 0);
        }
        return new ResistiveNetwork(this, ohms, newEmf.clone(), injectionFrom, injectionTo, injectionAmps);
    }

    /** {@return the same network with other injected currents, one for each injection} */
    public ResistiveNetwork withInjections(double[] newAmps) {
        requireLength(newAmps, injections(), "currents");
        for (double amps : newAmps) {
            NetworkBuilder.requireFinite(amps, "current");
        }
        return new ResistiveNetwork(this, ohms, emf, injectionFrom, injectionTo, newAmps.clone());
    }

    /** {@return the same network with other source voltages and injected currents at once} */
    public ResistiveNetwork drivenBy(double[] newEmf, double[] newAmps) {
        requireLength(newEmf, elements(), "voltages");
        requireLength(newAmps, injections(), "currents");
        for (int e = 0; e < newEmf.length; e++) {
            if (newEmf[e] != 0) {
                NetworkBuilder.requireFinite(newEmf[e], "voltage");
                NetworkBuilder.requireOhms(ohms[e], true);
            }
        }
        for (double amps : newAmps) {
            NetworkBuilder.requireFinite(amps, "current");
        }
        return new ResistiveNetwork(this, ohms, newEmf.clone(), injectionFrom, injectionTo, newAmps.clone());
    }

    /** {@return the same resistances with all sources silent and one ampere driven in at a node and out at another} */
    ResistiveNetwork probed(int in, int out) {
        double[] silent = new double[elements()];
        return new ResistiveNetwork(this, ohms, silent, new int[] {out}, new int[] {in}, new double[] {1});
    }

    private static void requireLength(double[] values, int length, String what) {
        if (values.length != length) {
            throw new IllegalArgumentException(values.length + " " + what + " for " + length);
        }
    }

    /** {@return the number of nodes} */
    public int nodes() {
        return nodes;
    }

    /** {@return the number of elements, sources included} */
    public int elements() {
        return from.length;
    }

    /** {@return the first node of an element; the minus pole of a source} */
    public int from(int element) {
        return from[element];
    }

    /** {@return the second node of an element; the plus pole of a source} */
    public int to(int element) {
        return to[element];
    }

    /** {@return the resistance of an element in ohms, 0 to infinity} */
    public double ohms(int element) {
        return ohms[element];
    }

    /** {@return the source voltage of an element in volts, 0 for a resistor} */
    public double emf(int element) {
        return emf[element];
    }

    /** {@return the number of injections} */
    public int injections() {
        return injectionFrom.length;
    }

    /** {@return the node an injected current leaves the network at} */
    public int injectionFrom(int injection) {
        return injectionFrom[injection];
    }

    /** {@return the node an injected current enters the network at} */
    public int injectionTo(int injection) {
        return injectionTo[injection];
    }

    /** {@return an injected current in amperes} */
    public double injectionAmps(int injection) {
        return injectionAmps[injection];
    }

    /** {@return the number of reference nodes} */
    public int references() {
        return references.length;
    }

    /** {@return a reference node; they count in the order in which they were named} */
    public int reference(int index) {
        return references[index];
    }

    /** {@return whether this network is known to have the connections of another; if not, they may still be equal} */
    boolean hasConnectionsOf(ResistiveNetwork other) {
        return connections == other.connections;
    }

    /** {@return the number of elements with a source voltage} */
    int sources() {
        return sources.length;
    }

    /** {@return an element with a source voltage} */
    int source(int index) {
        return sources[index];
    }

    /** {@return conductance of an element in siemens, infinity for 0 Ω} */
    double siemens(int element) {
        return siemens[element];
    }
}
