package ringout.graph.index;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class SingleLossTest {

    @Test
    void aSupplyTreeWithOneRedundantFeed() {
        // Pack 0 feeds board 1; from it 2 and 3, tied to each other; 4 behind 3; 5 behind 1.
        IndexGraph g = SmallGraphs.of(6, 0, 1, 1, 2, 1, 3, 2, 3, 3, 4, 1, 5);
        SingleLoss loss = SingleLoss.of(g, v -> v >= 2, 0);
        assertEquals(4, loss.connectedLoads());
        assertEquals(4, loss.countByEdge(0));
        assertEquals(0, loss.countByEdge(2), "the tie carries on");
        assertArrayEquals(new int[] {4}, loss.lostByEdge(4));
        assertEquals(4, loss.countByVertex(1));
        assertEquals(2, loss.countByVertex(3));
        assertArrayEquals(new int[] {3, 4}, loss.lostByVertex(3));
    }

    @Test
    void aSecondSourceTakesOver() {
        SingleLoss loss = SingleLoss.of(SmallGraphs.path(5), v -> true, 0, 4);
        assertEquals(0, loss.countByEdge(2));
        assertArrayEquals(new int[] {2}, loss.lostByVertex(2));
        assertThrows(IllegalArgumentException.class, () -> SingleLoss.of(SmallGraphs.path(2), v -> true));
    }

    @Test
    void everyOpenOfAPathOfAMillion() {
        int n = 1_000_000;
        SingleLoss loss = SingleLoss.of(SmallGraphs.path(n), v -> true, 0);
        long sum = 0;
        for (int e = 0; e < n - 1; e++) {
            sum += loss.countByEdge(e);
        }
        assertEquals((long) n * (n - 1) / 2, sum);
        assertEquals(n - 10, loss.lostByVertex(10).length);
    }

    @Property
    void isWhatASearchFromTheSourcesNoLongerReaches(
            @ForAll("graphs") IndexGraph g, @ForAll int a, @ForAll int b, @ForAll int loadBits) {
        int[] sources = {Math.floorMod(a, g.vertexCount()), Math.floorMod(b, g.vertexCount())};
        IntPredicate isLoad = v -> (loadBits >>> v & 1) != 0;
        SingleLoss loss = SingleLoss.of(g, isLoad, sources);
        BreadthFirst intact = BreadthFirst.from(g, sources);
        for (int e = 0; e < g.edgeBound(); e++) {
            int open = e;
            BreadthFirst left = BreadthFirst.from(g.onlyEdges(f -> f != open), sources);
            int[] lost = IntStream.range(0, g.vertexCount())
                    .filter(v -> isLoad.test(v) && intact.reached(v) && !left.reached(v))
                    .toArray();
            assertArrayEquals(lost, sorted(loss.lostByEdge(e)), "edge " + e);
            assertEquals(lost.length, loss.countByEdge(e));
        }
        for (int gone = 0; gone < g.vertexCount(); gone++) {
            int out = gone;
            BreadthFirst left = BreadthFirst.from(
                    g.onlyEdges(e -> g.from(e) != out && g.to(e) != out),
                    Arrays.stream(sources).filter(s -> s != out).toArray());
            int[] lost = IntStream.range(0, g.vertexCount())
                    .filter(v -> isLoad.test(v) && intact.reached(v) && !left.reached(v))
                    .toArray();
            assertArrayEquals(lost, sorted(loss.lostByVertex(gone)), "vertex " + gone);
            assertEquals(lost.length, loss.countByVertex(gone));
        }
    }

    private static int[] sorted(int[] array) {
        return Arrays.stream(array).sorted().toArray();
    }

    @Provide
    Arbitrary<IndexGraph> graphs() {
        return SmallGraphs.undirected();
    }
}
