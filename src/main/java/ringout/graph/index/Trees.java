package ringout.graph.index;

import java.util.function.IntToDoubleFunction;

/** Measures of a tree, the shape a bus should have. */
public final class Trees {
    private Trees() {}

    /** {@return whether the part of an undirected graph that a vertex is in has no cycle} O(size of that part). */
    public static boolean isTree(IndexGraph graph, int inside) {
        return isTree(graph, BreadthFirst.from(graph, inside));
    }

    static boolean isTree(IndexGraph graph, BreadthFirst part) {
        graph.requireUndirected();
        long ends = 0;
        for (int i = 0; i < part.reachedCount(); i++) {
            ends += graph.degree(part.vertexAt(i));
        }
        return ends == 2L * (part.reachedCount() - 1);
    }

    /**
     * {@return the longest path of the tree that a vertex is in} Found by two sweeps: the farthest vertex from anywhere
     * is an end of a longest path. Of equally far vertices the lowest number is taken, and the path runs from its lower
     * to its higher end.
     *
     * @param length of an edge, in any unit, not negative
     * @throws IllegalArgumentException if that part of the graph is not a tree
     */
    public static Walk longestPath(IndexGraph graph, IntToDoubleFunction length, int inside) {
        BreadthFirst first = BreadthFirst.from(graph, inside);
        if (!isTree(graph, first)) {
            throw new IllegalArgumentException("the part of vertex " + inside + " is not a tree");
        }
        int oneEnd = farthest(first, distances(graph, first, length));
        BreadthFirst second = BreadthFirst.from(graph, oneEnd);
        int otherEnd = farthest(second, distances(graph, second, length));
        Walk path = second.toRoot(otherEnd);
        return path.start() <= path.end() ? path : path.reversed();
    }

    /** The distance of every reached vertex to its root, along the forest. */
    static double[] distances(IndexGraph graph, BreadthFirst forest, IntToDoubleFunction length) {
        double[] distance = new double[graph.vertexCount()];
        for (int i = 0; i < forest.reachedCount(); i++) {
            int v = forest.vertexAt(i);
            int edge = forest.parentEdge(v);
            if (edge >= 0) {
                distance[v] = distance[graph.otherEnd(edge, v)] + EdgeValues.notNegative(length, edge, "length");
            }
        }
        return distance;
    }

    private static int farthest(BreadthFirst forest, double[] distance) {
        int best = forest.vertexAt(0);
        for (int i = 1; i < forest.reachedCount(); i++) {
            int v = forest.vertexAt(i);
            if (distance[v] > distance[best] || (distance[v] == distance[best] && v < best)) {
                best = v;
            }
        }
        return best;
    }
}
