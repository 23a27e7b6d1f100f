package ringout.graph.index;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/**
 * How much can flow from sources to sinks, up to a limit, and the minimum cut that stops it. With capacity 1 everywhere
 * the value is the number of ways without a common edge: 0 not fed, 1 a single edge can cut it off, 2 or more redundant.
 *
 * <p>Shortest augmenting paths in layers; an undirected edge has its capacity either way. O(k (n + m)) for a limit k
 * and unit capacities. To count ways without a common vertex, split vertices into edges before asking.
 *
 * <p>Source: E. A. Dinitz, Algorithm for solution of a problem of maximum flow in networks with power estimation, Soviet
 * Mathematics Doklady 11 (1970); maximum flow equals minimum cut: L. R. Ford and D. R. Fulkerson, Maximal flow through a
 * network, Canadian Journal of Mathematics 8 (1956).
 */
public final class MaxFlow {
    /** Largest limit that may be asked for; keeps residual capacities inside an int. */
    public static final int LARGEST_LIMIT = 1 << 29;

    private static final int UNREACHED = -1;

    private final IndexGraph graph;
    /** The same edges with a slot at both ends, since flow may be taken back. */
    private final IndexGraph bothWays;

    private final IntUnaryOperator capacity;
    private final int limit;
    /** Units of flow from first to second end of each edge, negative the other way. */
    private final int[] flow;

    private final int[] sources;
    private final boolean[] isSink;
    private final int[] level;
    private final int[] queue;
    private final int[] cursor;
    private final int[] path;
    private int value;

    private MaxFlow(IndexGraph graph, IntUnaryOperator capacity, int limit, int[] sources, int[] sinks) {
        int n = graph.vertexCount();
        this.graph = graph;
        this.bothWays = graph.withoutDirection();
        this.capacity = capacity;
        this.limit = limit;
        this.sources = sources.clone();
        this.flow = new int[graph.edgeBound()];
        this.isSink = new boolean[n];
        this.level = new int[n];
        this.queue = new int[n];
        this.cursor = new int[n];
        this.path = new int[n];
        for (int sink : sinks) {
            isSink[sink] = true;
        }
    }

    /**
     * {@return the flow with one unit for every edge}
     *
     * @param limit where to stop counting, at least 1
     */
    public static MaxFlow disjointWays(IndexGraph graph, int[] sources, int[] sinks, int limit) {
        return of(graph, e -> 1, sources, sinks, limit);
    }

    /**
     * {@return the flow from the sources to the sinks}
     *
     * @param capacity of an edge, a whole number of units, not negative
     * @param limit where to stop, at least 1 and at most {@link #LARGEST_LIMIT}
     * @throws IllegalArgumentException if the limit is out of range or a visited capacity negative
     */
    public static MaxFlow of(IndexGraph graph, IntUnaryOperator capacity, int[] sources, int[] sinks, int limit) {
        if (limit < 1 || limit > LARGEST_LIMIT) {
            throw new IllegalArgumentException("limit " + limit + " is not between 1 and " + LARGEST_LIMIT);
        }
        MaxFlow result = new MaxFlow(graph, capacity, limit, sources, sinks);
        while (result.value < limit && result.layer()) {
            for (int source : sources) {
                result.augmentFrom(source);
            }
        }
        return result;
    }

    /** Numbers vertices by distance over edges with room left; false when no sink can be reached. */
    private boolean layer() {
        Arrays.fill(level, UNREACHED);
        int tail = 0;
        boolean found = false;
        for (int source : sources) {
            if (level[source] == UNREACHED) {
                level[source] = 0;
                queue[tail++] = source;
            }
        }
        for (int head = 0; head < tail; head++) {
            int v = queue[head];
            cursor[v] = bothWays.firstSlot(v);
            found |= isSink[v];
            for (int end = bothWays.endSlot(v), s = cursor[v]; s < end; s = bothWays.nextSlot(s, end)) {
                int w = bothWays.slotVertex(s);
                if (level[w] == UNREACHED && room(bothWays.slotEdge(s), v) > 0) {
                    level[w] = level[v] + 1;
                    queue[tail++] = w;
                }
            }
        }
        return found;
    }

    /** Fills every way through the layers that starts at the source. */
    private void augmentFrom(int source) {
        int length = 0;
        int v = source;
        while (value < limit) {
            if (isSink[v]) {
                push(source, length);
                length = 0;
                v = source;
                continue;
            }
            int s = cursor[v];
            int end = bothWays.endSlot(v);
            if (s < end) {
                int edge = bothWays.slotEdge(s);
                int w = bothWays.slotVertex(s);
                if (level[w] == level[v] + 1 && room(edge, v) > 0) {
                    path[length++] = edge;
                    v = w;
                } else {
                    cursor[v] = bothWays.nextSlot(s, end);
                }
            } else if (length > 0) {
                v = bothWays.otherEnd(path[--length], v);
                cursor[v] = bothWays.nextSlot(cursor[v], bothWays.endSlot(v));
            } else {
                return;
            }
        }
    }

    private void push(int source, int length) {
        int units = limit - value;
        int v = source;
        for (int i = 0; i < length; i++) {
            units = Math.min(units, room(path[i], v));
            v = graph.otherEnd(path[i], v);
        }
        v = source;
        for (int i = 0; i < length; i++) {
            flow[path[i]] += graph.from(path[i]) == v ? units : -units;
            v = graph.otherEnd(path[i], v);
        }
        value += units;
    }

    /** Units the edge can still take away from a vertex; more than the limit is as good as the limit. */
    private int room(int edge, int from) {
        int units = capacity.applyAsInt(edge);
        if (units < 0) {
            throw new IllegalArgumentException("capacity " + units + " of edge " + edge + " is negative");
        }
        boolean forwards = graph.from(edge) == from;
        int available = graph.isDirected() && !forwards ? 0 : Math.min(units, limit);
        return available - (forwards ? flow[edge] : -flow[edge]);
    }

    /** {@return the greatest flow in units, or the limit if that was reached} */
    public int value() {
        return value;
    }

    /** {@return whether counting stopped at the limit, so that more may be possible} */
    public boolean reachedLimit() {
        return value == limit;
    }

    /**
     * {@return the ways the flow takes, each from a source to a sink; with capacity 1 no two share an edge} Empty for a
     * source that is itself a sink.
     */
    public List<Walk> ways() {
        return FlowWays.of(graph, flow, sources, isSink);
    }

    /** {@return the units that flow through the edge from its first to its second end, negative the other way} */
    public int flow(int edge) {
        return flow[edge];
    }

    /**
     * {@return the edges of a minimum cut, ascending, or nothing if counting stopped at the limit} Without them no source
     * reaches a sink, and their capacities add up to the value. Of several such cuts it is the one nearest to the sources.
     */
    public Optional<int[]> cut() {
        if (reachedLimit()) {
            return Optional.empty();
        }
        return Optional.of(IntStream.range(0, graph.edgeBound())
                .filter(graph::hasEdge)
                .filter(e -> crosses(graph.from(e), graph.to(e))
                        || (!graph.isDirected() && crosses(graph.to(e), graph.from(e))))
                .filter(e -> capacity.applyAsInt(e) > 0)
                .toArray());
    }

    private boolean crosses(int a, int b) {
        return level[a] != UNREACHED && level[b] == UNREACHED;
    }
}
