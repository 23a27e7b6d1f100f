package ringout.graph.index;

import java.util.AbstractSet;
import java.util.Iterator;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;

/** A read-only set of the edges in the row of one vertex, ascending by number. */
final class RowSet<E> extends AbstractSet<E> {
    private final IndexGraph graph;
    private final int vertex;
    private final Numbering<E> edges;

    RowSet(IndexGraph graph, int vertex, Numbering<E> edges) {
        this.graph = graph;
        this.vertex = vertex;
        this.edges = edges;
    }

    @Override
    public int size() {
        int size = 0;
        for (int end = graph.endSlot(vertex), s = graph.firstSlot(vertex); s < end; s = graph.nextSlot(s, end)) {
            size++;
        }
        return size;
    }

    @Override
    public boolean isEmpty() {
        return graph.firstSlot(vertex) >= graph.endSlot(vertex);
    }

    @Override
    public boolean contains(@Nullable Object thing) {
        int edge = thing == null ? -1 : edges.number(thing);
        return graph.hasEdge(edge) && (graph.from(edge) == vertex || (!graph.isDirected() && graph.to(edge) == vertex));
    }

    @Override
    public Iterator<E> iterator() {
        return new Iterator<>() {
            private final int end = graph.endSlot(vertex);
            private int slot = graph.firstSlot(vertex);

            @Override
            public boolean hasNext() {
                return slot < end;
            }

            @Override
            public E next() {
                if (!hasNext()) {
                    throw new NoSuchElementException();
                }
                E edge = edges.thing(graph.slotEdge(slot));
                slot = graph.nextSlot(slot, end);
                return edge;
            }
        };
    }
}
