package ringout.graph.index;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jgrapht.Graph;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.BFSShortestPath;
import org.junit.jupiter.api.Test;

class PathSearchTest {

    @Test
    void questionsDoNotDisturbEachOther() {
        PathSearch search = new PathSearch(SmallGraphs.of(5, 0, 1, 1, 2, 2, 3, 0, 3));
        assertEquals("1 -[0]- 0 -[3]- 3", search.fewestEdges(1, 3).orElseThrow().toString());
        assertEquals(Optional.empty(), search.fewestEdges(4, 0));
        assertEquals("2", search.fewestEdges(2, 2).orElseThrow().toString());
        assertEquals("3 -[2]- 2 -[1]- 1", search.fewestEdges(3, 1).orElseThrow().toString());
    }

    @Test
    void nearestGoalOverPassableEdgesOnly() {
        PathSearch search = new PathSearch(SmallGraphs.path(10));
        assertEquals(
                7,
                search.fewestEdges(5, v -> v == 2 || v == 7, e -> true)
                        .orElseThrow()
                        .end());
        assertEquals(
                2,
                search.fewestEdges(5, v -> v == 2 || v == 7, e -> e != 5)
                        .orElseThrow()
                        .end());
    }

    @Test
    void shortestCycleTakesTheTriangleNotTheRing() {
        IndexGraph g = SmallGraphs.of(7, 4, 0, 4, 5, 5, 1, 0, 2, 1, 3, 2, 3, 2, 6, 6, 3);
        Walk cycle = new PathSearch(g).shortestCycle(5).orElseThrow();
        assertEquals("2 -[5]- 3 -[7]- 6 -[6]- 2", cycle.toString());
    }

    @Test
    void bridgeHasNoCycleSelfLoopHasOneOfOneEdge() {
        PathSearch search = new PathSearch(SmallGraphs.of(2, 0, 1, 1, 1));
        assertEquals(Optional.empty(), search.shortestCycle(0));
        assertEquals("1 -[1]- 1", search.shortestCycle(1).orElseThrow().toString());
    }

    @Test
    void walkOfAMillion() {
        int n = 1_000_000;
        assertEquals(
                n - 1,
                new PathSearch(SmallGraphs.path(n))
                        .fewestEdges(n - 1, 0)
                        .orElseThrow()
                        .edgeCount());
        assertEquals(
                n - 1, BreadthFirst.from(SmallGraphs.path(n), 0).toRoot(n - 1).edgeCount());
    }

    @Test
    void severalRootsShareTheVertices() {
        BreadthFirst forest = BreadthFirst.from(SmallGraphs.path(8).onlyEdges(e -> e != 6), 0, 5, 5);
        assertEquals(7, forest.reachedCount());
        assertEquals(0, forest.toRoot(2).end());
        assertEquals(5, forest.toRoot(3).end());
        assertEquals(-1, forest.depth(7));
        assertEquals(-1, forest.parent(7));
        assertThrows(IllegalArgumentException.class, () -> forest.toRoot(7));
    }

    @Property
    void asShortAsTheReferenceLibrarys(@ForAll("graphs") IndexGraph g, @ForAll int a, @ForAll int b) {
        int from = Math.floorMod(a, g.vertexCount());
        int to = Math.floorMod(b, g.vertexCount());
        GraphPath<Integer, Integer> reference = new BFSShortestPath<>(SmallGraphs.reference(g)).getPath(from, to);
        Optional<Walk> ours = new PathSearch(g).fewestEdges(from, to);
        BreadthFirst forest = BreadthFirst.from(g, from);
        assertEquals(reference != null, ours.isPresent());
        assertEquals(reference != null, forest.reached(to));
        if (reference != null) {
            Walk walk = ours.orElseThrow();
            assertEquals(reference.getLength(), walk.edgeCount());
            assertEquals(reference.getLength(), forest.depth(to));
            assertEquals(from, walk.start());
            assertEquals(to, walk.end());
            assertTrue(Arrays.stream(walk.edges()).allMatch(g::hasEdge));
        }
    }

    @Property
    void shortestCycleIsTheWayRoundWithoutTheEdge(@ForAll("graphs") IndexGraph g) {
        PathSearch search = new PathSearch(g);
        for (Integer e : SmallGraphs.reference(g).edgeSet()) {
            Graph<Integer, Integer> without = SmallGraphs.reference(g.onlyEdges(f -> f != e));
            GraphPath<Integer, Integer> round = new BFSShortestPath<>(without).getPath(g.to(e), g.from(e));
            Optional<Walk> cycle = search.shortestCycle(e);
            assertEquals(
                    round == null ? -1 : round.getLength() + 1,
                    cycle.map(Walk::edgeCount).orElse(-1));
            cycle.ifPresent(walk -> assertTrue(walk.isCycle() && walk.edge(0) == e));
        }
    }

    @Property
    void everythingIsReachedParentsFirst(@ForAll("graphs") IndexGraph g) {
        BreadthFirst forest = BreadthFirst.everywhere(g);
        assertEquals(g.vertexCount(), forest.reachedCount());
        boolean[] before = new boolean[g.vertexCount()];
        for (int i = 0; i < g.vertexCount(); i++) {
            int v = forest.vertexAt(i);
            assertTrue(forest.parent(v) < 0 || before[forest.parent(v)]);
            before[v] = true;
        }
    }

    @Provide
    Arbitrary<IndexGraph> graphs() {
        return Arbitraries.oneOf(SmallGraphs.undirected(), SmallGraphs.directed());
    }
}
