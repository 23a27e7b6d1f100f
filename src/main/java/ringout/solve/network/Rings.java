package ringout.solve.network;

import ringout.graph.index.UnionFind;

/** Currents of 0 Ω elements that form rings: any split obeys Kirchhoff's law; the one of equal resistances is given. */
final class Rings {
    private Rings() {}

    /**
     * Splits what is left over.
     *
     * @param open by node, how many 0 Ω elements are not settled
     * @param excess by node, the current that has to leave by them
     */
    static void split(int[] from, int[] to, int[] open, double[] amps, double[] excess, double[] ohms) {
        IntRow elements = new IntRow();
        for (int e = 0; e < amps.length; e++) {
            if (ohms[e] == 0 && from[e] != to[e] && open[from[e]] > 0 && open[to[e]] > 0) {
                elements.add(e);
            }
        }
        if (elements.size() == 0) {
            return;
        }
        NetworkBuilder builder = ResistiveNetwork.builder(open.length);
        for (int k = 0; k < elements.size(); k++) {
            builder.resistor(from[elements.get(k)], to[elements.get(k)], 1);
        }
        int[] collector = collectors(from, to, elements, open.length);
        for (int v = 0; v < open.length; v++) {
            if (open[v] > 0 && collector[v] != v && excess[v] != 0) {
                builder.inject(collector[v], v, excess[v]);
            }
        }
        BranchCurrents split = FactorisedNetwork.of(builder.build()).solve().currents();
        for (int k = 0; k < elements.size(); k++) {
            amps[elements.get(k)] = split.amps(k);
        }
    }

    private static int[] collectors(int[] from, int[] to, IntRow elements, int nodes) {
        UnionFind sets = new UnionFind(nodes);
        for (int k = 0; k < elements.size(); k++) {
            sets.union(from[elements.get(k)], to[elements.get(k)]);
        }
        int[] collector = new int[nodes];
        for (int v = 0; v < nodes; v++) {
            collector[v] = sets.find(v);
        }
        return collector;
    }
}
