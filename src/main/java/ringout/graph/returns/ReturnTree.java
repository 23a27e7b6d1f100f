package ringout.graph.returns;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import ringout.graph.Circuit;
import ringout.graph.EdgeKind;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.index.IndexGraph;
import ringout.graph.index.UnionFind;
import ringout.graph.index.Walk;

/**
 * A widest way between any two points of the 0V graph, found in time that goes with the length of the way: the tree of the widest
 * conductors, by the most each may carry.
 *
 * <p>Source: T. C. Hu, The maximum capacity route problem, Operations Research 9 (1961): a maximum spanning tree holds a widest
 * path between every two vertices.
 */
public final class ReturnTree {
    private static final int NONE = -1;

    private final Wiring wiring;
    private final IndexGraph graph;
    private final int[] parentEdge;
    private final int[] depth;
    private final int[] island;

    private ReturnTree(Circuit circuit) {
        ReturnGraph returns = ReturnGraph.of(circuit);
        wiring = circuit.wiring();
        graph = returns.graph();
        parentEdge = new int[graph.vertexCount()];
        depth = new int[parentEdge.length];
        island = new int[parentEdge.length];
        Arrays.fill(parentEdge, NONE);
        Arrays.fill(island, NONE);
        IndexGraph tree = graph.onlyEdges(widest(returns));
        int[] queue = new int[parentEdge.length];
        for (int root = 0; root < parentEdge.length; root++) {
            if (island[root] == NONE && tree.degree(root) > 0) {
                hang(tree, root, queue);
            }
        }
    }

    /** The tree of a circuit, found once. */
    public static ReturnTree of(Circuit circuit) {
        return circuit.know(ReturnTree.class, ReturnTree::new);
    }

    /** The edges that first join two points, the widest offered first. */
    private BitSet widest(ReturnGraph returns) {
        UnionFind joined = new UnionFind(graph.vertexCount());
        BitSet tree = new BitSet();
        List<Wire> wires = new ArrayList<>();
        for (int edge = 0; edge < graph.edgeBound(); edge++) {
            if (!graph.hasEdge(edge) || !returns.holds(edge)) {
                continue;
            }
            if (wiring.kind(edge) == EdgeKind.CONDUCTOR) {
                wires.add(wiring.wires().get(wiring.ref(edge)));
            } else {
                offer(joined, tree, edge);
            }
        }
        wires.sort((a, b) ->
                Double.compare(returns.ampacity(b).high(), returns.ampacity(a).high()));
        wires.forEach(wire -> offer(joined, tree, wiring.conductorEdge(wire)));
        return tree;
    }

    private void offer(UnionFind joined, BitSet tree, int edge) {
        if (joined.find(graph.from(edge)) != joined.find(graph.to(edge))) {
            joined.union(graph.from(edge), graph.to(edge));
            tree.set(edge);
        }
    }

    private void hang(IndexGraph tree, int root, int[] queue) {
        int end = 0;
        queue[end++] = root;
        island[root] = root;
        for (int i = 0; i < end; i++) {
            int v = queue[i];
            int last = tree.endSlot(v);
            for (int slot = tree.firstSlot(v); slot < last; slot = tree.nextSlot(slot, last)) {
                int other = tree.slotVertex(slot);
                if (island[other] == NONE) {
                    island[other] = root;
                    depth[other] = depth[v] + 1;
                    parentEdge[other] = tree.slotEdge(slot);
                    queue[end++] = other;
                }
            }
        }
    }

    private int[] edges(int from, int to) {
        if (from == to || island[from] == NONE || island[from] != island[to]) {
            return new int[0];
        }
        List<Integer> up = new ArrayList<>();
        List<Integer> down = new ArrayList<>();
        int a = from;
        int b = to;
        while (a != b) {
            boolean left = depth[a] >= depth[b];
            int v = left ? a : b;
            (left ? up : down).add(parentEdge[v]);
            int next = graph.otherEnd(parentEdge[v], v);
            a = left ? next : a;
            b = left ? b : next;
        }
        for (int i = down.size() - 1; i >= 0; i--) {
            up.add(down.get(i));
        }
        return up.stream().mapToInt(Integer::intValue).toArray();
    }

    /** The conductors from one point to another, in order; none where no way joins both. */
    public List<Wire> wires(int from, int to) {
        List<Wire> wires = new ArrayList<>();
        for (int edge : edges(from, to)) {
            if (wiring.kind(edge) == EdgeKind.CONDUCTOR) {
                wires.add(wiring.wires().get(wiring.ref(edge)));
            }
        }
        return wires;
    }

    /** The way from one point to another in the user's rows. */
    public Trail trail(int from, int to) {
        int[] edges = edges(from, to);
        return edges.length == 0 ? Trail.NONE : Trail.of(wiring, Walk.along(graph, from, edges));
    }
}
