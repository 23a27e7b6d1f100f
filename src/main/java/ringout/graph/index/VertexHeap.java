package ringout.graph.index;

import java.util.Arrays;

/**
 * A binary heap of vertices with the least key on top and keys that may fall; ties go to the lower vertex number, so
 * that the order of removal depends on nothing but the keys.
 */
final class VertexHeap {
    private static final int ABSENT = -1;

    private final double[] keys;
    private final int[] heap;
    private final int[] place;
    private int size;

    VertexHeap(int vertexCount) {
        keys = new double[vertexCount];
        heap = new int[vertexCount];
        place = new int[vertexCount];
        Arrays.fill(place, ABSENT);
    }

    boolean isEmpty() {
        return size == 0;
    }

    /** Inserts the vertex, or lowers its key if it is there; a key that is not lower is ignored. */
    void offer(int vertex, double key) {
        if (place[vertex] == ABSENT) {
            place[vertex] = size;
            heap[size++] = vertex;
        } else if (key >= keys[vertex]) {
            return;
        }
        keys[vertex] = key;
        siftUp(place[vertex]);
    }

    /** Removes the vertex with the least key. */
    int poll() {
        int top = heap[0];
        int last = heap[--size];
        place[top] = ABSENT;
        if (size > 0) {
            put(0, last);
            siftDown(0);
        }
        return top;
    }

    private void siftUp(int from) {
        int at = from;
        int vertex = heap[at];
        while (at > 0 && before(vertex, heap[(at - 1) >>> 1])) {
            put(at, heap[(at - 1) >>> 1]);
            at = (at - 1) >>> 1;
        }
        put(at, vertex);
    }

    private void siftDown(int from) {
        int at = from;
        int vertex = heap[at];
        for (int child = 1; child < size; child = 2 * at + 1) {
            if (child + 1 < size && before(heap[child + 1], heap[child])) {
                child++;
            }
            if (!before(heap[child], vertex)) {
                break;
            }
            put(at, heap[child]);
            at = child;
        }
        put(at, vertex);
    }

    private void put(int at, int vertex) {
        heap[at] = vertex;
        place[vertex] = at;
    }

    private boolean before(int a, int b) {
        return keys[a] < keys[b] || (keys[a] == keys[b] && a < b);
    }
}
