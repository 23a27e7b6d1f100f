package ringout.graph.index;

import java.util.BitSet;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Widest paths from a set of sources to every vertex: of all paths, the one whose narrowest edge is widest. "Has ground"
 * is reachability, "has enough ground" is this.
 *
 * <p>One pass grows a maximum spanning tree from the set (the path in such a tree is a widest path); directed edges are
 * followed forwards. O((n + m) log n). An edge of capacity 0 carries nothing and is not passed. Paths are not to be asked for by
 * several threads at once.
 *
 * <p>Source: M. Pollack, The maximum capacity through a network, Operations Research 8 (1960).
 */
public final class WidestPaths {
    private final IndexGraph graph;
    private final IntToDoubleFunction capacity;
    private final double[] width;
    private final BitSet sources = new BitSet();
    /** Made when the first path is asked for: most callers only want widths. */
    private @Nullable PathSearch backwards;

    private WidestPaths(IndexGraph graph, IntToDoubleFunction capacity) {
        this.graph = graph;
        this.capacity = capacity;
        this.width = new double[graph.vertexCount()];
    }

    /**
     * A widest path and what limits it.
     *
     * @param path from a source to the vertex asked for, with the fewest edges among the widest
     * @param width the capacity of the path, infinite if it has no edges
     * @param bottleneck the edge that limits it, the one nearest to the vertex if several do; -1 if it has no edges
     */
    public record Widest(Walk path, double width, int bottleneck) {}

    /**
     * {@return the widest paths from the best of the sources}
     *
     * @param capacity of an edge, in any unit, not negative; may be infinite
     * @throws IllegalArgumentException if the capacity of a visited edge is negative or not a number
     */
    public static WidestPaths from(IndexGraph graph, IntToDoubleFunction capacity, int... sources) {
        WidestPaths paths = new WidestPaths(graph, capacity);
        VertexHeap open = new VertexHeap(graph.vertexCount());
        for (int source : sources) {
            paths.sources.set(source);
            paths.width[source] = Double.POSITIVE_INFINITY;
            open.offer(source, Double.NEGATIVE_INFINITY);
        }
        while (!open.isEmpty()) {
            paths.relax(open.poll(), open);
        }
        return paths;
    }

    private void relax(int v, VertexHeap open) {
        for (int end = graph.endSlot(v), s = graph.firstSlot(v); s < end; s = graph.nextSlot(s, end)) {
            int w = graph.slotVertex(s);
            double through = Math.min(width[v], EdgeValues.notNegative(capacity, graph.slotEdge(s), "capacity"));
            if (through > width[w]) {
                width[w] = through;
                open.offer(w, -through);
            }
        }
    }

    /**
     * {@return what can flow to the vertex along one path, in the unit of the capacities} Infinite at a source, 0 where
     * no path leads.
     */
    public double width(int vertex) {
        return width[vertex];
    }

    /** {@return whether a path of some capacity leads to the vertex} */
    public boolean reached(int vertex) {
        return width[vertex] > 0;
    }

    /**
     * {@return a widest path to the vertex, in the time of one breadth-first search}
     *
     * @throws IllegalArgumentException if there is none
     */
    public Widest pathTo(int vertex) {
        double least = width[vertex];
        Walk path = backwards()
                .fewestEdges(vertex, sources::get, e -> least > 0 && capacity.applyAsDouble(e) >= least)
                .orElseThrow(() -> new IllegalArgumentException("vertex " + vertex + " was not reached"))
                .reversed();
        int bottleneck = -1;
        for (int i = 0; i < path.edgeCount(); i++) {
            if (capacity.applyAsDouble(path.edge(i)) == least) {
                bottleneck = path.edge(i);
            }
        }
        return new Widest(path, least, bottleneck);
    }

    private PathSearch backwards() {
        PathSearch search = backwards;
        if (search == null) {
            search = new PathSearch(graph.reversed());
            backwards = search;
        }
        return search;
    }
}
