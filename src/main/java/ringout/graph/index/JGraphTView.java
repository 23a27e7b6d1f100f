package ringout.graph.index;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.function.Supplier;
import org.jgrapht.Graph;
import org.jgrapht.GraphType;
import org.jgrapht.graph.AbstractGraph;
import org.jgrapht.graph.DefaultGraphType;
import org.jspecify.annotations.Nullable;

/**
 * An {@link IndexGraph} as a read-only JGraphT graph, so that every algorithm of that library runs on it uncopied. Sets
 * are views in ascending order of number; every method that would change the graph throws
 * {@link UnsupportedOperationException}. Hidden edges are not there.
 *
 * @param <V> the things that stand for vertices
 * @param <E> the things that stand for edges
 */
public final class JGraphTView<V, E> extends AbstractGraph<V, E> {
    private final IndexGraph graph;
    /** The rows of what comes in; the graph itself if it is undirected. */
    private final IndexGraph incoming;

    private final Numbering<V> vertices;
    private final Numbering<E> edges;
    private final IntToDoubleFunction weight;
    private final GraphType type;

    private JGraphTView(
            IndexGraph graph, Numbering<V> vertices, Numbering<E> edges, IntToDoubleFunction weight, boolean weighted) {
        this.graph = graph;
        this.incoming = graph.reversed();
        this.vertices = vertices;
        this.edges = edges;
        this.weight = weight;
        this.type = new DefaultGraphType.Builder(graph.isDirected(), !graph.isDirected())
                .allowMultipleEdges(true)
                .allowSelfLoops(true)
                .allowCycles(true)
                .weighted(weighted)
                .modifiable(false)
                .build();
    }

    /** {@return a view whose vertices and edges are their own numbers} */
    public static JGraphTView<Integer, Integer> of(IndexGraph graph) {
        return of(graph, Numbering.plain(graph.vertexCount()), Numbering.plain(graph.edgeBound()));
    }

    /** {@return an unweighted view in terms of the things numbered; every edge weighs 1} */
    public static <V, E> JGraphTView<V, E> of(IndexGraph graph, Numbering<V> vertices, Numbering<E> edges) {
        return new JGraphTView<>(graph, vertices, edges, e -> Graph.DEFAULT_EDGE_WEIGHT, false);
    }

    /** {@return the same view with a weight for every edge} */
    public JGraphTView<V, E> weighted(IntToDoubleFunction weightOfEdge) {
        return new JGraphTView<>(graph, vertices, edges, weightOfEdge, true);
    }

    @Override
    public GraphType getType() {
        return type;
    }

    @Override
    public Set<V> vertexSet() {
        return new NumberedSet<>(vertices, graph.vertexCount(), v -> v < graph.vertexCount(), graph.vertexCount());
    }

    @Override
    public Set<E> edgeSet() {
        return new NumberedSet<>(edges, graph.edgeBound(), graph::hasEdge, graph.edgeCount());
    }

    @Override
    public boolean containsVertex(V vertex) {
        int v = vertices.number(vertex);
        return v >= 0 && v < graph.vertexCount();
    }

    @Override
    public boolean containsEdge(E edge) {
        return graph.hasEdge(edges.number(edge));
    }

    @Override
    public V getEdgeSource(E edge) {
        return vertices.thing(graph.from(existing(edge)));
    }

    @Override
    public V getEdgeTarget(E edge) {
        return vertices.thing(graph.to(existing(edge)));
    }

    @Override
    public double getEdgeWeight(E edge) {
        return weight.applyAsDouble(existing(edge));
    }

    @Override
    public Set<E> edgesOf(V vertex) {
        int v = number(vertex);
        if (!graph.isDirected()) {
            return new RowSet<>(graph, v, edges);
        }
        Set<E> both = new LinkedHashSet<>(new RowSet<>(incoming, v, edges));
        both.addAll(new RowSet<>(graph, v, edges));
        return both;
    }

    @Override
    public Set<E> outgoingEdgesOf(V vertex) {
        return new RowSet<>(graph, number(vertex), edges);
    }

    @Override
    public Set<E> incomingEdgesOf(V vertex) {
        return new RowSet<>(incoming, number(vertex), edges);
    }

    @Override
    public int degreeOf(V vertex) {
        return graph.isDirected() ? inDegreeOf(vertex) + outDegreeOf(vertex) : outDegreeOf(vertex);
    }

    @Override
    public int outDegreeOf(V vertex) {
        return graph.degree(number(vertex));
    }

    @Override
    public int inDegreeOf(V vertex) {
        return incoming.degree(number(vertex));
    }

    @Override
    public @Nullable Set<E> getAllEdges(V source, V target) {
        if (!containsVertex(source) || !containsVertex(target)) {
            return null;
        }
        int goal = number(target);
        Set<E> between = new LinkedHashSet<>();
        for (int v = number(source), end = graph.endSlot(v), s = graph.firstSlot(v);
                s < end;
                s = graph.nextSlot(s, end)) {
            if (graph.slotVertex(s) == goal) {
                between.add(edges.thing(graph.slotEdge(s)));
            }
        }
        return between;
    }

    @Override
    public @Nullable E getEdge(V source, V target) {
        Set<E> between = getAllEdges(source, target);
        return between == null || between.isEmpty() ? null : between.iterator().next();
    }

    private int number(V vertex) {
        assertVertexExist(vertex);
        return vertices.number(vertex);
    }

    private int existing(E edge) {
        int e = edges.number(edge);
        if (!graph.hasEdge(e)) {
            throw new IllegalArgumentException("no such edge in graph: " + edge);
        }
        return e;
    }

    @Override
    public @Nullable Supplier<V> getVertexSupplier() {
        return null;
    }

    @Override
    public @Nullable Supplier<E> getEdgeSupplier() {
        return null;
    }

    @Override
    public V addVertex() {
        throw readOnly();
    }

    @Override
    public boolean addVertex(V vertex) {
        throw readOnly();
    }

    @Override
    public E addEdge(V source, V target) {
        throw readOnly();
    }

    @Override
    public boolean addEdge(V source, V target, E edge) {
        throw readOnly();
    }

    @Override
    public E removeEdge(V source, V target) {
        throw readOnly();
    }

    @Override
    public boolean removeEdge(E edge) {
        throw readOnly();
    }

    @Override
    public boolean removeVertex(V vertex) {
        throw readOnly();
    }

    @Override
    public void setEdgeWeight(E edge, double newWeight) {
        throw readOnly();
    }

    private static UnsupportedOperationException readOnly() {
        return new UnsupportedOperationException("this view of an index graph cannot be changed");
    }
}
