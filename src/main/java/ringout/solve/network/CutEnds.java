package ringout.solve.network;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Dead ends of a network: points that one resistor alone leads to and nothing stands on. No current goes there, and their
 * voltage is that of the point they hang on.
 */
final class CutEnds {
    private final Contraction points;
    private final int[] degree;
    private final int[] mixed;
    private final int[] hangsOn;
    private final BitSet carries = new BitSet();

    CutEnds(Contraction points, BitSet kept, double[] ohms) {
        this.points = points;
        degree = new int[points.count()];
        mixed = new int[points.count()];
        hangsOn = new int[points.count()];
        Arrays.setAll(hangsOn, p -> p);
        for (int e = 0; e < points.elements(); e++) {
            if (points.from(e) != points.to(e) && ohms[e] < Double.POSITIVE_INFINITY) {
                count(e, 1);
                carries.set(e);
            }
        }
        for (int p = 0; p < degree.length; p++) {
            for (int at = p; degree[at] == 1 && !kept.get(at); ) {
                at = cut(at);
            }
        }
        for (int p = 0; p < degree.length; p++) {
            flatten(p);
        }
    }

    private void count(int e, int step) {
        degree[points.from(e)] += step;
        degree[points.to(e)] += step;
        mixed[points.from(e)] ^= e;
        mixed[points.to(e)] ^= e;
    }

    private int cut(int point) {
        int e = mixed[point];
        int other = points.from(e) == point ? points.to(e) : points.from(e);
        count(e, -1);
        carries.clear(e);
        hangsOn[point] = other;
        return other;
    }

    private void flatten(int point) {
        int root = point;
        while (hangsOn[root] != root) {
            root = hangsOn[root];
        }
        for (int at = point; hangsOn[at] != root; ) {
            int next = hangsOn[at];
            hangsOn[at] = root;
            at = next;
        }
    }

    /** {@return the point that a point hangs on, itself when it is no dead end} */
    int root(int point) {
        return hangsOn[point];
    }

    /** {@return whether an element may carry current} */
    boolean carries(int element) {
        return carries.get(element);
    }

    /** {@return how many elements that may carry current end at a point} */
    int degree(int point) {
        return degree[point];
    }
}
