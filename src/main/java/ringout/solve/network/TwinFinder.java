package ringout.solve.network;

import java.util.Arrays;

/**
 * Buckets in which vertices with the same neighbours meet. Two vertices can only be twins if the sums of their lists are
 * equal; the full comparison is made inside a bucket.
 */
final class TwinFinder {

    private static final int NONE = -1;

    private final int[] head;
    private final int[] next;
    private final int[] hash;
    private final int[] mark;
    private int stamp;
    private int[] used = new int[16];
    private int usedCount;

    TwinFinder(int size) {
        head = new int[Math.max(size, 1)];
        next = new int[size];
        hash = new int[size];
        mark = new int[size];
        Arrays.fill(head, NONE);
    }

    /** Empties the buckets that were used. */
    void clear() {
        for (int i = 0; i < usedCount; i++) {
            head[used[i]] = NONE;
        }
        usedCount = 0;
    }

    /** Puts a vertex into the bucket of its hash. */
    void add(int v, int listSum) {
        int bucket = Integer.remainderUnsigned(listSum, head.length);
        hash[v] = listSum;
        if (head[bucket] == NONE) {
            if (usedCount == used.length) {
                used = Arrays.copyOf(used, 2 * usedCount);
            }
            used[usedCount++] = bucket;
        }
        next[v] = head[bucket];
        head[bucket] = v;
    }

    /** {@return the next vertex in the bucket of a vertex, or -1} */
    int after(int v) {
        return next[v];
    }

    boolean sameHash(int u, int v) {
        return hash[u] == hash[v];
    }

    /** Remembers a list to compare with. */
    void mark(int[] store, int from, int end) {
        stamp++;
        for (int p = from; p < end; p++) {
            mark[store[p]] = stamp;
        }
    }

    /** {@return whether every entry of a list is in the remembered one} */
    boolean allMarked(int[] store, int from, int end) {
        for (int p = from; p < end; p++) {
            if (mark[store[p]] != stamp) {
                return false;
            }
        }
        return true;
    }
}
