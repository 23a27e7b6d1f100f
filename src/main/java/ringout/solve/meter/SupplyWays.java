package ringout.solve.meter;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.EdgeKind;
import ringout.graph.Trail;
import ringout.graph.Wiring;
import ringout.graph.index.Walk;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SupplyTree;
import ringout.model.Lead;

/** The ways by which voltage comes to two points: from the pack, or back to its minus. */
final class SupplyWays {
    private final Circuit circuit;
    private final Wiring wiring;
    private final PowerGraph power;
    private final List<VoltsAnswer.Way> ways = new ArrayList<>();
    private final Set<Integer> edges = new LinkedHashSet<>();
    private final Set<Integer> roots = new LinkedHashSet<>();

    SupplyWays(Circuit circuit, int a, int b) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.power = PowerGraph.of(circuit);
        find(a);
        find(b);
    }

    private void find(int vertex) {
        SupplyTree tree = power.tree();
        if (!back(vertex).isPresent() && tree.reaches(vertex)) {
            for (int v = vertex; tree.edgeTo(v) >= 0; v = tree.pointBefore(v)) {
                edges.add(tree.edgeTo(v));
            }
            roots.add(tree.rootOf(vertex));
            tree.trailTo(vertex).ifPresent(trail -> add(true, trail));
        } else {
            back(vertex).ifPresent(this::add);
        }
    }

    private void add(Walk walk) {
        for (int edge : walk.edges()) {
            edges.add(edge);
        }
        add(false, Trail.of(wiring, walk));
    }

    private void add(boolean supply, Trail trail) {
        Set<Lead> rows = new LinkedHashSet<>();
        for (Trail.Step step : trail.steps()) {
            if (step.kind() == Trail.Kind.LEAD) {
                wiring.aircraft().leads().stream()
                        .filter(lead -> lead.id().equals(step.name()))
                        .findFirst()
                        .ifPresent(rows::add);
            }
        }
        ways.add(new VoltsAnswer.Way(supply, trail, List.copyOf(rows)));
    }

    /** The way from the minus of the lowest pack, when the point lies on its tie. */
    private Optional<Walk> back(int vertex) {
        int tie = power.ties().of(vertex);
        for (PowerSource source : power.sources()) {
            boolean lowest = power.works(source)
                    && source.minus() >= 0
                    && power.bottom(source).index() == source.index();
            if (lowest && power.ties().of(source.minus()) == tie) {
                return power.walk(source.minus(), vertex);
            }
        }
        return Optional.empty();
    }

    /** The ways, first the one to the first point. */
    List<VoltsAnswer.Way> all() {
        return ways;
    }

    /** Edges of the ways, each once. */
    Set<Integer> edges() {
        return edges;
    }

    /** The plus vertices of the lowest packs that the ways start from. */
    Set<Integer> roots() {
        return roots;
    }

    /** The conductor nearest to the first point on its way. */
    Optional<Integer> lastConductor() {
        return edges.stream()
                .filter(edge -> wiring.kind(edge) == EdgeKind.CONDUCTOR)
                .findFirst();
    }

    Circuit circuit() {
        return circuit;
    }
}
