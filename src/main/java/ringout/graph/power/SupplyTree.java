package ringout.graph.power;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.EdgeKind;
import ringout.graph.Part;
import ringout.graph.Trail;
import ringout.graph.Wiring;
import ringout.graph.index.IndexGraph;
import ringout.graph.index.Walk;

/**
 * How power gets from the packs to every supply point by the fewest steps: over conductors, contacts, joins and ties either
 * way, through diodes and working regulators forwards only. Where two sources feed a point it belongs to the nearer one.
 */
public final class SupplyTree {
    private static final int UNREACHED = -2;
    private static final int ROOT = -1;

    private final Wiring wiring;
    private final IndexGraph live;
    private final BitSet sourceParts = new BitSet();
    private final int[] parentEdge;
    private final int[] order;
    private int count;

    SupplyTree(Circuit circuit, List<PowerSource> sources, BitSet on, Stacks stacks) {
        wiring = circuit.wiring();
        live = circuit.live();
        parentEdge = new int[live.vertexCount()];
        order = new int[live.vertexCount()];
        Arrays.fill(parentEdge, UNREACHED);
        for (PowerSource source : sources) {
            if (on.get(source.index())) {
                if (source.part() >= 0) {
                    sourceParts.set(source.part());
                }
                if (stacks.isBottom(source)) {
                    enter(source.plus(), ROOT);
                }
            }
        }
        for (int head = 0; head < count; head++) {
            spread(order[head]);
        }
    }

    private void enter(int vertex, int edge) {
        if (parentEdge[vertex] == UNREACHED) {
            parentEdge[vertex] = edge;
            order[count++] = vertex;
        }
    }

    private void spread(int vertex) {
        for (int end = live.endSlot(vertex), s = live.firstSlot(vertex); s < end; s = live.nextSlot(s, end)) {
            int edge = live.slotEdge(s);
            if (wiring.kind(edge) != EdgeKind.PART || passes(wiring.parts().get(wiring.ref(edge)), vertex)) {
                enter(live.slotVertex(s), edge);
            }
        }
    }

    private boolean passes(Part part, int from) {
        return Ties.isTie(part) || (part.from() == from && (sourceParts.get(part.index()) || Diode.is(part)));
    }

    /** Number of points power comes to. */
    int count() {
        return count;
    }

    /** The i-th point power comes to; a point comes after the one it is fed through. */
    int vertexAt(int i) {
        return order[i];
    }

    /** Whether power comes to a point. */
    public boolean reaches(int vertex) {
        return parentEdge[vertex] != UNREACHED;
    }

    /** The edge power comes by, or -1 at the plus of a pack and where none comes. */
    public int edgeTo(int vertex) {
        return Math.max(ROOT, parentEdge[vertex]);
    }

    /** The point power comes from, or -1. */
    public int pointBefore(int vertex) {
        int edge = edgeTo(vertex);
        return edge < 0 ? -1 : live.otherEnd(edge, vertex);
    }

    /** The part power passes to come to a point directly, if it comes through one. */
    public Optional<Part> partTo(int vertex) {
        int edge = edgeTo(vertex);
        return edge >= 0 && wiring.kind(edge) == EdgeKind.PART
                ? Optional.of(wiring.parts().get(wiring.ref(edge)))
                : Optional.empty();
    }

    /** The point power starts from on its way to a point, or -1 when none comes. */
    public int rootOf(int vertex) {
        int top = reaches(vertex) ? vertex : -1;
        while (top >= 0 && edgeTo(top) >= 0) {
            top = pointBefore(top);
        }
        return top;
    }

    /** The way power takes from the pack to a point, if it comes there. */
    public Optional<Trail> trailTo(int vertex) {
        if (!reaches(vertex)) {
            return Optional.empty();
        }
        int length = 0;
        int top = rootOf(vertex);
        for (int v = vertex; v != top; v = pointBefore(v)) {
            length++;
        }
        int[] edges = new int[length];
        for (int v = vertex; edgeTo(v) >= 0; v = pointBefore(v)) {
            edges[--length] = edgeTo(v);
        }
        return Optional.of(Trail.of(wiring, Walk.along(live, top, edges)));
    }
}
