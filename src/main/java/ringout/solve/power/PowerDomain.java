package ringout.solve.power;

import java.util.Arrays;
import java.util.BitSet;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.index.UnionFind;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;

/**
 * The part of a circuit that power can reach: every net that is joined, through conducting parts, loads and sources, to
 * a working source. Signal nets are not in it: what drivers and receivers pass is too little to move a supply. What is not
 * in it has no voltage that could be computed.
 */
final class PowerDomain {
    /** Node of a vertex outside. */
    static final int OUTSIDE = -1;

    private final int[] node;
    private final int count;

    private PowerDomain(Circuit circuit) {
        PowerGraph power = PowerGraph.of(circuit);
        UnionFind joined = new UnionFind(circuit.nets().count());
        for (Part part : circuit.wiring().parts()) {
            if (conducts(part) && circuit.live().hasEdge(part.edge())) {
                join(joined, circuit, part.from(), part.to());
                join(joined, circuit, part.from(), part.zero());
            }
        }
        for (PlacedLoad load : power.loads()) {
            if (circuit.aboard(load.unit())) {
                join(joined, circuit, load.plus(), load.zero());
            }
        }
        BitSet fed = new BitSet();
        for (PowerSource source : power.sources()) {
            if (power.works(source)) {
                join(joined, circuit, source.plus(), source.minus());
                fed.set(circuit.nets().of(source.plus()));
            }
        }
        BitSet within = new BitSet();
        fed.stream().forEach(net -> within.set(joined.find(net)));
        Wiring wiring = circuit.wiring();
        node = new int[wiring.graph().vertexCount()];
        Arrays.fill(node, OUTSIDE);
        int next = 0;
        for (int v = 0; v < node.length; v++) {
            if (within.get(joined.find(circuit.nets().of(v)))) {
                node[v] = next++;
            }
        }
        count = next;
    }

    /** The domain of a circuit, found once. */
    static PowerDomain of(Circuit circuit) {
        return circuit.know(PowerDomain.class, PowerDomain::new);
    }

    private static void join(UnionFind joined, Circuit circuit, int a, int b) {
        if (a >= 0 && b >= 0) {
            joined.union(circuit.nets().of(a), circuit.nets().of(b));
        }
    }

    /** Whether a part belongs to the supply and not to a signal. */
    static boolean conducts(Part part) {
        return !(part.origin() instanceof Part.Terminator);
    }

    /** Number of nodes. */
    int count() {
        return count;
    }

    /** The node of a vertex, or {@link #OUTSIDE}. */
    int node(int vertex) {
        return vertex < 0 ? OUTSIDE : node[vertex];
    }

    /** Whether power can reach a vertex. */
    boolean holds(int vertex) {
        return node(vertex) != OUTSIDE;
    }
}
