package ringout.graph.index;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Widths between any two vertices against the widest paths found one source at a time. */
class WidestForestTest {
    private static WidestForest forest(int n, int[] from, int[] to, double[] width) {
        WidestForest forest = new WidestForest(n);
        IntStream.range(0, from.length)
                .boxed()
                .sorted((a, b) -> Double.compare(width[b], width[a]))
                .forEach(e -> forest.offer(from[e], to[e], width[e]));
        return forest;
    }

    @Test
    void agreesWithWidestPathsOnRandomGraphs() {
        Random random = new Random(7);
        for (int round = 0; round < 300; round++) {
            int n = 1 + random.nextInt(12);
            int m = random.nextInt(3 * n);
            int[] from = IntStream.range(0, m).map(i -> random.nextInt(n)).toArray();
            int[] to = IntStream.range(0, m).map(i -> random.nextInt(n)).toArray();
            double[] width = IntStream.range(0, m)
                    .mapToDouble(i -> 1 + random.nextInt(6))
                    .toArray();
            WidestForest forest = forest(n, from, to, width);
            IndexGraph graph = IndexGraph.undirected(n, from, to);
            for (int s = 0; s < n; s++) {
                WidestPaths oracle = WidestPaths.from(graph, e -> width[e], s);
                for (int v = 0; v < n; v++) {
                    assertEquals(oracle.width(v), forest.width(s, v), s + " to " + v + " in " + Arrays.toString(width));
                }
            }
        }
    }

    @Test
    void anEdgeOfNoWidthJoinsButCarriesNothing() {
        WidestForest forest = forest(3, new int[] {0}, new int[] {1}, new double[] {0});
        assertTrue(forest.joined(0, 1));
        assertEquals(0, forest.width(0, 1));
        assertFalse(forest.joined(0, 2));
        assertEquals(0, forest.width(0, 2));
        assertEquals(Double.POSITIVE_INFINITY, forest.width(2, 2));
    }

    @Test
    void refusesAWiderEdgeAfterANarrowerOne() {
        WidestForest forest = new WidestForest(2);
        forest.offer(0, 1, 1);
        assertThrows(IllegalArgumentException.class, () -> forest.offer(0, 1, 2));
        assertThrows(IllegalArgumentException.class, () -> forest.offer(0, 1, Double.NaN));
    }
}
