package ringout.solve.network;

import java.util.BitSet;

/**
 * A network of resistors made small without changing what flows: 0 Ω elements become one point, dead ends are cut off and
 * resistors in series become one. What is left are the nodes that sources and loads stand on and the nodes where three ways
 * meet. Every node and resistor of the whole is found again in it, exactly.
 */
public final class Condensed {
    static final int NONE = -1;

    private final Chains chains;
    private final CutEnds cut;
    private final Contraction points;
    private final int[] from;
    private final double[] ohms;

    private Condensed(int nodes, int[] from, int[] to, double[] ohms, BitSet keep) {
        this.from = from;
        this.ohms = ohms;
        points = new Contraction(nodes, from, to, ohms);
        BitSet kept = new BitSet();
        keep.stream().forEach(node -> kept.set(points.of(node)));
        cut = new CutEnds(points, kept, ohms);
        chains = new Chains(points, cut, kept, ohms);
    }

    /**
     * {@return a network made small}
     *
     * @param nodes number of nodes
     * @param from first node of each resistor
     * @param to second node of each resistor
     * @param ohms its resistance, 0 to infinity
     * @param keep nodes that something else stands on
     */
    public static Condensed of(int nodes, int[] from, int[] to, double[] ohms, BitSet keep) {
        return new Condensed(nodes, from, to, ohms, keep);
    }

    /** {@return the number of nodes left} */
    public int nodes() {
        return chains.cores();
    }

    /** {@return the number of resistors left} */
    public int resistors() {
        return chains.count();
    }

    /** {@return the first node of a resistor left} */
    public int from(int resistor) {
        return chains.start(resistor);
    }

    /** {@return the second node of a resistor left} */
    public int to(int resistor) {
        return chains.end(resistor);
    }

    /** {@return the resistance of a resistor left in ohms, above 0} */
    public double ohms(int resistor) {
        return chains.ohms(resistor);
    }

    /** {@return the node left that a node is measured from: itself, or the near end of its chain} */
    public int anchor(int node) {
        return chains.anchor(cut.root(points.of(node)));
    }

    /** {@return the resistor left on whose way a node lies, or -1 when it is one point with its anchor} */
    public int way(int node) {
        return chains.way(cut.root(points.of(node)));
    }

    /** {@return the resistance in ohms from the anchor of a node to the node along its way} */
    public double ahead(int node) {
        return chains.ahead(cut.root(points.of(node)));
    }

    /**
     * The currents of all resistors of the whole network.
     *
     * @param left currents of the resistors left in amperes
     * @param inflow by node, the current that sources and loads drive into it in amperes
     * @return amperes, positive from the first node to the second
     */
    public double[] amps(double[] left, double[] inflow) {
        double[] amps = new double[from.length];
        for (int e = 0; e < amps.length; e++) {
            int way = chains.wayOf(e);
            amps[e] = way == NONE ? 0 : (chains.forward(e) ? left[way] : -left[way]);
        }
        points.fill(amps, inflow, ohms);
        return amps;
    }
}
