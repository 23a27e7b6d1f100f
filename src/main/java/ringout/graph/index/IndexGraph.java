package ringout.graph.index;

import java.util.Arrays;
import java.util.BitSet;
import java.util.function.IntPredicate;

/**
 * An immutable multigraph over integers in compressed rows: for every vertex a row of slots, for every slot an edge and
 * the vertex at its other end.
 *
 * <p>Rows are built by a counting sort in O(n + m); inside a row edges ascend by number. An undirected edge has a slot at
 * both its ends, a self-loop one slot only, and a directed edge a slot at its tail only.
 *
 * <p>{@link #onlyEdges(IntPredicate)} and its relatives give a view with some edges hidden. A view shares rows and
 * endpoints with its origin and keeps all numbers; it costs one bit an edge. Walk a row like this:
 *
 * <pre>{@code
 * for (int end = g.endSlot(v), s = g.firstSlot(v); s < end; s = g.nextSlot(s, end)) {
 *     visit(g.slotEdge(s), g.slotVertex(s));
 * }
 * }</pre>
 */
public final class IndexGraph {

    private static final long[] NO_MASK = {};

    private final boolean directed;
    private final int[] from;
    private final int[] to;
    /** First slot of each vertex, and one more entry for the end of the last row. */
    private final int[] rows;
    /** Two integers a slot, side by side because they are read together: edge, then vertex at the other end. */
    private final int[] slots;

    private final boolean masked;
    private final long[] shown;
    private final int edgeCount;

    private IndexGraph(boolean directed, int[] from, int[] to, int[] rows, int[] slots) {
        this.directed = directed;
        this.from = from;
        this.to = to;
        this.rows = rows;
        this.slots = slots;
        this.masked = false;
        this.shown = NO_MASK;
        this.edgeCount = from.length;
    }

    private IndexGraph(IndexGraph origin, long[] shown) {
        this.directed = origin.directed;
        this.from = origin.from;
        this.to = origin.to;
        this.rows = origin.rows;
        this.slots = origin.slots;
        this.masked = true;
        this.shown = shown;
        int count = 0;
        for (long word : shown) {
            count += Long.bitCount(word);
        }
        this.edgeCount = count;
    }

    /**
     * {@return an undirected graph; edge {@code e} joins {@code from[e]} and {@code to[e]}} The arrays are copied.
     *
     * @throws IllegalArgumentException if the arrays differ in length or name a vertex outside {@code 0 .. n-1}
     */
    public static IndexGraph undirected(int vertexCount, int[] from, int[] to) {
        return build(false, vertexCount, from.clone(), to.clone());
    }

    /**
     * {@return a directed graph; edge {@code e} leads from {@code from[e]} to {@code to[e]}} The arrays are copied.
     *
     * @throws IllegalArgumentException if the arrays differ in length or name a vertex outside {@code 0 .. n-1}
     */
    public static IndexGraph directed(int vertexCount, int[] from, int[] to) {
        return build(true, vertexCount, from.clone(), to.clone());
    }

    static IndexGraph build(boolean directed, int vertexCount, int[] from, int[] to) {
        CompressedRows.check(vertexCount, from, to);
        int[] rows = CompressedRows.starts(directed, vertexCount, from, to);
        return new IndexGraph(directed, from, to, rows, CompressedRows.fill(directed, rows, from, to));
    }

    /**
     * {@return the same edges, each leading the other way; the same graph if it is undirected} Hidden edges stay
     * hidden.
     */
    public IndexGraph reversed() {
        return directed ? sameMask(build(true, vertexCount(), to, from)) : this;
    }

    /** {@return the same edges with their direction forgotten} Hidden edges stay hidden. */
    public IndexGraph withoutDirection() {
        return directed ? sameMask(build(false, vertexCount(), from, to)) : this;
    }

    /**
     * {@return this graph with one more vertex, numbered after all others, and an edge from it to each given vertex,
     * numbered after all others} Several sources become one.
     */
    public IndexGraph withHub(int... spokes) {
        int m = from.length;
        int[] longerFrom = Arrays.copyOf(from, m + spokes.length);
        int[] longerTo = Arrays.copyOf(to, m + spokes.length);
        Arrays.fill(longerFrom, m, m + spokes.length, vertexCount());
        System.arraycopy(spokes, 0, longerTo, m, spokes.length);
        IndexGraph larger = build(directed, vertexCount() + 1, longerFrom, longerTo);
        return masked ? larger.onlyEdges((IntPredicate) e -> e >= m || isShown(e)) : larger;
    }

    private IndexGraph sameMask(IndexGraph other) {
        return masked ? new IndexGraph(other, shown) : other;
    }

    /**
     * {@return a view with only those edges of this graph that the condition accepts; it is asked once an edge, here}
     */
    public IndexGraph onlyEdges(IntPredicate keep) {
        long[] mask = new long[(from.length + 63) >>> 6];
        for (int e = 0; e < from.length; e++) {
            if (hasEdge(e) && keep.test(e)) {
                mask[e >>> 6] |= 1L << e;
            }
        }
        return new IndexGraph(this, mask);
    }

    /** {@return a view with only those edges of this graph that are in the set} */
    public IndexGraph onlyEdges(BitSet keep) {
        return onlyEdges((IntPredicate) keep::get);
    }

    /** {@return a view without the edges in the set} */
    public IndexGraph withoutEdges(BitSet hide) {
        return onlyEdges((IntPredicate) e -> !hide.get(e));
    }

    /** {@return the number of vertices} */
    public int vertexCount() {
        return rows.length - 1;
    }

    /** {@return the number of edges that are not hidden} */
    public int edgeCount() {
        return edgeCount;
    }

    /** {@return the length of an array indexed by edge: all edge numbers, hidden ones included, are below it} */
    public int edgeBound() {
        return from.length;
    }

    /** {@return whether edges have a direction} */
    public boolean isDirected() {
        return directed;
    }

    void requireUndirected() {
        if (directed) {
            throw new IllegalArgumentException("this question is about undirected graphs, not about a " + this);
        }
    }

    /** {@return whether the edge is present, that is numbered and not hidden} */
    public boolean hasEdge(int edge) {
        return edge >= 0 && edge < from.length && (!masked || isShown(edge));
    }

    /** {@return the first endpoint of the edge, the tail of a directed one} */
    public int from(int edge) {
        return from[edge];
    }

    /** {@return the second endpoint of the edge, the head of a directed one} */
    public int to(int edge) {
        return to[edge];
    }

    /** {@return the end of the edge that is not the given end; for a self-loop the same vertex again} */
    public int otherEnd(int edge, int vertex) {
        return from[edge] ^ to[edge] ^ vertex;
    }

    /** {@return the first slot in the row of the vertex, equal to {@link #endSlot} if the row is empty} */
    public int firstSlot(int vertex) {
        return masked ? skipHidden(rows[vertex], rows[vertex + 1]) : rows[vertex];
    }

    /** {@return the slot after the last one in the row of the vertex} */
    public int endSlot(int vertex) {
        return rows[vertex + 1];
    }

    /** {@return the next slot in a row that ends at {@code end}} */
    public int nextSlot(int slot, int end) {
        return masked ? skipHidden(slot + 1, end) : slot + 1;
    }

    /** {@return the edge in the slot} */
    public int slotEdge(int slot) {
        return slots[2 * slot];
    }

    /** {@return the vertex at the other end of the edge in the slot} */
    public int slotVertex(int slot) {
        return slots[2 * slot + 1];
    }

    /**
     * {@return edge ends at the vertex, a self-loop counted twice; in a directed graph the edges that leave, each
     * once}
     */
    public int degree(int vertex) {
        int degree = 0;
        for (int end = endSlot(vertex), s = firstSlot(vertex); s < end; s = nextSlot(s, end)) {
            degree += !directed && slotVertex(s) == vertex ? 2 : 1;
        }
        return degree;
    }

    private int skipHidden(int slot, int end) {
        int s = slot;
        while (s < end && !isShown(slots[2 * s])) {
            s++;
        }
        return s;
    }

    private boolean isShown(int edge) {
        return (shown[edge >>> 6] >>> edge & 1L) != 0;
    }

    @Override
    public String toString() {
        return (directed ? "directed" : "undirected") + " graph, " + vertexCount() + " vertices, " + edgeCount
                + " edges";
    }
}
