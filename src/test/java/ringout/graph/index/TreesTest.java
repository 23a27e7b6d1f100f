package ringout.graph.index;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.alg.shortestpath.FloydWarshallShortestPaths;
import org.junit.jupiter.api.Test;

class TreesTest {

    @Test
    void aBusWithItsTrunkAndStubs() {
        // 0 - 1 - 2 - 3 is the trunk; 4 hangs from 1; 5 and, beyond it, 6 and 7 hang from 2.
        IndexGraph bus = SmallGraphs.of(8, 0, 1, 1, 2, 2, 3, 1, 4, 2, 5, 5, 6, 5, 7);
        double[] metres = {2.0, 1.0, 2.0, 0.25, 0.5, 0.125, 0.25};
        Walk trunk = Trees.longestPath(bus, e -> metres[e], 6);
        assertEquals("0 -[0]- 1 -[1]- 2 -[2]- 3", trunk.toString());
        Stubs stubs = Stubs.off(bus, trunk, e -> metres[e]);
        assertEquals(List.of(new Stubs.Stub(1, 3, 4, 0.25, 0.25), new Stubs.Stub(2, 4, 7, 0.75, 0.875)), stubs.all());
        assertEquals(1, stubs.stubOf(6));
        assertEquals(-1, stubs.stubOf(2));
        assertEquals(0.625, stubs.distance(6));
        assertEquals("2 -[4]- 5 -[5]- 6", stubs.pathTo(6).toString());
    }

    @Test
    void aUnitBeyondTheTerminatorHangsFromTheEndOfTheTrunk() {
        IndexGraph bus = SmallGraphs.path(4);
        Stubs stubs = Stubs.off(bus, Walk.along(bus, 0, 0, 1), e -> 1.5);
        assertEquals(List.of(new Stubs.Stub(2, 2, 3, 1.5, 1.5)), stubs.all());
    }

    @Test
    void ofEquallyFarEndsTheLowerNumberCounts() {
        IndexGraph star = SmallGraphs.of(5, 4, 3, 4, 1, 4, 2, 4, 0);
        Walk longest = Trees.longestPath(star, e -> 1.0, 4);
        assertEquals("0 -[3]- 4 -[1]- 1", longest.toString());
        IndexGraph fork = SmallGraphs.of(5, 0, 1, 1, 4, 1, 2, 1, 3);
        Stubs stubs = Stubs.off(fork, Walk.along(fork, 0), e -> 1.0);
        assertEquals(List.of(new Stubs.Stub(0, 0, 2, 2.0, 4.0)), stubs.all());
    }

    @Test
    void otherPartsOfTheGraphAreLeftAlone() {
        IndexGraph g = SmallGraphs.of(6, 0, 1, 2, 3, 3, 4, 4, 2);
        assertTrue(Trees.isTree(g, 0));
        assertTrue(Trees.isTree(g, 5));
        assertFalse(Trees.isTree(g, 3));
        Stubs stubs = Stubs.off(g, Walk.along(g, 0), e -> 1.0);
        assertEquals(Double.POSITIVE_INFINITY, stubs.distance(3));
        assertThrows(IllegalArgumentException.class, () -> stubs.pathTo(3));
        Walk onRing = Walk.along(g, 2, 1);
        assertThrows(IllegalArgumentException.class, () -> Stubs.off(g, onRing, e -> 1.0));
        assertThrows(IllegalArgumentException.class, () -> Trees.longestPath(g, e -> 1.0, 2));
    }

    @Test
    void parallelWiresAndSelfLoopsAreNoTree() {
        assertFalse(Trees.isTree(SmallGraphs.of(2, 0, 1, 0, 1), 0));
        assertFalse(Trees.isTree(SmallGraphs.of(1, 0, 0), 0));
        IndexGraph directed = SmallGraphs.directedOf(2, 0, 1);
        assertThrows(IllegalArgumentException.class, () -> Trees.isTree(directed, 0));
    }

    @Test
    void pathAndStarOfAMillion() {
        int n = 1_000_000;
        IndexGraph path = SmallGraphs.path(n);
        Walk longest = Trees.longestPath(path, e -> 1.0, n / 2);
        assertEquals(n - 1, longest.edgeCount());
        assertEquals(0, longest.start());
        assertEquals(1, Stubs.off(path, Walk.along(path, 0, 0), e -> 1.0).all().size());
        IndexGraph star = SmallGraphs.star(n);
        assertEquals(2, Trees.longestPath(star, e -> 1.0, 0).edgeCount());
        assertEquals(
                n - 2, Stubs.off(star, Walk.along(star, 1, 0), e -> 1.0).all().size());
    }

    @Property
    void longestPathIsTheGreatestOfAllDistances(@ForAll("trees") IndexGraph tree, @ForAll long seed) {
        double[] length = SmallGraphs.wholeNumbers(tree.edgeBound(), 9, seed);
        var all = new FloydWarshallShortestPaths<>(reference(tree, length));
        double greatest = 0;
        for (int a = 0; a < tree.vertexCount(); a++) {
            for (int b = 0; b < tree.vertexCount(); b++) {
                greatest = Math.max(greatest, all.getPathWeight(a, b));
            }
        }
        int inside = Math.floorMod(seed, tree.vertexCount());
        assertEquals(greatest, Trees.longestPath(tree, e -> length[e], inside).sum(e -> length[e]));
    }

    @Property
    void stubsAreThePartsLeftWithoutTheTrunk(
            @ForAll("trees") IndexGraph tree, @ForAll int a, @ForAll int b, @ForAll long seed) {
        int n = tree.vertexCount();
        double[] length = SmallGraphs.wholeNumbers(tree.edgeBound(), 9, seed);
        Walk trunk = new PathSearch(tree)
                .fewestEdges(Math.floorMod(a, n), Math.floorMod(b, n))
                .orElseThrow();
        Stubs stubs = Stubs.off(tree, trunk, e -> length[e]);

        var all = new FloydWarshallShortestPaths<>(reference(tree, length));
        Graph<Integer, Integer> rest = SmallGraphs.reference(tree);
        for (int t : trunk.vertices()) {
            rest.removeVertex(t);
        }
        Set<Set<Integer>> expected = new HashSet<>(new ConnectivityInspector<>(rest).connectedSets());
        List<Set<Integer>> members = stubs.all().stream()
                .map(s -> (Set<Integer>) new HashSet<Integer>())
                .toList();
        for (int v = 0; v < n; v++) {
            double nearest = Double.POSITIVE_INFINITY;
            for (int t : trunk.vertices()) {
                nearest = Math.min(nearest, all.getPathWeight(v, t));
            }
            assertEquals(nearest, stubs.distance(v));
            assertEquals(nearest, stubs.pathTo(v).sum(e -> length[e]));
            if (stubs.stubOf(v) >= 0) {
                members.get(stubs.stubOf(v)).add(v);
            }
        }
        assertEquals(expected, new HashSet<>(members));
        for (int i = 0; i < members.size(); i++) {
            Stubs.Stub stub = stubs.all().get(i);
            assertEquals(
                    stub.depth(),
                    members.get(i).stream().mapToDouble(stubs::distance).max().orElseThrow());
            assertEquals(stub.depth(), stubs.distance(stub.tip()));
            assertEquals(stub.foot(), stubs.pathTo(stub.tip()).start());
        }
    }

    private static Graph<Integer, Integer> reference(IndexGraph g, double[] length) {
        return JGraphTView.of(g).weighted(e -> length[e]);
    }

    @Provide
    Arbitrary<IndexGraph> trees() {
        return Arbitraries.integers()
                .between(0, 1_000_000)
                .array(int[].class)
                .ofMinSize(0)
                .ofMaxSize(14)
                .map(up -> {
                    IndexGraphBuilder tree = new IndexGraphBuilder(1);
                    for (int pick : up) {
                        tree.addEdge(pick % tree.vertexCount(), tree.addVertex());
                    }
                    return tree.undirected();
                });
    }
}
