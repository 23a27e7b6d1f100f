package ringout.solve.network;

import java.util.Arrays;
import ringout.graph.index.UnionFind;

/** Nodes that 0 Ω elements make one point, and what those elements carry. */
final class Contraction {
    private static final int NONE = -1;

    private final int[] from;
    private final int[] to;
    private final int[] point;
    private final int count;

    Contraction(int nodes, int[] from, int[] to, double[] ohms) {
        this.from = from;
        this.to = to;
        UnionFind sets = new UnionFind(nodes);
        for (int e = 0; e < from.length; e++) {
            if (ohms[e] == 0) {
                sets.union(from[e], to[e]);
            }
        }
        point = new int[nodes];
        int[] number = new int[nodes];
        Arrays.fill(number, NONE);
        int next = 0;
        for (int v = 0; v < nodes; v++) {
            int root = sets.find(v);
            if (number[root] == NONE) {
                number[root] = next++;
            }
            point[v] = number[root];
        }
        count = next;
    }

    /** {@return the number of points} */
    int count() {
        return count;
    }

    /** {@return the point of a node} */
    int of(int node) {
        return point[node];
    }

    /** {@return the number of elements} */
    int elements() {
        return from.length;
    }

    /** {@return the point of the first node of an element} */
    int from(int element) {
        return point[from[element]];
    }

    /** {@return the point of the second node of an element} */
    int to(int element) {
        return point[to[element]];
    }

    /**
     * Gives every 0 Ω element the current that Kirchhoff's law leaves for it. Elements that stand alone at a node are
     * settled first, again and again; what is left are rings, where the current is split as by equal resistances.
     */
    void fill(double[] amps, double[] inflow, double[] ohms) {
        double[] excess = inflow.clone();
        int[] open = new int[point.length];
        int[] mixed = new int[point.length];
        for (int e = 0; e < amps.length; e++) {
            if (ohms[e] == 0 && from[e] != to[e]) {
                // The exclusive or of all open elements of a node is the last one when one is left.
                count(e, open, mixed, 1);
            } else if (ohms[e] > 0) {
                excess[from[e]] -= amps[e];
                excess[to[e]] += amps[e];
            }
        }
        for (int v = 0; v < open.length; v++) {
            for (int at = v; open[at] == 1; ) {
                at = settle(at, mixed[at], amps, excess, open, mixed);
            }
        }
        Rings.split(from, to, open, amps, excess, ohms);
    }

    private void count(int e, int[] open, int[] mixed, int step) {
        open[from[e]] += step;
        open[to[e]] += step;
        mixed[from[e]] ^= e;
        mixed[to[e]] ^= e;
    }

    private int settle(int at, int e, double[] amps, double[] excess, int[] open, int[] mixed) {
        int other = from[e] == at ? to[e] : from[e];
        amps[e] = from[e] == at ? excess[at] : -excess[at];
        excess[other] += excess[at];
        excess[at] = 0;
        count(e, open, mixed, -1);
        return other;
    }
}
