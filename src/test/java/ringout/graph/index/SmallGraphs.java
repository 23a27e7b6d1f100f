package ringout.graph.index;

import java.util.BitSet;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.jgrapht.Graph;
import org.jgrapht.graph.DirectedPseudograph;
import org.jgrapht.graph.Pseudograph;

/** Random multigraphs small enough for slow oracles, with parallel edges, self-loops and hidden edges in plenty. */
final class SmallGraphs {
    private static final int MOST_VERTICES = 12;
    private static final int MOST_EDGES = 24;

    private SmallGraphs() {}

    static Arbitrary<IndexGraph> undirected() {
        return any(false);
    }

    static Arbitrary<IndexGraph> directed() {
        return any(true);
    }

    /** Hides the edges whose mask number is 0, one in eight. */
    private static IndexGraph masked(IndexGraph whole, int[] mask) {
        BitSet hide = new BitSet();
        for (int e = 0; e < mask.length; e++) {
            hide.set(e, mask[e] == 0);
        }
        return hide.isEmpty() ? whole : whole.withoutEdges(hide);
    }

    private static Arbitrary<IndexGraph> any(boolean directed) {
        return Combinators.combine(
                        Arbitraries.integers().between(1, MOST_VERTICES),
                        Arbitraries.integers().between(0, MOST_EDGES))
                .flatAs((n, m) -> {
                    Arbitrary<int[]> ends = Arbitraries.integers()
                            .between(0, n - 1)
                            .array(int[].class)
                            .ofSize(m);
                    Arbitrary<int[]> mask = Arbitraries.integers()
                            .between(0, 7)
                            .array(int[].class)
                            .ofSize(m);
                    return Combinators.combine(ends, ends, mask)
                            .as((a, b, h) -> masked(IndexGraph.build(directed, n, a, b), h));
                });
    }

    /** The same graph in the reference library's own structure, built edge by edge. */
    static Graph<Integer, Integer> reference(IndexGraph graph) {
        Graph<Integer, Integer> copy =
                graph.isDirected() ? new DirectedPseudograph<>(Integer.class) : new Pseudograph<>(Integer.class);
        for (int v = 0; v < graph.vertexCount(); v++) {
            copy.addVertex(v);
        }
        for (int e = 0; e < graph.edgeBound(); e++) {
            if (graph.hasEdge(e)) {
                copy.addEdge(graph.from(e), graph.to(e), e);
            }
        }
        return copy;
    }

    /** An undirected graph from pairs of ends, for tests that spell a graph out. */
    static IndexGraph of(int vertexCount, int... ends) {
        return builder(vertexCount, ends).undirected();
    }

    /** A directed graph from pairs of tail and head. */
    static IndexGraph directedOf(int vertexCount, int... ends) {
        return builder(vertexCount, ends).directed();
    }

    private static IndexGraphBuilder builder(int vertexCount, int... ends) {
        IndexGraphBuilder builder = new IndexGraphBuilder(vertexCount);
        for (int i = 0; i < ends.length; i += 2) {
            builder.addEdge(ends[i], ends[i + 1]);
        }
        return builder;
    }

    /** The path 0 - 1 - ... - (n-1); edge e joins e and e + 1. */
    static IndexGraph path(int vertexCount) {
        IndexGraphBuilder builder = new IndexGraphBuilder(vertexCount);
        for (int v = 1; v < vertexCount; v++) {
            builder.addEdge(v - 1, v);
        }
        return builder.undirected();
    }

    /** The star with centre 0; edge e joins 0 and e + 1. */
    static IndexGraph star(int vertexCount) {
        IndexGraphBuilder builder = new IndexGraphBuilder(vertexCount);
        for (int v = 1; v < vertexCount; v++) {
            builder.addEdge(0, v);
        }
        return builder.undirected();
    }

    /** Reproducible whole numbers from 0 up to but not including a bound, so that sums are exact. */
    static double[] wholeNumbers(int count, int bound, long seed) {
        Random random = new Random(seed);
        return IntStream.range(0, count).mapToDouble(i -> random.nextInt(bound)).toArray();
    }
}
