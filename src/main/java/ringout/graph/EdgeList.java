package ringout.graph;

import java.util.Arrays;
import ringout.graph.index.IndexGraph;

/** Grows the edges of the typed graph. */
final class EdgeList {
    private int[] from;
    private int[] to;
    private int[] refs;
    private EdgeKind[] kinds;
    private int count;

    EdgeList(int expected) {
        from = new int[expected];
        to = new int[expected];
        refs = new int[expected];
        kinds = new EdgeKind[expected];
    }

    int add(EdgeKind kind, int a, int b, int ref) {
        if (count == from.length) {
            int larger = Math.max(16, count * 2);
            from = Arrays.copyOf(from, larger);
            to = Arrays.copyOf(to, larger);
            refs = Arrays.copyOf(refs, larger);
            kinds = Arrays.copyOf(kinds, larger);
        }
        from[count] = a;
        to[count] = b;
        refs[count] = ref;
        kinds[count] = kind;
        return count++;
    }

    IndexGraph graph(int vertices) {
        return IndexGraph.undirected(vertices, Arrays.copyOf(from, count), Arrays.copyOf(to, count));
    }

    EdgeKind[] kinds() {
        return Arrays.copyOf(kinds, count);
    }

    int[] refs() {
        return Arrays.copyOf(refs, count);
    }
}
