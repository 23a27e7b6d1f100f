package ringout.solve.power;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.solve.dc.DcOutcome;
import ringout.solve.dc.DcSolver;
import ringout.solve.dc.SolvedPoint;

/**
 * The operating points of one circuit, each solved at the first question and kept while there is room: of a large aircraft
 * with a thousand cases, all of them together would fill the memory.
 */
final class OperatingPoints {
    /** Edges of all cases kept together; about a hundred bytes each. */
    private static final int ROOM = 2_000_000;

    private static final int AT_LEAST = 8;

    private final Circuit circuit;
    private final Map<WireTemperature, ConductorNet> nets = new EnumMap<>(WireTemperature.class);
    private Optional<DcSolver> first = Optional.empty();
    private final Map<LoadCase, OperatingPoint> known = new LinkedHashMap<>(16, 0.75f, true);
    private final Map<LoadCase, Double> margins = new HashMap<>();

    OperatingPoints(Circuit circuit) {
        this.circuit = circuit;
    }

    OperatingPoint at(LoadCase of) {
        OperatingPoint point = known.get(of);
        if (point == null) {
            point = solve(model(of));
            known.put(of, point);
            forgetLongestUnused();
        }
        return point;
    }

    private void forgetLongestUnused() {
        int edges = Math.max(1, circuit.wiring().graph().edgeCount());
        if (known.size() > Math.max(AT_LEAST, ROOM / edges)) {
            Iterator<LoadCase> oldest = known.keySet().iterator();
            oldest.next();
            oldest.remove();
        }
    }

    double margin(LoadCase of) {
        return margins.computeIfAbsent(of, asked -> solver(model(asked)).margin());
    }

    private PowerModel model(LoadCase of) {
        ConductorNet net = nets.computeIfAbsent(of.wires(), warm -> new ConductorNet(circuit, warm));
        return new PowerModel(circuit, net, of);
    }

    /** Cases differ in loads and voltages: what follows from the connections alone is worked out for the first. */
    private DcSolver solver(PowerModel model) {
        DcSolver solver = first.map(known -> known.like(model.dc())).orElseGet(() -> DcSolver.of(model.dc()));
        first = first.or(() -> Optional.of(solver));
        return solver;
    }

    private OperatingPoint solve(PowerModel model) {
        DcOutcome outcome = solver(model).solve();
        if (outcome instanceof SolvedPoint point) {
            return new PowerFlow(model, point);
        }
        if (outcome instanceof DcOutcome.VoltageCollapse collapse) {
            return collapse(model, collapse);
        }
        return new OperatingPoint.Unsettled(model.of(), model.assumed());
    }

    private static OperatingPoint collapse(PowerModel model, DcOutcome.VoltageCollapse collapse) {
        PowerGraph power = PowerGraph.of(model.circuit());
        String limiting = "the loads";
        int unit = -1;
        for (PlacedLoad load : power.loads()) {
            if (model.ofLoad(load.index()) == collapse.element()) {
                unit = load.unit();
                limiting = model.circuit().wiring().directory().name(unit) + " " + load.rail();
            }
        }
        for (PowerSource source : power.sources()) {
            if (model.ofSource(source.index()) == collapse.element()) {
                unit = source.unit();
                limiting = source.name();
            }
        }
        return new OperatingPoint.Collapse(
                model.of(),
                model.assumed(),
                limiting,
                unit,
                collapse.margin(),
                collapse.last().map(point -> new PowerFlow(model, point)));
    }
}
