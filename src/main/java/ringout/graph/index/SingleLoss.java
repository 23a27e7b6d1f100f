package ringout.graph.index;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * What loses its last connection to every source when one edge opens or one vertex goes: all single opens of an
 * undirected supply or return, from one depth-first pass and sums over its subtrees. O(n + m) for all of them together;
 * naming the losses of one edge costs their number. Vertices that no source reaches in the first place do not count.
 *
 * <p>Connection is not capacity: a way that remains may be too thin for the load.
 */
public final class SingleLoss {
    private final IndexGraph graph;
    private final Lowlink pass;
    /** Number of loads before each position of the pass. */
    private final int[] loadsBefore;
    /** Loads at vertices, in the order of the pass. */
    private final int[] loads;

    /** Positions below this are what the sources reach: their common hub stands first. */
    private final int reachedTo;

    private final int[] lostWithVertex;

    private SingleLoss(IndexGraph graph, Lowlink pass, int hub, IntPredicate isLoad) {
        int n = graph.vertexCount();
        this.graph = graph;
        this.pass = pass;
        this.reachedTo = pass.subtreeEnd(hub);
        this.loadsBefore = new int[reachedTo + 1];
        int[] found = new int[reachedTo];
        for (int i = 0; i < reachedTo; i++) {
            int v = pass.vertexAt(i);
            boolean counts = v < n && isLoad.test(v);
            found[loadsBefore[i]] = v;
            loadsBefore[i + 1] = loadsBefore[i] + (counts ? 1 : 0);
        }
        this.loads = Arrays.copyOf(found, loadsBefore[reachedTo]);
        this.lostWithVertex = new int[n];
        for (int i = 0; i < reachedTo; i++) {
            addLoss(pass.vertexAt(i));
        }
    }

    /**
     * {@return the losses of a network fed from all the given sources at once}
     *
     * @param isLoad which vertices count when they are cut off
     * @throws IllegalArgumentException if the graph is directed or there is no source
     */
    public static SingleLoss of(IndexGraph graph, IntPredicate isLoad, int... sources) {
        if (sources.length == 0) {
            throw new IllegalArgumentException("without a source everything is lost already");
        }
        int hub = graph.vertexCount();
        return new SingleLoss(graph, Lowlink.of(graph.withHub(sources), hub), hub, isLoad);
    }

    private void addLoss(int v) {
        if (v >= lostWithVertex.length) {
            return;
        }
        lostWithVertex[v] += loadsIn(pass.position(v), pass.position(v) + 1);
        int parent = pass.parent(v);
        if (parent >= 0 && parent < lostWithVertex.length && pass.hangsFromParentOnly(v)) {
            lostWithVertex[parent] += loadsIn(pass.position(v), pass.subtreeEnd(v));
        }
    }

    private int loadsIn(int from, int to) {
        return loadsBefore[to] - loadsBefore[from];
    }

    /** {@return the number of loads that any source reaches while nothing is broken} */
    public int connectedLoads() {
        return loads.length;
    }

    /** {@return the number of loads cut off when the edge opens} */
    public int countByEdge(int edge) {
        int below = lowerEnd(edge);
        return below < 0 ? 0 : loadsIn(pass.position(below), pass.subtreeEnd(below));
    }

    /** {@return the loads cut off when the edge opens, as a new array} */
    public int[] lostByEdge(int edge) {
        int below = lowerEnd(edge);
        return below < 0 ? new int[0] : loadsBetween(pass.position(below), pass.subtreeEnd(below));
    }

    /** {@return the number of loads cut off when the vertex goes, itself included if it is one} */
    public int countByVertex(int vertex) {
        return lostWithVertex[vertex];
    }

    /** {@return the loads cut off when the vertex goes, itself first if it is one, as a new array} */
    public int[] lostByVertex(int vertex) {
        if (!reached(vertex)) {
            return new int[0];
        }
        int from = pass.position(vertex);
        int[] lost = loadsBetween(from, from + 1);
        for (int i = from + 1; i < pass.subtreeEnd(vertex); i = pass.subtreeEnd(pass.vertexAt(i))) {
            int child = pass.vertexAt(i);
            if (pass.hangsFromParentOnly(child)) {
                int[] more = loadsBetween(i, pass.subtreeEnd(child));
                int had = lost.length;
                lost = Arrays.copyOf(lost, had + more.length);
                System.arraycopy(more, 0, lost, had, more.length);
            }
        }
        return lost;
    }

    private int[] loadsBetween(int from, int to) {
        return Arrays.copyOfRange(loads, loadsBefore[from], loadsBefore[to]);
    }

    private boolean reached(int vertex) {
        return pass.position(vertex) < reachedTo;
    }

    /** The end of a bridge away from the sources, -1 if the edge is no bridge or no source reaches it. */
    private int lowerEnd(int edge) {
        if (!pass.isBridge(edge) || !reached(graph.from(edge))) {
            return -1;
        }
        return pass.parentEdge(graph.from(edge)) == edge ? graph.from(edge) : graph.to(edge);
    }
}
