package ringout.solve.network;

import org.jspecify.annotations.Nullable;
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

    /** Instead of a place: the element joins a point to itself. */
    static final int NOWHERE = -1;

    private final ResistiveNetwork network;
    private final int[] point;
    private final int[] piece;
    private final int[] position;
    private final Symbolic symbolic;
    private final int[] place;
    private final int[] pieceAt;
    private int pieces;
    private final Islands whole;

    /** Made when first asked for: who factorises once does not need them. */
    private @Nullable Places places;

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
        place = placesOfElements();
        pieceAt = new int[symbolic.size];
        for (int v = 0; v < position.length; v++) {
            pieces = Math.max(pieces, piece(v) + 1);
            if (position[v] != AT_DATUM) {
                pieceAt[position[v]] = piece(v);
            }
        }
        whole = Islands.ofPieces(this);
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
        return factorised(values, Factor.of(symbolic, Conductances.of(this, values)));
    }

    /** Factorises other values, of which a base that was factorised before may have most. */
    FactorisedNetwork factorise(ResistiveNetwork values, FactorisedNetwork base) {
        requireSameConnections(values);
        IntRow changed = FewChanges.changed(base.network(), values);
        return FewChanges.worthIt(changed, values)
                ? factorised(values, FewChanges.of(base, values, changed))
                : factorise(values);
    }

    private FactorisedNetwork factorised(ResistiveNetwork values, Factor factor) {
        Islands islands = factor.reachesDatumEverywhere() ? whole : Islands.of(this, factor, whole);
        return new FactorisedNetwork(this, values, factor, islands);
    }

    private void requireSameConnections(ResistiveNetwork values) {
        if (!serves(values)) {
            throw new IllegalArgumentException("the values belong to a network with other connections");
        }
    }

    /** {@return whether a network has these connections, with 0 Ω in the same places, so that it can be factorised here} */
    public boolean serves(ResistiveNetwork values) {
        if (values.hasConnectionsOf(network)) {
            return true;
        }
        boolean same = values.elements() == network.elements()
                && values.nodes() == network.nodes()
                && values.references() == network.references();
        for (int r = 0; same && r < values.references(); r++) {
            same = values.reference(r) == network.reference(r);
        }
        for (int e = 0; same && e < values.elements(); e++) {
            same = values.from(e) == network.from(e)
                    && values.to(e) == network.to(e)
                    && (values.ohms(e) == 0) == (network.ohms(e) == 0);
        }
        return same;
    }

    private int[] placesOfElements() {
        int[] places = new int[network.elements()];
        for (int e = 0; e < places.length; e++) {
            int i = position[network.from(e)];
            int j = position[network.to(e)];
            if (i == j) {
                places[e] = NOWHERE;
            } else if (i >= 0 && j >= 0) {
                places[e] = symbolic.entry(i, j);
            } else {
                places[e] = symbolic.entries() + Math.max(i, j);
            }
        }
        return places;
    }

    /** {@return which elements add to the same conductance} */
    Places places() {
        Places known = places;
        if (known == null) {
            known = Places.ofElements(this);
            places = known;
        }
        return known;
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

    /** {@return the piece of a position} */
    int pieceAt(int at) {
        return pieceAt[at];
    }

    /** {@return the number of connected pieces} */
    int pieces() {
        return pieces;
    }

    /** {@return whether an element has its ends at different points} */
    boolean carries(int element) {
        return place[element] != NOWHERE;
    }

    /**
     * Where an element's conductance goes: an entry of the factor, or behind those the position it ties to the datum, or
     * {@link #NOWHERE} when its ends are one point.
     */
    int place(int element) {
        return place[element];
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
