package ringout.graph.loss;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import ringout.graph.index.Dominators;
import ringout.graph.index.IndexGraph;

/** Ways from one root to many points, and the items without which there is none. */
final class Ways {
    private static final int NONE = -1;

    private final IndexGraph graph;
    private final int root;
    private final int[] itemOf;
    private final Map<Integer, Integer> points;
    private final Map<Integer, List<Integer>> places;
    private final IntUnaryOperator point;
    private final Dominators dominators;

    Ways(
            IndexGraph graph,
            int root,
            int[] itemOf,
            Map<Integer, Integer> points,
            Map<Integer, List<Integer>> places,
            IntUnaryOperator point) {
        this.graph = graph;
        this.root = root;
        this.itemOf = itemOf;
        this.points = points;
        this.places = places;
        this.point = point;
        this.dominators = Dominators.of(graph, root);
    }

    /** The vertex of a point of the typed graph, -1 when no way touches it. */
    int node(int vertex) {
        return points.getOrDefault(point.applyAsInt(vertex), NONE);
    }

    /** Whether any way leads to a point. */
    boolean reaches(int vertex) {
        int node = node(vertex);
        return node >= 0 && dominators.reached(node);
    }

    /** The items every way to a point passes, the nearest first, the unit of the point itself among them. */
    Set<Integer> above(int vertex) {
        Set<Integer> found = new LinkedHashSet<>();
        int node = node(vertex);
        for (int at = node; at >= 0 && dominators.reached(at); at = dominators.immediate(at)) {
            if (itemOf[at] >= 0) {
                found.add(itemOf[at]);
            }
        }
        return found;
    }

    /** Whether every way to a point passes a vertex. */
    boolean passes(int node, int vertex) {
        int at = node(vertex);
        return at >= 0 && dominators.dominates(node, at);
    }

    /** Whether any way leads to a vertex. */
    private boolean reached(int node) {
        return dominators.reached(node);
    }

    /** Leads and plugs that ways pass at more than one place: one by one these may be passed round, together not. */
    List<Integer> scattered() {
        List<Integer> found = new ArrayList<>();
        places.forEach((item, nodes) -> {
            if (nodes.size() > 1 && nodes.stream().filter(this::reached).count() > 1) {
                found.add(item);
            }
        });
        return found;
    }

    /** The vertices of a lead or plug. */
    List<Integer> places(int item) {
        return places.getOrDefault(item, List.of());
    }

    /** Everything that is reached while some vertices are gone. */
    BitSet reachedWithout(Iterable<Integer> gone) {
        BitSet seen = new BitSet(graph.vertexCount());
        gone.forEach(seen::set);
        BitSet blocked = (BitSet) seen.clone();
        ArrayDeque<Integer> open = new ArrayDeque<>();
        seen.set(root);
        open.add(root);
        while (!open.isEmpty()) {
            int v = open.remove();
            for (int end = graph.endSlot(v), s = graph.firstSlot(v); s < end; s = graph.nextSlot(s, end)) {
                int w = graph.slotVertex(s);
                if (!seen.get(w)) {
                    seen.set(w);
                    open.add(w);
                }
            }
        }
        seen.andNot(blocked);
        return seen;
    }
}
