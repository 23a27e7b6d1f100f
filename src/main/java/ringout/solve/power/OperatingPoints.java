package ringout.solve.power;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.solve.dc.DcOutcome;
import ringout.solve.dc.DcSolver;
import ringout.solve.dc.SolvedPoint;

/** The operating points of one circuit, each solved at the first question. */
final class OperatingPoints {
    private final Circuit circuit;
    private final Map<WireTemperature, ConductorNet> nets = new EnumMap<>(WireTemperature.class);
    private Optional<DcSolver> first = Optional.empty();
    private final Map<LoadCase, OperatingPoint> known = new HashMap<>();
    private final Map<LoadCase, Double> margins = new HashMap<>();

    OperatingPoints(Circuit circuit) {
        this.circuit = circuit;
    }

    OperatingPoint at(LoadCase of) {
        OperatingPoint point = known.get(of);
        if (point == null) {
            point = solve(model(of));
            known.put(of, point);
        }
        return point;
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
