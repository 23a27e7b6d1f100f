package ringout.graph.index;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class VertexHeapTest {
    private static final int VERTICES = 20;

    /** Oracle: a map searched in full for the least key, the lower vertex first. */
    @Property
    void removesInOrderOfKeyThenVertex(@ForAll long seed) {
        Random random = new Random(seed);
        VertexHeap heap = new VertexHeap(VERTICES);
        Map<Integer, Double> oracle = new HashMap<>();
        for (int step = 0; step < 200; step++) {
            if (oracle.isEmpty() || random.nextInt(3) > 0) {
                int vertex = random.nextInt(VERTICES);
                double key = random.nextInt(9);
                heap.offer(vertex, key);
                oracle.merge(vertex, key, Math::min);
            } else {
                assertFalse(heap.isEmpty());
                assertEquals(removeLeast(oracle), heap.poll());
            }
        }
        while (!oracle.isEmpty()) {
            assertEquals(removeLeast(oracle), heap.poll());
        }
        assertTrue(heap.isEmpty());
    }

    private static int removeLeast(Map<Integer, Double> oracle) {
        int least = oracle.entrySet().stream()
                .min(Map.Entry.<Integer, Double>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey(Comparator.naturalOrder())))
                .orElseThrow()
                .getKey();
        oracle.remove(least);
        return least;
    }
}
