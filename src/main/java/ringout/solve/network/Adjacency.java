package ringout.solve.network;

import java.util.Arrays;

/** Who is next to whom in a simple undirected graph: compressed rows, each sorted upwards, no loops, no parallels. */
final class Adjacency {

    /** Number of vertices. */
    final int size;

    /** First slot of each vertex; the last entry is the number of slots. */
    final int[] start;

    /** Neighbours, row after row. */
    final int[] neighbour;

    private Adjacency(int size, int[] start, int[] neighbour) {
        this.size = size;
        this.start = start;
        this.neighbour = neighbour;
    }

    /**
     * Rows from edges. Edges with a negative end or with equal ends are left out, parallel ones count once.
     *
     * @param size number of vertices
     * @param from first end of each edge
     * @param to second end of each edge
     */
    static Adjacency of(int size, int[] from, int[] to) {
        int[] start = new int[size + 1];
        for (int e = 0; e < from.length; e++) {
            if (joins(from[e], to[e])) {
                start[from[e] + 1]++;
                start[to[e] + 1]++;
            }
        }
        for (int v = 0; v < size; v++) {
            start[v + 1] += start[v];
        }
        int[] raw = new int[start[size]];
        int[] next = Arrays.copyOf(start, size);
        for (int e = 0; e < from.length; e++) {
            if (joins(from[e], to[e])) {
                raw[next[from[e]]++] = to[e];
                raw[next[to[e]]++] = from[e];
            }
        }
        return sortedOnce(size, start, raw);
    }

    private static boolean joins(int a, int b) {
        return a >= 0 && b >= 0 && a != b;
    }

    /** Transposing a symmetric pattern sorts its rows; a parallel then stands right behind its twin and is dropped. */
    private static Adjacency sortedOnce(int size, int[] start, int[] raw) {
        int[] sorted = new int[raw.length];
        int[] end = Arrays.copyOf(start, size);
        for (int v = 0; v < size; v++) {
            for (int p = start[v]; p < start[v + 1]; p++) {
                int u = raw[p];
                if (end[u] == start[u] || sorted[end[u] - 1] != v) {
                    sorted[end[u]++] = v;
                }
            }
        }
        int[] packed = new int[size + 1];
        int free = 0;
        for (int v = 0; v < size; v++) {
            int count = end[v] - start[v];
            System.arraycopy(sorted, start[v], sorted, free, count);
            free += count;
            packed[v + 1] = free;
        }
        return new Adjacency(size, packed, sorted);
    }

    /** {@return the number of neighbours of a vertex} */
    int degree(int v) {
        return start[v + 1] - start[v];
    }
}
