package ringout.graph.index;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jgrapht.alg.flow.PushRelabelMFImpl;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.junit.jupiter.api.Test;

class MaxFlowTest {
    private static final int MANY = 1000;

    @Test
    void twoWaysThatShareOneFuse() {
        // 0 -> 1 and 0 -> 2, both into 3, then the shared 3 - 4.
        IndexGraph g = SmallGraphs.of(5, 0, 1, 0, 2, 1, 3, 2, 3, 3, 4);
        MaxFlow flow = MaxFlow.disjointWays(g, new int[] {0}, new int[] {4}, 2);
        assertEquals(1, flow.value());
        assertFalse(flow.reachedLimit());
        assertArrayEquals(new int[] {4}, flow.cut().orElseThrow());
        assertEquals(1, flow.ways().size());
        MaxFlow before = MaxFlow.disjointWays(g, new int[] {0}, new int[] {3}, 2);
        assertTrue(before.reachedLimit());
        assertEquals(Optional.empty(), before.cut());
        assertEquals(2, before.ways().size());
    }

    @Test
    void aFlowThatMustBeTakenBack() {
        // The first shortest way 0-1-4-5 blocks both others unless it is partly undone.
        IndexGraph g = SmallGraphs.directedOf(6, 0, 1, 1, 4, 4, 5, 0, 2, 2, 4, 1, 3, 3, 5);
        assertEquals(
                2, MaxFlow.disjointWays(g, new int[] {0}, new int[] {5}, MANY).value());
    }

    @Test
    void severalSourcesAndSinksWithCapacities() {
        IndexGraph g = SmallGraphs.directedOf(5, 0, 2, 1, 2, 2, 3, 2, 4);
        int[] capacity = {5, 4, 3, 7};
        MaxFlow flow = MaxFlow.of(g, e -> capacity[e], new int[] {0, 1}, new int[] {3, 4}, MANY);
        assertEquals(9, flow.value());
        assertArrayEquals(new int[] {0, 1}, flow.cut().orElseThrow(), "the cut nearest to the sources");
    }

    @Test
    void anEdgeThatCarriesNothingIsNotPartOfACut() {
        int[] capacity = {0, 1};
        MaxFlow flow = MaxFlow.of(SmallGraphs.of(2, 0, 1, 0, 1), e -> capacity[e], new int[] {0}, new int[] {1}, 5);
        assertArrayEquals(new int[] {1}, flow.cut().orElseThrow());
    }

    @Test
    void aSourceThatIsASinkIsBeyondAnyLimit() {
        MaxFlow flow = MaxFlow.disjointWays(SmallGraphs.path(2), new int[] {1}, new int[] {0, 1}, 3);
        assertEquals(3, flow.value());
        assertTrue(flow.reachedLimit());
        assertTrue(flow.ways().isEmpty());
        assertTrue(MaxFlow.disjointWays(SmallGraphs.path(2), new int[] {0, 1}, new int[] {1}, 3)
                .reachedLimit());
    }

    @Test
    void waysMayShareAnEdgeThatHasRoomForBoth() {
        IndexGraph g = SmallGraphs.of(3, 0, 1, 1, 2, 1, 2);
        MaxFlow flow = MaxFlow.of(g, e -> e == 0 ? 2 : 1, new int[] {0}, new int[] {2}, MANY);
        assertEquals("[0 -[0]- 1 -[1]- 2, 0 -[0]- 1 -[2]- 2]", flow.ways().toString());
    }

    @Test
    void notFedAtAll() {
        MaxFlow flow = MaxFlow.disjointWays(SmallGraphs.directedOf(2, 1, 0), new int[] {0}, new int[] {1}, 2);
        assertEquals(0, flow.value());
        assertEquals(0, flow.cut().orElseThrow().length);
    }

    @Test
    void refusesNonsense() {
        IndexGraph g = SmallGraphs.path(2);
        int[] a = {0};
        int[] b = {1};
        assertThrows(IllegalArgumentException.class, () -> MaxFlow.of(g, e -> 1, a, b, 0));
        assertThrows(IllegalArgumentException.class, () -> MaxFlow.of(g, e -> 1, a, b, MaxFlow.LARGEST_LIMIT + 1));
        assertThrows(IllegalArgumentException.class, () -> MaxFlow.of(g, e -> -1, a, b, 1));
    }

    @Test
    void hugeCapacitiesDoNotOverflow() {
        IndexGraph g = SmallGraphs.of(2, 0, 1, 1, 0);
        int[] a = {0};
        int[] b = {1};
        MaxFlow flow = MaxFlow.of(g, e -> Integer.MAX_VALUE, a, b, MaxFlow.LARGEST_LIMIT);
        assertEquals(MaxFlow.LARGEST_LIMIT, flow.value());
    }

    @Test
    void pathOfAMillion() {
        int n = 1_000_000;
        MaxFlow flow = MaxFlow.disjointWays(SmallGraphs.path(n), new int[] {0}, new int[] {n - 1}, 3);
        assertEquals(1, flow.value());
        assertEquals(n - 1, flow.ways().get(0).edgeCount());
    }

    @Property
    void agreesWithTheReferenceLibrary(
            @ForAll("graphs") IndexGraph g, @ForAll int a, @ForAll int b, @ForAll long seed) {
        int source = Math.floorMod(a, g.vertexCount());
        int sink = Math.floorMod(b, g.vertexCount());
        if (source == sink) {
            return;
        }
        double[] capacity = SmallGraphs.wholeNumbers(g.edgeBound(), 5, seed);
        MaxFlow ours = MaxFlow.of(g, e -> (int) capacity[e], new int[] {source}, new int[] {sink}, MANY);
        var oracle = new PushRelabelMFImpl<>(simplified(g, capacity));
        assertEquals(Math.round(oracle.calculateMaximumFlow(source, sink)), ours.value());
        for (int limit = 1; limit <= 3; limit++) {
            MaxFlow stopped = MaxFlow.of(g, e -> (int) capacity[e], new int[] {source}, new int[] {sink}, limit);
            assertEquals(Math.min(limit, ours.value()), stopped.value());
        }
    }

    /** Parallel edges added up, an undirected edge as two: what the reference library can take. */
    private static SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> simplified(
            IndexGraph g, double[] capacity) {
        var simple = new SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge>(DefaultWeightedEdge.class);
        for (int v = 0; v < g.vertexCount(); v++) {
            simple.addVertex(v);
        }
        for (int e = 0; e < g.edgeBound(); e++) {
            if (g.hasEdge(e) && g.from(e) != g.to(e)) {
                add(simple, g.from(e), g.to(e), capacity[e]);
                if (!g.isDirected()) {
                    add(simple, g.to(e), g.from(e), capacity[e]);
                }
            }
        }
        return simple;
    }

    private static void add(
            SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> simple, int from, int to, double capacity) {
        DefaultWeightedEdge before = simple.getEdge(from, to);
        if (before == null) {
            simple.setEdgeWeight(simple.addEdge(from, to), capacity);
        } else {
            simple.setEdgeWeight(before, simple.getEdgeWeight(before) + capacity);
        }
    }

    /** Max flow equals min cut: a flow and a cut of the same value prove each other. */
    @Property
    void flowAndCutProveEachOther(@ForAll("graphs") IndexGraph g, @ForAll int a, @ForAll int b, @ForAll long seed) {
        int source = Math.floorMod(a, g.vertexCount());
        int sink = Math.floorMod(b, g.vertexCount());
        if (source == sink) {
            return;
        }
        double[] capacity = SmallGraphs.wholeNumbers(g.edgeBound(), 5, seed);
        MaxFlow flow = MaxFlow.of(g, e -> (int) capacity[e], new int[] {source}, new int[] {sink}, MANY);
        int[] surplus = new int[g.vertexCount()];
        for (int e = 0; e < g.edgeBound(); e++) {
            int least = g.isDirected() ? 0 : (int) -capacity[e];
            assertTrue(flow.flow(e) >= least && flow.flow(e) <= capacity[e]);
            assertTrue(g.hasEdge(e) || flow.flow(e) == 0);
            surplus[g.from(e)] -= flow.flow(e);
            surplus[g.to(e)] += flow.flow(e);
        }
        for (int v = 0; v < g.vertexCount(); v++) {
            assertEquals(v == source ? -flow.value() : v == sink ? flow.value() : 0, surplus[v]);
        }
        int[] cut = flow.cut().orElseThrow();
        assertEquals(
                flow.value(), Arrays.stream(cut).mapToDouble(e -> capacity[e]).sum());
        IndexGraph without =
                g.onlyEdges(e -> capacity[e] > 0 && Arrays.stream(cut).noneMatch(c -> c == e));
        assertFalse(BreadthFirst.from(without, source).reached(sink));
    }

    @Property
    void waysAreAsManyAsTheValueAndShareNoEdge(@ForAll("graphs") IndexGraph g, @ForAll int a, @ForAll int b) {
        int source = Math.floorMod(a, g.vertexCount());
        int sink = Math.floorMod(b, g.vertexCount());
        if (source == sink) {
            return;
        }
        MaxFlow flow = MaxFlow.disjointWays(g, new int[] {source}, new int[] {sink}, MANY);
        Set<Integer> used = new HashSet<>();
        for (Walk way : flow.ways()) {
            assertEquals(source, way.start());
            assertEquals(sink, way.end());
            for (int e : way.edges()) {
                assertTrue(used.add(e));
            }
        }
        assertEquals(flow.value(), flow.ways().size());
    }

    @Provide
    Arbitrary<IndexGraph> graphs() {
        return Arbitraries.oneOf(SmallGraphs.undirected(), SmallGraphs.directed());
    }
}
