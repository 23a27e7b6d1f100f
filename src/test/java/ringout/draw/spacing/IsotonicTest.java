package ringout.draw.spacing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class IsotonicTest {
    private static final int HIGHEST = 9;

    @Test
    void membersThatDoNotMeetStandWhereTheyWant() {
        Isotonic stack = new Isotonic(new int[] {0, 2, 4});
        stack.wish(0, 1, 1);
        stack.wish(1, 7, 1);
        stack.wish(2, 20, 1);
        assertArrayEquals(new int[] {1, 7, 20}, stack.solve(0, 100));
    }

    @Test
    void membersThatWouldChangePlacesMeetAtTheWeightedMedian() {
        Isotonic stack = new Isotonic(new int[] {0, 2});
        stack.wish(0, 10, 3);
        stack.wish(1, 4, 1);
        assertArrayEquals(new int[] {10, 12}, stack.solve(0, 100));
    }

    /** Exact: the cost is the least of all placings of three members on ten heights, tried one by one. */
    @Property(seed = "20261125", tries = 300)
    void costIsTheLeastOfAll(@ForAll Random random) {
        int[] distance = {0, 1 + random.nextInt(2), 3 + random.nextInt(2)};
        int[][] wish = new int[6][];
        for (int i = 0; i < wish.length; i++) {
            wish[i] = new int[] {i % 3, random.nextInt(HIGHEST), 1 + random.nextInt(3)};
        }
        Isotonic stack = new Isotonic(distance);
        for (int[] w : wish) {
            stack.wish(w[0], w[1], w[2]);
        }
        int[] found = stack.solve(0, HIGHEST);
        assertTrue(found[0] >= 0 && found[2] <= HIGHEST);
        int best = Integer.MAX_VALUE;
        for (int a = 0; a <= HIGHEST; a++) {
            for (int b = a + distance[1]; b <= HIGHEST; b++) {
                for (int c = b + distance[2] - distance[1]; c <= HIGHEST; c++) {
                    best = Math.min(best, cost(wish, new int[] {a, b, c}));
                }
            }
        }
        assertEquals(best, cost(wish, found));
    }

    private static int cost(int[][] wish, int[] heights) {
        int cost = 0;
        for (int[] w : wish) {
            cost += w[2] * Math.abs(heights[w[0]] - w[1]);
        }
        return cost;
    }
}
