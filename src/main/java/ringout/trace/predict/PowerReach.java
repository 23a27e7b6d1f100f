package ringout.trace.predict;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.EdgeKind;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.PartKind;
import ringout.solve.PartResistance;
import ringout.solve.meter.Change;

/**
 * Where power comes after some changes, and where it finds its way back. A short lets the weakest fuse between it and the
 * source open, else the source before it stops; what dies with them is found by walking again.
 *
 * <p>Does not see how much: a way that is too thin counts as a way. Where two sources feed a short, the way the walk found
 * first opens first, then the other.
 */
final class PowerReach {
    private static final int MOST_ROUNDS = 12;

    /** What a fault joined: edge, or {@link Edited#SHORT}. */
    private record Join(int edge, int a, int b) {}

    /** What conducts power in the healthy circuit, and the diodes; found once. */
    private record Passing(BitSet edges, List<Part> diodes) {
        private static Passing of(Circuit circuit) {
            return circuit.know(Passing.class, Passing::find);
        }

        private static Passing find(Circuit circuit) {
            Wiring wiring = circuit.wiring();
            BitSet edges = new BitSet();
            for (int edge = 0; edge < wiring.graph().edgeBound(); edge++) {
                boolean part = wiring.kind(edge) == EdgeKind.PART;
                edges.set(edge, !part || conducts(wiring.parts().get(wiring.ref(edge))));
            }
            return new Passing(
                    edges, wiring.parts().stream().filter(PowerGraph::isDiode).toList());
        }

        private static boolean conducts(Part part) {
            boolean resistor = part.origin() instanceof Part.Inner inner
                    && inner.part().kind().is(PartKind.RESISTOR);
            return !resistor && PartResistance.ohm(part).isPresent();
        }
    }

    private static final int NOT = -1;

    private final Edited edited;
    private final Wiring wiring;
    private final PowerGraph power;
    private final BitSet off = new BitSet();
    private final BitSet blown = new BitSet();
    private final BitSet waiting = new BitSet();
    private final Set<String> opened = new TreeSet<>();
    private final BitSet fed = new BitSet();
    private final BitSet back = new BitSet();
    private final Passing passing;
    /** How power came to a vertex: over an edge from another, or from a source; {@link #NOT} where it did not so. */
    private final int[] cameOver;

    private final int[] cameFrom;
    private final int[] cameSource;

    PowerReach(Edited edited, Set<Integer> sourcesOff) {
        this.edited = edited;
        this.wiring = edited.wiring();
        this.power = PowerGraph.of(edited.circuit());
        this.passing = Passing.of(edited.circuit());
        int vertices = wiring.graph().vertexCount();
        this.cameOver = new int[vertices];
        this.cameFrom = new int[vertices];
        this.cameSource = new int[vertices];
        sourcesOff.forEach(off::set);
        List<Join> joins = joins();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            walk();
            boolean again = false;
            for (Join join : joins) {
                again |= settle(join);
            }
            if (!again) {
                break;
            }
        }
    }

    private List<Join> joins() {
        List<Join> joins = new ArrayList<>();
        for (Change change : edited.changes()) {
            if (change instanceof Change.Added added && !edited.instead(added)) {
                joins.add(new Join(Edited.SHORT, added.a(), added.b()));
            } else if (change instanceof Change.Moved moved) {
                joins.add(new Join(moved.element(), moved.a(), moved.b()));
                waiting.set(moved.element());
            }
        }
        return joins;
    }

    /** Lets a join carry power once it is no short, or opens what its short opens; whether anything changed. */
    private boolean settle(Join join) {
        int hot = shorts(join.a(), join.b()) ? join.a() : shorts(join.b(), join.a()) ? join.b() : -1;
        if (hot >= 0) {
            return open(hot);
        }
        if (join.edge() >= 0 && waiting.get(join.edge())) {
            waiting.clear(join.edge());
            return true;
        }
        return false;
    }

    private boolean shorts(int plus, int zero) {
        return fed.get(plus) && back.get(zero);
    }

    private boolean open(int vertex) {
        int weakest = -1;
        double rating = Double.POSITIVE_INFINITY;
        int at = vertex;
        while (cameSource[at] == NOT && cameFrom[at] != NOT) {
            double amps = fuseAmps(cameOver[at]);
            if (amps < rating) {
                rating = amps;
                weakest = cameOver[at];
            }
            at = cameFrom[at];
        }
        int source = cameSource[at];
        if (weakest >= 0) {
            blown.set(weakest);
            opened.add(fuseName(wiring.parts().get(wiring.ref(weakest))));
            return true;
        }
        if (source == NOT || off.get(source)) {
            return false;
        }
        off.set(source);
        opened.add(power.sources().get(source).name());
        return true;
    }

    private double fuseAmps(int edge) {
        if (edge < 0 || wiring.kind(edge) != EdgeKind.PART) {
            return Double.POSITIVE_INFINITY;
        }
        Part part = wiring.parts().get(wiring.ref(edge));
        if (part.origin() instanceof Part.LeadFuse fuse) {
            return fuse.ratingA();
        }
        return part.origin() instanceof Part.Inner inner && inner.part().kind().is(PartKind.FUSE)
                ? inner.part().rating().ratingA().or(Double.MAX_VALUE)
                : Double.POSITIVE_INFINITY;
    }

    private String fuseName(Part part) {
        if (part.origin() instanceof Part.LeadFuse fuse) {
            return "fuse in " + wiring.wires().get(fuse.wire()).lead().id();
        }
        Part.Inner inner = (Part.Inner) part.origin();
        return wiring.directory().name(inner.unit()) + " " + inner.part().name();
    }

    private void walk() {
        fed.clear();
        back.clear();
        Arrays.fill(cameFrom, NOT);
        Arrays.fill(cameSource, NOT);
        for (PowerSource source : power.sources()) {
            boolean lowest = source.inputs().isEmpty()
                    && source.minus() >= 0
                    && power.works(source)
                    && power.bottom(source).index() == source.index();
            if (lowest) {
                floodBack(source.minus());
            }
        }
        boolean more = true;
        while (more) {
            more = false;
            for (PowerSource source : power.sources()) {
                more |= runs(source) && starts(source);
            }
            for (Part diode : passing.diodes()) {
                more |= passes(diode);
            }
        }
    }

    private boolean passes(Part diode) {
        boolean whole = edited.circuit().live().hasEdge(diode.edge()) && !edited.hides(diode.edge());
        if (!whole || !fed.get(diode.from()) || fed.get(diode.to()) || back.get(diode.to())) {
            return false;
        }
        came(diode.to(), diode.edge(), diode.from());
        floodFed(diode.to());
        return true;
    }

    private boolean runs(PowerSource source) {
        boolean whole = source.part() < 0
                || !edited.hides(wiring.parts().get(source.part()).edge());
        return power.works(source) && whole && !off.get(source.index());
    }

    private boolean starts(PowerSource source) {
        if (fed.get(source.plus()) || back.get(source.plus())) {
            return false;
        }
        boolean isolated = source.kind() == PowerSource.Kind.CONVERTER;
        boolean zero = source.minus() < 0 || back.get(source.minus()) || fed.get(source.minus());
        boolean input = source.inputs().isEmpty() || source.inputs().stream().anyMatch(fed::get);
        if (!input || (!zero && !isolated)) {
            return false;
        }
        if (isolated && source.minus() >= 0) {
            floodBack(source.minus());
        }
        cameSource[source.plus()] = source.index();
        floodFed(source.plus());
        return true;
    }

    private void floodFed(int start) {
        flood(fed, back, start, true);
    }

    private void floodBack(int start) {
        flood(back, fed, start, false);
    }

    private void flood(BitSet into, BitSet never, int start, boolean remember) {
        ArrayDeque<Integer> open = new ArrayDeque<>();
        if (!into.get(start) && !never.get(start)) {
            into.set(start);
            open.add(start);
        }
        while (!open.isEmpty()) {
            int vertex = open.remove();
            edited.each(vertex, (edge, other) -> {
                if (conducts(edge) && !into.get(other) && !never.get(other)) {
                    into.set(other);
                    if (remember) {
                        came(other, edge, vertex);
                    }
                    open.add(other);
                }
            });
        }
    }

    /** A short is dealt with on its own; what was moved waits until it is seen to be none. */
    private boolean conducts(int edge) {
        if (edge < 0) {
            return edge == Edited.INSTEAD;
        }
        return passing.edges().get(edge) && !blown.get(edge) && !waiting.get(edge);
    }

    private void came(int vertex, int edge, int from) {
        cameOver[vertex] = edge;
        cameFrom[vertex] = from;
    }

    /** Whether a rail of a unit has power and a way back. */
    boolean lit(Consumer consumer) {
        return fed.get(consumer.plus()) && (consumer.zero() < 0 || back.get(consumer.zero()));
    }

    /** Whether power comes to a vertex. */
    boolean fed(int vertex) {
        return fed.get(vertex);
    }

    /** Whether a vertex is joined to the zero of its supply. */
    boolean returned(int vertex) {
        return back.get(vertex);
    }

    /** Fuses that opened and sources that stopped because of a short, by name. */
    Set<String> opened() {
        return Collections.unmodifiableSet(opened);
    }

    /** Edges of fuses that opened because of a short. */
    BitSet blown() {
        return (BitSet) blown.clone();
    }

    /** Numbers of sources that are off or stopped. */
    BitSet off() {
        return (BitSet) off.clone();
    }
}
