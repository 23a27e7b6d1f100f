package ringout.solve.network;

import java.util.Arrays;
import ringout.graph.index.UnionFind;

/**
 * What follows from the connections of a network alone: which nodes are one point, which node each connected piece is
 * measured against, in which order nodes are eliminated and where the factor has entries. Computed once, it serves every
 * set of values on the same connections ({@link #factorise}).
 *
 * <p>The connections are all elements, open ones included, so that a value may open or close them later. Elements of 0 Ω
 * are contracted here, so 0 Ω belongs to the structure: a set of values may not add or remove one.
 */
public final class NetworkStructure {

    /** Instead of a position: the node is one point with the datum of its piece. */
    static final int AT_DATUM = -1;

    private final ResistiveNetwork network;
    private final int[] point;
    private final int[] piece;
    private final int[] position;
    private final Symbolic symbolic;
    private final int[] slot;

    private NetworkStructure(ResistiveNetwork network) {
        this.network = network;
        Points points = Points.of(network);
        point = points.point();
        piece = points.piece();
        int[] unknown = points.unknowns();
        int m = network.elements();
        int[] a = new int[m];
        int[] b = new int[m];
        for (int e = 0; e < m; e++) {
            a[e] = unknown[point[network.from(e)]];
            b[e] = unknown[point[network.to(e)]];
        }
        symbolic = Symbolic.of(Adjacency.of(points.unknownCount(), a, b));
        position = new int[network.nodes()];
        for (int v = 0; v < position.length; v++) {
            int u = unknown[point[v]];
            position[v] = u < 0 ? AT_DATUM : symbolic.tree.position[u];
        }
        slot = slots();
    }

    /** {@return the structure of a network's connections} */
    public static NetworkStructure of(ResistiveNetwork network) {
        return new NetworkStructure(network);
    }

    /**
     * Factorises a set of values on these connections.
     *
     * @param values the network this structure was made from, or one derived from it by other values
     * @return the factorisation
     */
    public FactorisedNetwork factorise(ResistiveNetwork values) {
        requireSameConnections(values);
        double[] mutual = new double[symbolic.entries()];
        double[] toDatum = new double[symbolic.size];
        for (int e = 0; e < slot.length; e++) {
            if (carries(e)) {
                double g = values.siemens(e);
                if (slot[e] >= 0) {
                    mutual[slot[e]] += g;
                } else {
                    toDatum[datumSide(e)] += g;
                }
            }
        }
        return new FactorisedNetwork(this, values, Factor.of(symbolic, mutual, toDatum));
    }

    private void requireSameConnections(ResistiveNetwork values) {
        if (values.elements() != network.elements() || values.nodes() != network.nodes()) {
            throw new IllegalArgumentException("the values belong to a network with other connections");
        }
        for (int e = 0; e < values.elements(); e++) {
            boolean same = values.from(e) == network.from(e)
                    && values.to(e) == network.to(e)
                    && (values.ohms(e) == 0) == (network.ohms(e) == 0);
            if (!same) {
                throw new IllegalArgumentException("element " + e + " joins other nodes or changed from or to 0 ohm");
            }
        }
    }

    private int[] slots() {
        int[] slots = new int[network.elements()];
        Arrays.fill(slots, -1);
        for (int e = 0; e < slots.length; e++) {
            int i = position[network.from(e)];
            int j = position[network.to(e)];
            if (i != j && i >= 0 && j >= 0) {
                slots[e] = symbolic.entry(i, j);
            }
        }
        return slots;
    }

    /** {@return the network the structure was made from} */
    ResistiveNetwork network() {
        return network;
    }

    /** {@return the symbolic factor} */
    Symbolic symbolic() {
        return symbolic;
    }

    /** {@return the position of elimination of a node, or {@link #AT_DATUM}} */
    int position(int node) {
        return position[node];
    }

    /** {@return a number that nodes share when 0 Ω elements make them one point} */
    int point(int node) {
        return point[node];
    }

    /** {@return a number that nodes share when any elements, open ones included, connect them} */
    int piece(int node) {
        return piece[point[node]];
    }

    /** {@return whether an element has its ends at different points} */
    boolean carries(int element) {
        return point[network.from(element)] != point[network.to(element)];
    }

    /** {@return the entry of the factor an element adds to, or -1 if it leads to the datum or nowhere} */
    int slot(int element) {
        return slot[element];
    }

    /** {@return the position of the end of an element that is not the datum} */
    int datumSide(int element) {
        return Math.max(position[network.from(element)], position[network.to(element)]);
    }

    /** {@return the number of unknown potentials} */
    public int unknowns() {
        return symbolic.size;
    }

    /** {@return the number of entries of the factor outside its diagonal, the measure of work and memory} */
    public int factorEntries() {
        return symbolic.entries();
    }

    /** {@return the length of the longest chain of eliminations, the measure of a local re-solve} */
    public int eliminationHeight() {
        return symbolic.tree.height();
    }

    /** {@return joined sets of nodes over the elements a test accepts} */
    static UnionFind join(ResistiveNetwork network, java.util.function.IntPredicate accepts) {
        UnionFind sets = new UnionFind(network.nodes());
        for (int e = 0; e < network.elements(); e++) {
            if (accepts.test(e)) {
                sets.union(network.from(e), network.to(e));
            }
        }
        return sets;
    }
}
