package ringout.graph.index;

/** The counting sort behind {@link IndexGraph}: endpoints in, rows of slots out, O(n + m). */
final class CompressedRows {

    private CompressedRows() {}

    /** Refuses endpoint arrays that do not describe a graph. */
    static void check(int vertexCount, int[] from, int[] to) {
        if (vertexCount < 0) {
            throw new IllegalArgumentException("vertex count " + vertexCount + " is negative");
        }
        if (from.length != to.length) {
            throw new IllegalArgumentException(from.length + " first ends but " + to.length + " second ends");
        }
        if (from.length > 1 << 29) {
            throw new IllegalArgumentException(from.length + " edges; at most 2^29 can be indexed");
        }
        for (int e = 0; e < from.length; e++) {
            if (from[e] < 0 || from[e] >= vertexCount || to[e] < 0 || to[e] >= vertexCount) {
                throw new IllegalArgumentException(
                        "edge " + e + " joins " + from[e] + " and " + to[e] + " in a graph of " + vertexCount);
            }
        }
    }

    /** First slot of each vertex; the last entry is the number of slots. */
    static int[] starts(boolean directed, int vertexCount, int[] from, int[] to) {
        int[] rows = new int[vertexCount + 1];
        for (int e = 0; e < from.length; e++) {
            rows[from[e] + 1]++;
            if (hasSecondSlot(directed, from[e], to[e])) {
                rows[to[e] + 1]++;
            }
        }
        for (int v = 0; v < vertexCount; v++) {
            rows[v + 1] += rows[v];
        }
        return rows;
    }

    /** Pairs of edge and other end, row after row. */
    static int[] fill(boolean directed, int[] rows, int[] from, int[] to) {
        int[] slots = new int[2 * rows[rows.length - 1]];
        int[] next = rows.clone();
        for (int e = 0; e < from.length; e++) {
            put(slots, next[from[e]]++, e, to[e]);
            if (hasSecondSlot(directed, from[e], to[e])) {
                put(slots, next[to[e]]++, e, from[e]);
            }
        }
        return slots;
    }

    private static boolean hasSecondSlot(boolean directed, int from, int to) {
        return !directed && from != to;
    }

    private static void put(int[] slots, int slot, int edge, int vertex) {
        slots[2 * slot] = edge;
        slots[2 * slot + 1] = vertex;
    }
}
