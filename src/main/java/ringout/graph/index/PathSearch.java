package ringout.graph.index;

import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * Paths with the fewest edges, asked one after the other. A question costs only what it has to look at: the notes of the
 * search are kept between questions and never cleared. Not for use by several threads at once.
 *
 * <p>Among paths of equal length the one found first wins, edges being tried in ascending order.
 */
public final class PathSearch {
    private final IndexGraph graph;
    /** The number of the question that last came to a vertex. */
    private final int[] seenIn;

    private final int[] parentEdge;
    private final int[] queue;
    private int question;

    /** Prepares to search one graph, O(n). */
    public PathSearch(IndexGraph graph) {
        int n = graph.vertexCount();
        this.graph = graph;
        this.seenIn = new int[n];
        this.parentEdge = new int[n];
        this.queue = new int[n];
    }

    /** {@return a path with the fewest edges between two vertices, without edges if they are the same, or nothing} */
    public Optional<Walk> fewestEdges(int from, int to) {
        return fewestEdges(from, v -> v == to, e -> true);
    }

    /** {@return a path with the fewest edges from a vertex to any goal, over passable edges only, or nothing} */
    public Optional<Walk> fewestEdges(int from, IntPredicate goal, IntPredicate passable) {
        question++;
        int tail = 0;
        seenIn[from] = question;
        parentEdge[from] = -1;
        queue[tail++] = from;
        for (int head = 0; head < tail; head++) {
            int v = queue[head];
            if (goal.test(v)) {
                return Optional.of(Walk.upFrom(graph, v, u -> parentEdge[u]).reversed());
            }
            for (int end = graph.endSlot(v), s = graph.firstSlot(v); s < end; s = graph.nextSlot(s, end)) {
                int w = graph.slotVertex(s);
                if (seenIn[w] != question && passable.test(graph.slotEdge(s))) {
                    seenIn[w] = question;
                    parentEdge[w] = graph.slotEdge(s);
                    queue[tail++] = w;
                }
            }
        }
        return Optional.empty();
    }

    /** {@return a cycle through the edge with the fewest edges, taking the edge first, or nothing if it is a bridge} */
    public Optional<Walk> shortestCycle(int edge) {
        int start = graph.from(edge);
        return fewestEdges(graph.to(edge), v -> v == start, e -> e != edge).map(back -> {
            int[] edges = new int[back.edgeCount() + 1];
            edges[0] = edge;
            System.arraycopy(back.edges(), 0, edges, 1, back.edgeCount());
            return Walk.along(graph, start, edges);
        });
    }
}
