package ringout.solve.network;

import java.util.Arrays;

/**
 * Minimum degree ordering of a core that has no ends and no in-line points left.
 *
 * <p>The graph that elimination would produce is never built. A removed vertex becomes an <em>element</em>, the set of
 * its neighbours, which stands for all the edges between them; an element inside another is absorbed, vertices that
 * cannot be told apart are kept as one, and a degree is an upper bound that costs no set union. Memory stays within the
 * input plus the elements.
 *
 * <p>Source: P. R. Amestoy, T. A. Davis and I. S. Duff, An approximate minimum degree ordering algorithm, SIAM Journal on
 * Matrix Analysis and Applications 17 (1996), 886-905.
 */
final class QuotientGraph {

    private static final int NONE = -1;

    private final int n;
    private final DegreeLists lists;

    /** All lists in one store: of a vertex first its elements, then its neighbours; of an element its vertices. */
    private int[] store;

    private int free;
    private final int[] start;
    private final int[] length;
    private final int[] elementCount;

    /** Vertices a principal vertex stands for; negative while it is in the current element; 0 when it is gone. */
    private final int[] weight;

    /** Bound of the outside degree of a vertex; weight of an element. */
    private final int[] degree;

    /** An element that is not absorbed. */
    private final boolean[] alive;

    private final int[] outside;
    private final int[] outsideSeen;
    private final TwinFinder twins;
    private final int[] groupNext;
    private final int[] groupLast;
    private final int[] order;
    private int ordered;
    private int eliminated;
    private int step;

    private int currentWeight;

    private QuotientGraph(Adjacency graph) {
        n = graph.size;
        lists = new DegreeLists(n);
        free = graph.start[n];
        store = Arrays.copyOf(graph.neighbour, free + free / 2 + n + 16);
        start = Arrays.copyOf(graph.start, n);
        length = new int[n];
        elementCount = new int[n];
        weight = new int[n];
        degree = new int[n];
        alive = new boolean[n];
        outside = new int[n];
        outsideSeen = new int[n];
        twins = new TwinFinder(n);
        groupNext = new int[n];
        groupLast = new int[n];
        order = new int[n];
        Arrays.fill(groupNext, NONE);
        for (int v = 0; v < n; v++) {
            length[v] = graph.degree(v);
            degree[v] = length[v];
            weight[v] = 1;
            groupLast[v] = v;
        }
    }

    /** {@return the vertices of a graph in the order of their elimination} */
    static int[] order(Adjacency graph) {
        QuotientGraph q = new QuotientGraph(graph);
        q.run();
        return q.order;
    }

    private void run() {
        int dense = setDenseAside();
        while (ordered < dense) {
            eliminate(lists.removeLowest());
        }
    }

    /** Hubs go last, lowest index first: looking through a hub at each of its neighbours would be quadratic. */
    private int setDenseAside() {
        double limit = Math.max(16.0, 10.0 * Math.sqrt(n));
        int last = n;
        for (int v = n - 1; v >= 0; v--) {
            if (degree[v] > limit) {
                weight[v] = 0;
                order[--last] = v;
                eliminated++;
            } else {
                lists.insert(v, degree[v]);
            }
        }
        return last;
    }

    private void eliminate(int p) {
        step++;
        eliminated += weight[p];
        formElement(p);
        measureOutside(p);
        twins.clear();
        int end = start[p] + length[p];
        for (int q = start[p]; q < end; q++) {
            update(p, store[q]);
        }
        for (int q = start[p]; q < end; q++) {
            if (weight[store[q]] < 0) {
                mergeTwinsOf(store[q]);
            }
        }
        finish(p);
    }

    /** Collects the neighbours of the pivot, through its elements too; those elements are absorbed. */
    private void formElement(int p) {
        int bound = length[p] - elementCount[p];
        for (int q = start[p]; q < start[p] + elementCount[p]; q++) {
            bound += length[store[q]];
        }
        if (free + bound > store.length) {
            store = Arrays.copyOf(store, free + bound + store.length / 2);
        }
        int first = free;
        weight[p] = -weight[p];
        currentWeight = 0;
        for (int q = start[p]; q < start[p] + elementCount[p]; q++) {
            int e = store[q];
            if (alive[e]) {
                collect(start[e], start[e] + length[e]);
                alive[e] = false;
            }
        }
        collect(start[p] + elementCount[p], start[p] + length[p]);
        start[p] = first;
        length[p] = free - first;
        elementCount[p] = 0;
    }

    private void collect(int from, int end) {
        for (int q = from; q < end; q++) {
            int v = store[q];
            if (weight[v] > 0) {
                currentWeight += weight[v];
                weight[v] = -weight[v];
                lists.remove(v);
                store[free++] = v;
            }
        }
    }

    /** For each element that touches the current one: the weight of its vertices outside the current one. */
    private void measureOutside(int p) {
        for (int q = start[p]; q < start[p] + length[p]; q++) {
            int v = store[q];
            for (int r = start[v]; r < start[v] + elementCount[v]; r++) {
                int e = store[r];
                if (alive[e]) {
                    if (outsideSeen[e] != step) {
                        outsideSeen[e] = step;
                        outside[e] = degree[e];
                    }
                    outside[e] += weight[v];
                }
            }
        }
    }

    /** Rewrites the lists of a vertex of the current element: the element first, only what is still needed after it. */
    private void update(int p, int v) {
        int begin = start[v];
        int endElements = begin + elementCount[v];
        int end = begin + length[v];
        int out = begin;
        int sum = 0;
        int hash = p;
        for (int r = begin; r < endElements; r++) {
            int e = store[r];
            if (alive[e] && outside[e] > 0) {
                sum += outside[e];
                hash += e;
                store[out++] = e;
            } else {
                alive[e] = false;
            }
        }
        int endKept = out;
        for (int r = endElements; r < end; r++) {
            int u = store[r];
            if (weight[u] > 0) {
                sum += weight[u];
                hash += u;
                store[out++] = u;
            }
        }
        if (sum == 0) {
            eliminateWith(p, v);
            return;
        }
        putFirst(p, begin, endKept, out);
        elementCount[v] = endKept - begin + 1;
        length[v] = out + 1 - begin;
        degree[v] = Math.min(degree[v], sum);
        twins.add(v, hash);
    }

    /** The slot gained is the one of what led from the vertex to the pivot. */
    private void putFirst(int p, int begin, int endElements, int end) {
        store[end] = store[endElements];
        store[endElements] = store[begin];
        store[begin] = p;
    }

    /** A vertex with no neighbour outside the current element can follow the pivot at once, without more fill. */
    private void eliminateWith(int p, int v) {
        int w = -weight[v];
        eliminated += w;
        currentWeight -= w;
        append(p, v);
    }

    private void append(int principal, int v) {
        weight[v] = 0;
        groupNext[groupLast[principal]] = v;
        groupLast[principal] = groupLast[v];
    }

    private void mergeTwinsOf(int v) {
        boolean marked = false;
        for (int u = twins.after(v); u != NONE; u = twins.after(u)) {
            if (weight[u] >= 0 || !twins.sameHash(u, v) || length[u] != length[v]) {
                continue;
            }
            if (!marked) {
                twins.mark(store, start[v], start[v] + length[v]);
                marked = true;
            }
            if (elementCount[u] == elementCount[v] && twins.allMarked(store, start[u], start[u] + length[u])) {
                weight[v] += weight[u];
                append(v, u);
            }
        }
    }

    private void finish(int p) {
        int out = start[p];
        int left = n - eliminated;
        for (int q = start[p]; q < start[p] + length[p]; q++) {
            int v = store[q];
            if (weight[v] < 0) {
                weight[v] = -weight[v];
                degree[v] = Math.min(degree[v] + currentWeight - weight[v], left - weight[v]);
                lists.insert(v, degree[v]);
                store[out++] = v;
            }
        }
        length[p] = out - start[p];
        free = out;
        degree[p] = currentWeight;
        alive[p] = length[p] > 0;
        weight[p] = 0;
        for (int v = p; v != NONE; v = groupNext[v]) {
            order[ordered++] = v;
        }
    }
}
