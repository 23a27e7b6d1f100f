package ringout.graph.index;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jgrapht.Graph;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.junit.jupiter.api.Test;

class ShortestPathsTest {

    @Test
    void theShortOfTwoParallelWires() {
        IndexGraph g = SmallGraphs.of(3, 0, 1, 0, 1, 1, 2);
        ShortestPaths paths = ShortestPaths.from(g, e -> e == 0 ? 2.0 : 0.5, 0);
        assertEquals(1.0, paths.distance(2));
        assertEquals("0 -[1]- 1 -[2]- 2", paths.pathTo(2).toString());
    }

    @Test
    void nearestOfSeveralSources() {
        ShortestPaths paths = ShortestPaths.from(SmallGraphs.path(10), e -> 1.0, 0, 9);
        assertEquals(4.0, paths.distance(5));
        assertEquals(9, paths.pathTo(5).start());
    }

    @Test
    void infiniteMeansImpassableAndUnreachedHasNoPath() {
        ShortestPaths paths = ShortestPaths.from(SmallGraphs.path(3), e -> e == 0 ? 1 : Double.POSITIVE_INFINITY, 0);
        assertFalse(paths.reached(2));
        assertEquals(Double.POSITIVE_INFINITY, paths.distance(2));
        assertThrows(IllegalArgumentException.class, () -> paths.pathTo(2));
    }

    @Test
    void refusesWhatIsNoLength() {
        IndexGraph g = SmallGraphs.path(2);
        assertThrows(IllegalArgumentException.class, () -> ShortestPaths.from(g, e -> -1, 0));
        assertThrows(IllegalArgumentException.class, () -> ShortestPaths.from(g, e -> Double.NaN, 0));
    }

    @Test
    void pathAndStarOfAMillion() {
        int n = 1_000_000;
        assertEquals(
                n - 1.0, ShortestPaths.from(SmallGraphs.path(n), e -> 1.0, 0).distance(n - 1));
        ShortestPaths star = ShortestPaths.from(SmallGraphs.star(n), e -> e, n - 1);
        assertEquals(n - 2 + 4.0, star.distance(5));
    }

    @Property
    void agreesWithTheReferenceLibrary(@ForAll("graphs") IndexGraph g, @ForAll int a, @ForAll long seed) {
        int from = Math.floorMod(a, g.vertexCount());
        double[] length = SmallGraphs.wholeNumbers(g.edgeBound(), 10, seed);
        Graph<Integer, Integer> reference = JGraphTView.of(g).weighted(e -> length[e]);
        var oracle = new DijkstraShortestPath<>(reference).getPaths(from);
        ShortestPaths ours = ShortestPaths.from(g, e -> length[e], from);
        for (int v = 0; v < g.vertexCount(); v++) {
            assertEquals(oracle.getWeight(v), ours.distance(v), "whole numbers add without rounding");
            if (ours.reached(v)) {
                assertEquals(ours.distance(v), ours.pathTo(v).sum(e -> length[e]));
                assertEquals(from, ours.pathTo(v).start());
                assertEquals(v, ours.pathTo(v).end());
            }
        }
    }

    @Provide
    Arbitrary<IndexGraph> graphs() {
        return Arbitraries.oneOf(SmallGraphs.undirected(), SmallGraphs.directed());
    }
}
