package ringout.graph.returns;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.EdgeKind;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.index.IndexGraph;
import ringout.graph.index.WidestForest;
import ringout.graph.index.WidestPaths;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Ties;
import ringout.graph.wire.Ampacity;
import ringout.model.PinRole;

/**
 * The 0V graph of a circuit: everything a return current can take, each conductor with its ampacity; contacts, joins inside
 * units and parts that drop next to nothing count as unlimited, a diode in a return as well. <em>Has ground</em> is
 * reachability, <em>has enough ground</em> is the widest path. Conductors of one lead side by side between the same two
 * points count together, at 0.8 of their sum, since parallel contacts do not share evenly (common practice, no source).
 */
public final class ReturnGraph {
    private static final double UNEVEN = 0.8;

    private final Wiring wiring;
    private final IndexGraph graph;
    private final BitSet zeroTies = new BitSet();
    private final Ties ties;
    private final Ampacity[] ampacity;
    private final WidestForest least;
    private final WidestForest most;
    private final Map<Integer, WidestPaths> paths = new HashMap<>();

    private ReturnGraph(Circuit circuit) {
        wiring = circuit.wiring();
        ties = Ties.of(circuit);
        graph = circuit.live()
                .onlyEdges(edge -> wiring.kind(edge) != EdgeKind.PART
                        || carries(wiring.parts().get(wiring.ref(edge))));
        findZeros(circuit);
        ampacity = new Ampacity[wiring.wires().size()];
        Arrays.fill(ampacity, new Ampacity(0, 0));
        List<Wire> returns = measure();
        least = forest(returns, true);
        most = returns.stream().allMatch(wire -> ampacity[wire.index()].isKnown()) ? least : forest(returns, false);
    }

    /** The 0V graph of a circuit, found once. */
    public static ReturnGraph of(Circuit circuit) {
        return circuit.know(ReturnGraph.class, ReturnGraph::new);
    }

    private static boolean carries(Part part) {
        return Ties.isTie(part) || PowerGraph.isDiode(part);
    }

    private void findZeros(Circuit circuit) {
        for (int pin = 0; pin < wiring.pinCount(); pin++) {
            if (wiring.is(pin, PinRole.ZERO_V) || wiring.is(pin, PinRole.PACK_MINUS)) {
                zeroTies.set(ties.of(pin));
            }
        }
        for (PowerSource source : PowerGraph.of(circuit).sources()) {
            if (source.minus() >= 0) {
                zeroTies.set(ties.of(source.minus()));
            }
        }
    }

    private List<Wire> measure() {
        List<Wire> returns = new ArrayList<>();
        List<Wire> wires = wiring.wires();
        for (Wire wire : wires) {
            if (zeroTies.get(ties.of(wire.fromEnd()))) {
                returns.add(wire);
                ampacity[wire.index()] = Ampacity.of(wire);
            }
        }
        for (int i = 0; i < returns.size(); ) {
            int end = i + 1;
            while (end < returns.size() && sideBySide(returns.get(i), returns.get(end))) {
                end++;
            }
            if (end > i + 1) {
                together(returns.subList(i, end));
            }
            i = end;
        }
        return returns;
    }

    private boolean sideBySide(Wire a, Wire b) {
        return a.leadIndex() == b.leadIndex()
                && inside(a.fromPin()) == inside(b.fromPin())
                && inside(a.toPin()) == inside(b.toPin());
    }

    /** The point inside its unit a pin belongs to, or the pin itself. */
    private int inside(int pin) {
        int unit = wiring.unitOf(pin);
        int point = wiring.directory().layout(unit).pointOf(wiring.localPin(pin));
        return point < 0 ? pin : wiring.firstPoint(unit) + point;
    }

    private void together(List<Wire> wires) {
        double low = wires.stream().mapToDouble(w -> ampacity[w.index()].low()).sum();
        double high =
                wires.stream().mapToDouble(w -> ampacity[w.index()].high()).sum();
        wires.forEach(w -> ampacity[w.index()] = new Ampacity(low * UNEVEN, high * UNEVEN));
    }

    private WidestForest forest(List<Wire> returns, boolean low) {
        WidestForest forest = new WidestForest(graph.vertexCount());
        List<Wire> ordered = new ArrayList<>(returns);
        ordered.sort((a, b) -> Double.compare(width(b, low), width(a, low)));
        for (int edge = 0; edge < graph.edgeBound(); edge++) {
            if (graph.hasEdge(edge)
                    && wiring.kind(edge) != EdgeKind.CONDUCTOR
                    && zeroTies.get(ties.of(graph.from(edge)))) {
                forest.offer(graph.from(edge), graph.to(edge), Double.POSITIVE_INFINITY);
            }
        }
        ordered.forEach(wire -> forest.offer(wire.fromEnd(), wire.toEnd(), width(wire, low)));
        return forest;
    }

    private double width(Wire wire, boolean low) {
        Ampacity carries = ampacity[wire.index()];
        return low ? carries.low() : carries.high();
    }

    /** Whether a return current gets from one point to another at all. */
    public boolean reaches(int from, int to) {
        return least.joined(from, to);
    }

    /** A number that all points have in common between which a return current gets at all. */
    public int island(int vertex) {
        return least.island(vertex);
    }

    /** The width of the widest way between two points: what it carries at least, and at most, by what is known. */
    public Ampacity width(int from, int to) {
        return new Ampacity(least.width(from, to), most.width(from, to));
    }

    /** What a conductor carries here, with the others of its lead that run side by side with it. */
    public Ampacity ampacity(Wire wire) {
        return ampacity[wire.index()];
    }

    /** The widest way from one point to another by the most each conductor may carry, and what limits it, if there is one. */
    public Optional<ReturnWay> way(int from, int to) {
        if (!reaches(from, to)) {
            return Optional.empty();
        }
        WidestPaths widest = paths.computeIfAbsent(to, key -> WidestPaths.from(graph, this::capacity, key));
        return widest.reached(from) ? Optional.of(ReturnWay.of(wiring, widest.pathTo(from))) : Optional.empty();
    }

    /** The graph; of its edges only some are of 0V. */
    IndexGraph graph() {
        return graph;
    }

    /** Whether an edge is one of 0V. */
    boolean holds(int edge) {
        return zeroTies.get(ties.of(graph.from(edge)));
    }

    private double capacity(int edge) {
        return wiring.kind(edge) == EdgeKind.CONDUCTOR ? ampacity[wiring.ref(edge)].high() : Double.POSITIVE_INFINITY;
    }
}
