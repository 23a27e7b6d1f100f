package ringout.graph.index;

import java.util.Arrays;
import java.util.BitSet;

/**
 * One run of the Lengauer-Tarjan method. It works on the numbers of a depth-first search: 0 is an imaginary root above
 * all roots, 1 to k are the reached vertices in the order of their first visit.
 */
final class DominatorSearch {
    private static final int NONE = -1;

    private final IndexGraph graph;
    private final int[] numberOf;
    private int[] vertex;
    private int[] parent;
    private int reached;

    private final int[] semi;
    private final int[] dominator;
    private final int[] ancestor;
    private final int[] label;
    private final int[] stack;

    DominatorSearch(IndexGraph graph, int... roots) {
        int n = graph.vertexCount();
        this.graph = graph;
        numberOf = new int[n];
        vertex = new int[n + 1];
        parent = new int[n + 1];
        Arrays.fill(numberOf, NONE);
        visit(roots);
        vertex = Arrays.copyOf(vertex, reached + 1);
        parent = Arrays.copyOf(parent, reached + 1);
        semi = new int[reached + 1];
        dominator = new int[reached + 1];
        ancestor = new int[reached + 1];
        label = new int[reached + 1];
        stack = new int[reached + 1];
        Arrays.fill(ancestor, NONE);
        for (int i = 0; i <= reached; i++) {
            semi[i] = i;
            label[i] = i;
        }
        solve(roots);
    }

    /** The vertex of each number; the entry for 0 has no meaning. */
    int[] vertices() {
        return vertex;
    }

    /** The number of the immediate dominator of each number. */
    int[] dominators() {
        return dominator;
    }

    private void visit(int[] roots) {
        int[] cursor = new int[graph.vertexCount()];
        for (int root : roots) {
            if (numberOf[root] == NONE) {
                enter(root, 0, cursor);
                descend(reached, cursor);
            }
        }
    }

    private void descend(int first, int[] cursor) {
        int i = first;
        while (i >= first) {
            int v = vertex[i];
            int s = cursor[v];
            int end = graph.endSlot(v);
            if (s >= end) {
                i = parent[i];
                continue;
            }
            cursor[v] = graph.nextSlot(s, end);
            int w = graph.slotVertex(s);
            if (numberOf[w] == NONE) {
                enter(w, i, cursor);
                i = reached;
            }
        }
    }

    private void enter(int v, int parentNumber, int[] cursor) {
        numberOf[v] = ++reached;
        vertex[reached] = v;
        parent[reached] = parentNumber;
        cursor[v] = graph.firstSlot(v);
    }

    private void solve(int[] roots) {
        IndexGraph back = graph.reversed();
        BitSet isRoot = new BitSet();
        for (int root : roots) {
            isRoot.set(numberOf[root]);
        }
        // Numbers waiting for their semidominator to be linked, as one chain per semidominator.
        int[] firstWaiting = new int[reached + 1];
        int[] nextWaiting = new int[reached + 1];
        for (int i = reached; i > 0; i--) {
            // Not set in advance: until its turn comes, a number must count as its own semidominator.
            semi[i] = isRoot.get(i) ? 0 : semidominator(back, i);
            nextWaiting[i] = firstWaiting[semi[i]];
            firstWaiting[semi[i]] = i;
            ancestor[i] = parent[i];
            for (int j = firstWaiting[parent[i]]; j > 0; j = nextWaiting[j]) {
                int best = evaluate(j);
                dominator[j] = semi[best] < semi[j] ? best : parent[i];
            }
            firstWaiting[parent[i]] = 0;
        }
        for (int i = 1; i <= reached; i++) {
            if (dominator[i] != semi[i]) {
                dominator[i] = dominator[dominator[i]];
            }
        }
    }

    private int semidominator(IndexGraph back, int i) {
        int best = parent[i];
        int v = vertex[i];
        for (int end = back.endSlot(v), s = back.firstSlot(v); s < end; s = back.nextSlot(s, end)) {
            int number = numberOf[back.slotVertex(s)];
            if (number != NONE) {
                best = Math.min(best, semi[evaluate(number)]);
            }
        }
        return best;
    }

    /** The number with the least semidominator on the linked way above, shortening that way. */
    private int evaluate(int number) {
        if (ancestor[number] == NONE) {
            return label[number];
        }
        int top = 0;
        int u = number;
        while (ancestor[ancestor[u]] != NONE) {
            stack[top++] = u;
            u = ancestor[u];
        }
        while (top > 0) {
            int w = stack[--top];
            int above = ancestor[w];
            if (semi[label[above]] < semi[label[w]]) {
                label[w] = label[above];
            }
            ancestor[w] = ancestor[above];
        }
        return label[number];
    }
}
