package ringout.graph.loss;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.index.IndexGraph;

/**
 * Builds a directed graph in which everything that can let go is a vertex of its own, so that the dominators of a point are
 * the items without which nothing reaches it. Pins joined inside a unit are one vertex. A conductor is a way
 * point, plug, fuse, lead, plug, point; conductors of one lead between the same two points share their vertices, since a lead
 * lets go as one.
 */
final class WayBuilder {
    private static final int NONE = -1;

    /** An item at a place: the point it hangs on, for a lead both. */
    private record Key(int item, int a, int b) {}

    private final Circuit circuit;
    private final Wiring wiring;
    private final Items items;
    private final Grain grain;
    private final Map<Key, Integer> nodes = new HashMap<>();
    private final Map<Integer, Integer> points = new HashMap<>();
    private final Map<Integer, Part> fuses;
    private int[] itemOf = new int[256];
    private int count;
    private int[] from = new int[512];
    private int[] to = new int[512];
    private int edges;

    WayBuilder(Circuit circuit, Grain grain) {
        this.grain = grain;
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.items = Items.of(circuit);
        this.fuses = circuit.know(LeadFuses.class, LeadFuses::new).byWire;
    }

    /** The fuses of leads by their conductors, found once. */
    private static final class LeadFuses {
        private final Map<Integer, Part> byWire = new HashMap<>();

        private LeadFuses(Circuit circuit) {
            for (Part part : circuit.wiring().parts()) {
                if (part.origin() instanceof Part.LeadFuse fuse) {
                    byWire.put(fuse.wire(), part);
                }
            }
        }
    }

    /** The point a vertex of the typed graph belongs to: the one inside its unit, else itself. */
    int point(int vertex) {
        if (!wiring.isPin(vertex)) {
            return vertex;
        }
        int unit = wiring.unitOf(vertex);
        int inside = wiring.directory().layout(unit).pointOf(wiring.localPin(vertex));
        return inside < 0 || !circuit.aboard(unit) ? vertex : wiring.firstPoint(unit) + inside;
    }

    /** The vertex of a point, made when it is not there yet. */
    int at(int vertex) {
        int point = point(vertex);
        Integer known = points.get(point);
        if (known != null) {
            return known;
        }
        int unit = wiring.unitOf(point);
        int made = make(unit < 0 ? NONE : items.unit(unit));
        points.put(point, made);
        return made;
    }

    /** A vertex for an item, or for nothing that can let go when the item is -1. */
    int make(int item) {
        if (count == itemOf.length) {
            itemOf = Arrays.copyOf(itemOf, count * 2);
        }
        itemOf[count] = item;
        return count++;
    }

    private int shared(int item, int a, int b) {
        Key key = new Key(item, a, b);
        Integer known = nodes.get(key);
        if (known != null) {
            return known;
        }
        int made = make(item);
        nodes.put(key, made);
        return made;
    }

    /** Adds one direction. */
    void one(int a, int b) {
        if (edges == from.length) {
            from = Arrays.copyOf(from, edges * 2);
            to = Arrays.copyOf(to, edges * 2);
        }
        from[edges] = a;
        to[edges++] = b;
    }

    /** Adds both directions. */
    void both(int a, int b) {
        if (a != b) {
            one(a, b);
            one(b, a);
        }
    }

    /** Whether a conductor and both its contacts conduct. */
    boolean conducts(Wire wire) {
        return circuit.live().hasEdge(wiring.conductorEdge(wire))
                && circuit.live().hasEdge(wiring.fromContactEdge(wire))
                && circuit.live().hasEdge(wiring.toContactEdge(wire));
    }

    /** Adds a conductor that conducts. */
    void wire(Wire wire) {
        int a = point(wire.fromPin());
        int b = point(wire.toPin());
        int lead = grain == Grain.WIRE
                ? make(items.wire(wire.index()))
                : shared(items.lead(wire.leadIndex()), Math.min(a, b), Math.max(a, b));
        int nearLead = lead;
        Part fuse = fuses.get(wire.index());
        if (fuse != null) {
            nearLead = make(items.part(fuse.index()));
            both(nearLead, lead);
        }
        end(wire.fromPin(), a, nearLead);
        end(wire.toPin(), b, lead);
    }

    private void end(int pin, int point, int lead) {
        int at = at(point);
        int plug = wiring.directory().isJoint(wiring.unitOf(pin)) ? at : shared(items.plugOf(pin), point, NONE);
        both(at, plug);
        both(plug, lead);
    }

    /** Adds items one after the other between two vertices. */
    void chain(int a, Iterable<Integer> between, int b) {
        int last = a;
        for (int item : between) {
            int next = make(item);
            both(last, next);
            last = next;
        }
        both(last, b);
    }

    /** Adds a part, one way or both. */
    int part(int a, int b, int item, boolean bothWays) {
        int middle = make(item);
        one(at(a), middle);
        one(middle, at(b));
        if (bothWays) {
            one(at(b), middle);
            one(middle, at(a));
        }
        return middle;
    }

    /** The graph as built, with a root in front of the given vertices. */
    Ways build(List<Integer> starts) {
        int root = make(NONE);
        starts.forEach(start -> one(root, start));
        IndexGraph graph = IndexGraph.directed(count, Arrays.copyOf(from, edges), Arrays.copyOf(to, edges));
        Map<Integer, List<Integer>> places = new TreeMap<>();
        nodes.forEach((key, node) ->
                places.computeIfAbsent(key.item(), item -> new ArrayList<>()).add(node));
        return new Ways(graph, root, Arrays.copyOf(itemOf, count), Map.copyOf(points), places, this::point);
    }
}
