package ringout.graph.index;

import java.util.BitSet;

/**
 * The fundamental cycles of an undirected graph over its breadth-first forest: one for every edge outside the forest,
 * and every cycle of the graph is a sum of these. Their number is m - n + c (edges, vertices, components).
 *
 * <p>Finding the basis is O(n + m); a cycle is written out when it is asked for, in the time of its own length. Parallel
 * wires give a cycle of two edges, a self-loop one of one edge.
 */
public final class CycleBasis {
    private final IndexGraph graph;
    private final BreadthFirst forest;
    private final int[] chords;

    private CycleBasis(IndexGraph graph, BreadthFirst forest, int[] chords) {
        this.graph = graph;
        this.forest = forest;
        this.chords = chords;
    }

    /**
     * {@return the basis of a graph}
     *
     * @throws IllegalArgumentException if the graph is directed
     */
    public static CycleBasis of(IndexGraph graph) {
        graph.requireUndirected();
        BreadthFirst forest = BreadthFirst.everywhere(graph);
        BitSet inForest = forest.edges();
        int[] chords = new int[graph.edgeCount() - inForest.cardinality()];
        int count = 0;
        for (int e = 0; e < graph.edgeBound(); e++) {
            if (graph.hasEdge(e) && !inForest.get(e)) {
                chords[count++] = e;
            }
        }
        return new CycleBasis(graph, forest, chords);
    }

    /** {@return the number of independent cycles; 0 exactly if the graph is a forest} */
    public int dimension() {
        return chords.length;
    }

    /** {@return the edge outside the forest that closes the i-th cycle; chords ascend} */
    public int chord(int i) {
        return chords[i];
    }

    /** {@return the breadth-first forest the cycles are taken over} */
    public BreadthFirst forest() {
        return forest;
    }

    /**
     * {@return the i-th fundamental cycle, taking its chord first and coming back through the forest} For a cycle with
     * the fewest edges through the same chord see {@link PathSearch#shortestCycle}.
     */
    public Walk cycle(int i) {
        int chord = chords[i];
        int a = graph.from(chord);
        int b = graph.to(chord);
        int meet = meetingPoint(a, b);
        int down = forest.depth(b) - forest.depth(meet);
        int[] edges = new int[1 + down + forest.depth(a) - forest.depth(meet)];
        edges[0] = chord;
        int at = 1;
        for (int v = b; v != meet; v = forest.parent(v)) {
            edges[at++] = forest.parentEdge(v);
        }
        at = edges.length;
        for (int v = a; v != meet; v = forest.parent(v)) {
            edges[--at] = forest.parentEdge(v);
        }
        return Walk.along(graph, a, edges);
    }

    /** The lowest common ancestor, by climbing from the deeper side. */
    private int meetingPoint(int a, int b) {
        int u = a;
        int v = b;
        while (u != v) {
            if (forest.depth(u) >= forest.depth(v)) {
                u = forest.parent(u);
            } else {
                v = forest.parent(v);
            }
        }
        return u;
    }

    @Override
    public String toString() {
        return dimension() + " independent cycles in " + graph;
    }
}
