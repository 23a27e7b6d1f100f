package ringout.trace.predict;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import ringout.graph.Circuit;
import ringout.graph.EdgeKind;
import ringout.graph.Wiring;
import ringout.graph.index.IndexGraph;
import ringout.solve.meter.Change;

/** A circuit with a few changes over it: what conducts at a vertex after them. The circuit itself stays as it is. */
final class Edited {
    /** Edge of a way that a fault added. */
    static final int SHORT = -1;

    /** Edge of a way that stands in the stead of one that is hidden: a bad contact. */
    static final int INSTEAD = -2;

    /** A way between two vertices; its edge, or {@link #SHORT} or {@link #INSTEAD}. */
    record Way(int edge, int other) {}

    /** Takes the ways at a vertex. */
    interface Visitor {
        void way(int edge, int other);
    }

    /** More than this does not join two points for a signal. Judgement, no source. */
    private static final double JOINS_OHM = 100;

    private final Circuit circuit;
    private final Wiring wiring;
    private final IndexGraph graph;
    private final List<Change> changes;
    private final BitSet hidden = new BitSet();
    private final Map<Integer, List<Way>> extra = new HashMap<>();
    private final List<Integer> touched = new ArrayList<>();

    Edited(Circuit circuit, List<Change> changes) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.graph = circuit.live();
        this.changes = changes;
        changes.forEach(this::note);
    }

    private void note(Change change) {
        IndexGraph all = wiring.graph();
        if (change instanceof Change.Opened opened) {
            hidden.set(opened.element());
            touch(all.from(opened.element()), all.to(opened.element()));
        } else if (change instanceof Change.Moved moved) {
            hidden.set(moved.element());
            touch(all.from(moved.element()), all.to(moved.element()));
            join(moved.element(), moved.a(), moved.b());
        } else if (change instanceof Change.Closed closed) {
            int edge = closed.element();
            if (!graph.hasEdge(edge)) {
                join(edge, all.from(edge), all.to(edge));
            }
        } else if (change instanceof Change.Added added && added.ohm() <= JOINS_OHM) {
            join(instead(added) ? INSTEAD : SHORT, added.a(), added.b());
        }
    }

    /** Whether a resistance stands where an edge that is hidden stood. */
    boolean instead(Change.Added added) {
        IndexGraph all = wiring.graph();
        return hidden.stream()
                .anyMatch(edge -> (all.from(edge) == added.a() && all.to(edge) == added.b())
                        || (all.from(edge) == added.b() && all.to(edge) == added.a()));
    }

    private void join(int edge, int a, int b) {
        extra.computeIfAbsent(a, key -> new ArrayList<>()).add(new Way(edge, b));
        extra.computeIfAbsent(b, key -> new ArrayList<>()).add(new Way(edge, a));
        touch(a, b);
    }

    private void touch(int a, int b) {
        touched.add(a);
        touched.add(b);
    }

    Circuit circuit() {
        return circuit;
    }

    Wiring wiring() {
        return wiring;
    }

    List<Change> changes() {
        return changes;
    }

    /** Vertices at which something is not as it was. */
    List<Integer> touched() {
        return touched;
    }

    /** Whether an edge conducts no more where it did. */
    boolean hides(int edge) {
        return hidden.get(edge);
    }

    /** All ways at a vertex after the changes: conductors, contacts, joins, parts, what a fault added. */
    void each(int vertex, Visitor visitor) {
        for (int end = graph.endSlot(vertex), s = graph.firstSlot(vertex); s < end; s = graph.nextSlot(s, end)) {
            int edge = graph.slotEdge(s);
            if (!hidden.get(edge)) {
                visitor.way(edge, graph.slotVertex(s));
            }
        }
        if (!extra.isEmpty()) {
            extra.getOrDefault(vertex, List.of()).forEach(way -> visitor.way(way.edge(), way.other()));
        }
    }

    /** The neighbours that are one point with a vertex: no part between. */
    void joined(int vertex, IntConsumer visitor) {
        each(vertex, (edge, other) -> {
            if (edge < 0 || wiring.kind(edge) != EdgeKind.PART) {
                visitor.accept(other);
            }
        });
    }
}
