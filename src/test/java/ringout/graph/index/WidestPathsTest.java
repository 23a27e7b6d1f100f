package ringout.graph.index;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.BFSShortestPath;
import org.junit.jupiter.api.Test;

class WidestPathsTest {

    @Test
    void theWideWayRoundBeatsTheShortThinOne() {
        // A thin signal ground straight to the unit, and a heavy return by way of the regulator.
        IndexGraph g = SmallGraphs.of(3, 0, 2, 0, 1, 1, 2);
        double[] ampacity = {2, 40, 12};
        WidestPaths paths = WidestPaths.from(g, e -> ampacity[e], 0);
        WidestPaths.Widest widest = paths.pathTo(2);
        assertEquals(12.0, paths.width(2));
        assertEquals("0 -[1]- 1 -[2]- 2", widest.path().toString());
        assertEquals(2, widest.bottleneck());
        assertEquals(40.0, paths.width(1));
    }

    @Test
    void ofSeveralBottlenecksTheOneNearestToTheVertex() {
        WidestPaths paths = WidestPaths.from(SmallGraphs.path(4), e -> e == 1 ? 9 : 5, 0);
        assertEquals(2, paths.pathTo(3).bottleneck());
    }

    @Test
    void zeroCarriesNothingInfiniteLimitsNothing() {
        WidestPaths paths = WidestPaths.from(SmallGraphs.path(4), e -> e == 2 ? 0 : Double.POSITIVE_INFINITY, 1);
        assertEquals(Double.POSITIVE_INFINITY, paths.width(0));
        assertEquals(0.0, paths.width(3));
        assertThrows(IllegalArgumentException.class, () -> paths.pathTo(3));
        assertEquals(-1, paths.pathTo(1).bottleneck());
        assertEquals(0, paths.pathTo(1).path().edgeCount());
    }

    @Test
    void refusesWhatIsNoCapacity() {
        IndexGraph g = SmallGraphs.path(2);
        assertThrows(IllegalArgumentException.class, () -> WidestPaths.from(g, e -> -1, 0));
        assertThrows(IllegalArgumentException.class, () -> WidestPaths.from(g, e -> Double.NaN, 0));
    }

    @Test
    void pathOfAMillion() {
        int n = 1_000_000;
        WidestPaths paths = WidestPaths.from(SmallGraphs.path(n), e -> 1.0 + e, n - 1);
        assertEquals(1.0, paths.width(0));
        assertEquals(0, paths.pathTo(0).bottleneck());
    }

    /** Definition as oracle: c flows to v exactly if v is still connected when everything thinner than c is gone. */
    @Property
    void widthIsTheHighestLevelAtWhichTheVertexIsStillConnected(
            @ForAll("graphs") IndexGraph g, @ForAll int a, @ForAll int b, @ForAll long seed) {
        int one = Math.floorMod(a, g.vertexCount());
        int two = Math.floorMod(b, g.vertexCount());
        double[] capacity = SmallGraphs.wholeNumbers(g.edgeBound(), 6, seed);
        WidestPaths ours = WidestPaths.from(g, e -> capacity[e], one, two);
        for (int v = 0; v < g.vertexCount(); v++) {
            double expected = v == one || v == two ? Double.POSITIVE_INFINITY : 0;
            for (double level = 5; level > 0 && expected == 0; level--) {
                if (fewestEdges(g, capacity, level, one, v) < Integer.MAX_VALUE
                        || fewestEdges(g, capacity, level, two, v) < Integer.MAX_VALUE) {
                    expected = level;
                }
            }
            assertEquals(expected, ours.width(v), "vertex " + v);
        }
    }

    @Property
    void pathIsTheShortestOfTheWidest(@ForAll("graphs") IndexGraph g, @ForAll int a, @ForAll long seed) {
        int from = Math.floorMod(a, g.vertexCount());
        double[] capacity = SmallGraphs.wholeNumbers(g.edgeBound(), 6, seed);
        WidestPaths ours = WidestPaths.from(g, e -> capacity[e], from);
        for (int v = 0; v < g.vertexCount(); v++) {
            if (ours.reached(v) && v != from) {
                WidestPaths.Widest widest = ours.pathTo(v);
                double narrowest = Arrays.stream(widest.path().edges())
                        .mapToDouble(e -> capacity[e])
                        .min()
                        .orElseThrow();
                assertEquals(ours.width(v), narrowest);
                assertEquals(narrowest, capacity[widest.bottleneck()]);
                assertEquals(from, widest.path().start());
                assertEquals(v, widest.path().end());
                assertEquals(
                        fewestEdges(g, capacity, narrowest, from, v),
                        widest.path().edgeCount());
            }
        }
    }

    private static int fewestEdges(IndexGraph g, double[] capacity, double level, int from, int to) {
        GraphPath<Integer, Integer> path =
                new BFSShortestPath<>(SmallGraphs.reference(g.onlyEdges(e -> capacity[e] >= level))).getPath(from, to);
        return path == null ? Integer.MAX_VALUE : path.getLength();
    }

    @Provide
    Arbitrary<IndexGraph> graphs() {
        return Arbitraries.oneOf(SmallGraphs.undirected(), SmallGraphs.directed());
    }
}
