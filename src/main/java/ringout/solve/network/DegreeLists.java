package ringout.solve.network;

import java.util.Arrays;

/** Vertices in buckets by degree; the lowest non-empty bucket is found by walking up from where it was last. */
final class DegreeLists {

    private static final int NONE = -1;

    private final int[] head;
    private final int[] next;
    private final int[] previous;
    private final int[] bucket;
    private int lowest;

    DegreeLists(int size) {
        head = new int[Math.max(size, 1)];
        next = new int[size];
        previous = new int[size];
        bucket = new int[size];
        Arrays.fill(head, NONE);
        Arrays.fill(bucket, NONE);
    }

    void insert(int v, int degree) {
        int first = head[degree];
        next[v] = first;
        previous[v] = NONE;
        if (first != NONE) {
            previous[first] = v;
        }
        head[degree] = v;
        bucket[v] = degree;
        lowest = Math.min(lowest, degree);
    }

    void remove(int v) {
        if (previous[v] == NONE) {
            head[bucket[v]] = next[v];
        } else {
            next[previous[v]] = next[v];
        }
        if (next[v] != NONE) {
            previous[next[v]] = previous[v];
        }
        bucket[v] = NONE;
    }

    /** Takes out a vertex of lowest degree; the lists must not be empty. */
    int removeLowest() {
        while (head[lowest] == NONE) {
            lowest++;
        }
        int v = head[lowest];
        remove(v);
        return v;
    }
}
