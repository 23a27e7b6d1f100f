package ringout.solve.network;

import java.util.Arrays;

/**
 * Orders the tree-like part of a network: vertices with at most two neighbours, in rounds of vertices that are not
 * neighbours of each other.
 *
 * <p>Removing an end (one neighbour) or an in-line point (two neighbours, which become neighbours of each other) never
 * makes the rest denser, so minimum degree would take them first as well. Taking them in rounds instead of in a row
 * keeps the elimination tree low: a chain of n points gets a tree of height log n, not n. This is the "rake and compress"
 * of G. L. Miller and J. H. Reif, Parallel tree contraction and its application, 26th FOCS (1985).
 *
 * <p>Time O(n + m): an in-line point gives its two half-edges to its neighbours, nothing is allocated or searched beyond
 * a fixed number of slots. When that short search does not see that the two were neighbours already, a parallel edge
 * stays; it only makes a degree look larger than it is.
 */
final class Peel {

    private static final int SEARCH = 24;

    private final int[] start;
    private final int[] to;
    private final int[] twin;
    private final int[] degree;
    private final int[] touched;
    private final int[] queued;
    private final boolean[] gone;
    private final int[] order;
    private int count;
    private int round;
    private int[] next = new int[16];
    private int nextCount;

    private Peel(Adjacency graph) {
        int n = graph.size;
        start = graph.start;
        to = Arrays.copyOf(graph.neighbour, start[n]);
        twin = twins(graph);
        degree = new int[n];
        touched = new int[n];
        queued = new int[n];
        gone = new boolean[n];
        order = new int[n];
        for (int v = 0; v < n; v++) {
            degree[v] = graph.degree(v);
        }
    }

    /** Peels a graph as far as it goes. */
    static Peel of(Adjacency graph) {
        Peel peel = new Peel(graph);
        peel.run();
        return peel;
    }

    /** {@return the number of peeled vertices} */
    int count() {
        return count;
    }

    /** {@return the peeled vertices in order, as the first entries of an array as long as the graph is large} */
    int[] order() {
        return order;
    }

    /** {@return whether a vertex was peeled} */
    boolean isPeeled(int v) {
        return gone[v];
    }

    /** {@return what is left as a graph; {@code index} gives the number of each remaining vertex} */
    Adjacency core(int[] index, int coreSize) {
        int slots = 0;
        for (int v = 0; v < gone.length; v++) {
            slots += gone[v] ? 0 : degree[v];
        }
        int[] a = new int[slots / 2];
        int[] b = new int[slots / 2];
        int edges = 0;
        for (int v = 0; v < gone.length; v++) {
            for (int h = start[v]; !gone[v] && h < start[v] + degree[v]; h++) {
                if (h < twin[h]) {
                    a[edges] = index[v];
                    b[edges++] = index[to[h]];
                }
            }
        }
        return Adjacency.of(coreSize, a, b);
    }

    /** Half-edge in the other direction. Rows are sorted, so each row meets its partners in the order they come. */
    private static int[] twins(Adjacency graph) {
        int[] twin = new int[graph.start[graph.size]];
        int[] cursor = Arrays.copyOf(graph.start, graph.size);
        for (int v = 0; v < graph.size; v++) {
            for (int h = graph.start[v]; h < graph.start[v + 1]; h++) {
                twin[h] = cursor[graph.neighbour[h]]++;
            }
        }
        return twin;
    }

    private void run() {
        for (int v = 0; v < degree.length; v++) {
            enqueue(v);
        }
        while (nextCount > 0) {
            int[] current = Arrays.copyOf(next, nextCount);
            nextCount = 0;
            round++;
            for (int v : current) {
                visit(v);
            }
        }
    }

    private void visit(int v) {
        if (gone[v] || degree[v] > 2) {
            return;
        }
        if (touched[v] == round) {
            enqueue(v);
            return;
        }
        gone[v] = true;
        order[count++] = v;
        remove(v);
    }

    private void remove(int v) {
        int h = start[v];
        if (degree[v] == 1) {
            int a = to[h];
            delete(twin[h], a);
            touch(a);
        } else if (degree[v] == 2) {
            int a = to[h];
            int b = to[h + 1];
            if (a == b || areNeighbours(a, b)) {
                delete(twin[h], a);
                delete(twin[h + 1], b);
            } else {
                join(twin[h], b, twin[h + 1], a);
            }
            touch(a);
            touch(b);
        }
        degree[v] = 0;
    }

    private void join(int atA, int b, int atB, int a) {
        to[atA] = b;
        to[atB] = a;
        twin[atA] = atB;
        twin[atB] = atA;
    }

    private void delete(int slot, int owner) {
        int last = start[owner] + --degree[owner];
        if (slot != last) {
            to[slot] = to[last];
            twin[slot] = twin[last];
            twin[twin[slot]] = slot;
        }
    }

    private boolean areNeighbours(int a, int b) {
        int shorter = degree[a] <= degree[b] ? a : b;
        int other = shorter == a ? b : a;
        int end = start[shorter] + Math.min(degree[shorter], SEARCH);
        for (int h = start[shorter]; h < end; h++) {
            if (to[h] == other) {
                return true;
            }
        }
        return false;
    }

    private void touch(int v) {
        touched[v] = round;
        enqueue(v);
    }

    private void enqueue(int v) {
        if (degree[v] > 2 || queued[v] == round + 1) {
            return;
        }
        queued[v] = round + 1;
        if (nextCount == next.length) {
            next = Arrays.copyOf(next, 2 * nextCount);
        }
        next[nextCount++] = v;
    }
}
