package ringout.trace.predict;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.solve.meter.Change;
import ringout.solve.network.EdgeChange;
import ringout.solve.network.FactorisedNetwork;
import ringout.solve.network.NetworkSolution;
import ringout.solve.network.NodeVoltage;
import ringout.solve.network.Resolved;
import ringout.solve.network.Resolver;
import ringout.solve.power.LoadCase;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PowerFlow;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Defect;

/**
 * Voltages of the supply with a fault in it, by changes of low rank of the operating point factorised once. Where a change
 * takes nearly all current from a branch the columns on its way are factorised again, so that a cut gives exact zero. A short
 * first opens what {@link PowerReach} finds to open; a regulator whose input falls below half stops.
 *
 * <p>Loads are resistances here: a load of constant power draws less than it should at a lowered voltage, by as much as the
 * voltage is lower, so sags are told a little too small. Each candidate is solved once and kept.
 */
public final class SupplyVolts {
    /** A regulator stops below this part of its usual input. Judgement, no source. */
    private static final double STOPS_BELOW = 0.5;

    /**
     * Points that move less may stay where they were, V. So small because currents are told by the drop over milliohms: a millivolt left out
     * at a pack of 9 milliohm is a tenth of an ampere.
     */
    private static final double TOLERANCE_V = 1e-7;

    /** A short is not quite nothing: what is left of the arc and the wire, in ohm. */
    private static final double SHORT_OHM = 1e-3;

    private static final int MOST_ROUNDS = 6;

    /** A change of less than this part of what a regulator gives is not followed to its input. */
    private static final double FOLLOWS = 0.02;

    private static final double NOTHING = 1e-6;

    private final Circuit circuit;
    private final Optional<Solved> base;
    private final Map<String, Resolved> known = new HashMap<>();

    private record Solved(SupplyModel model, PowerFlow flow, NetworkSolution solution, Resolver resolver) {}

    private record AtRest(SupplyVolts volts) {}

    private SupplyVolts(Circuit circuit, LoadCase loads) {
        this.circuit = circuit;
        this.base = OperatingPoint.of(circuit, loads) instanceof PowerFlow flow
                ? Optional.of(solve(circuit, flow))
                : Optional.empty();
    }

    private static Solved solve(Circuit circuit, PowerFlow flow) {
        PowerReach reach = new PowerReach(new Edited(circuit, List.of()), Set.of());
        SupplyModel model = new SupplyModel(circuit, flow, reach);
        NetworkSolution solution = FactorisedNetwork.of(model.network()).solve();
        return new Solved(model, flow, solution, Resolver.of(solution));
    }

    /** The voltages of a circuit in use, all loads at their average; prepared once. */
    public static SupplyVolts of(Circuit circuit) {
        return circuit.know(SupplyVolts.class, one -> new SupplyVolts(one, LoadCase.AVERAGE));
    }

    /** The voltages at rest, as a hand measures them: everything on, propellers still; prepared once. */
    public static SupplyVolts atRest(Circuit circuit) {
        return circuit.know(AtRest.class, one -> new AtRest(new SupplyVolts(one, LoadCase.IDLE)))
                .volts();
    }

    /** Whether there is an operating point to start from. */
    public boolean told() {
        return base.isPresent();
    }

    /** Volts of one point against another in the healthy circuit; empty where no source holds them. */
    public OptionalDouble healthy(int plus, int zero) {
        return base.map(solved -> volts(solved.solution().between(plus, zero))).orElse(OptionalDouble.empty());
    }

    /** Volts of one point against another with a fault; empty where no source holds them. */
    public OptionalDouble with(Candidate candidate, int plus, int zero) {
        return with(candidate, List.of(), plus, zero);
    }

    /**
     * Volts with a fault and something done for a test: a plug pulled, a load put on.
     *
     * @param candidate the fault
     * @param done changes of the test, none of an element the fault changes
     */
    public OptionalDouble with(Candidate candidate, List<Change> done, int plus, int zero) {
        if (base.isEmpty()) {
            return OptionalDouble.empty();
        }
        Solved solved = base.get();
        Resolved after = done.isEmpty()
                ? known.computeIfAbsent(candidate.id(), id -> resolve(solved, candidate, List.of()))
                : resolve(solved, candidate, done);
        return volts(after.between(plus, zero));
    }

    private static OptionalDouble volts(NodeVoltage found) {
        return found instanceof NodeVoltage.Volts volts ? OptionalDouble.of(volts.value()) : OptionalDouble.empty();
    }

    /** Current out of all packs together with a fault, in A; empty when there is no operating point. */
    public OptionalDouble packAmps(Candidate candidate) {
        if (base.isEmpty()) {
            return OptionalDouble.empty();
        }
        Solved solved = base.get();
        Resolved after = known.computeIfAbsent(candidate.id(), id -> resolve(solved, candidate, List.of()));
        return OptionalDouble.of(bottomAmps(solved, after));
    }

    /** Current out of all packs together in the healthy circuit, in A. */
    public OptionalDouble packAmps() {
        return base.map(solved ->
                        OptionalDouble.of(bottomAmps(solved, solved.resolver().after(0))))
                .orElse(OptionalDouble.empty());
    }

    /** Packs in series carry one current: only the lowest of each stack is counted. */
    private double bottomAmps(Solved solved, Resolved after) {
        PowerGraph power = PowerGraph.of(circuit);
        double sum = 0;
        for (PowerSource source : power.sources()) {
            int element = solved.model().ofSource(source.index());
            boolean counted = source.kind() == PowerSource.Kind.PACK
                    && element >= 0
                    && power.bottom(source).index() == source.index();
            sum += counted ? after.amps(element) : 0;
        }
        return sum;
    }

    /** Rounds: what regulators take follows what they give; those without input stop. */
    private Resolved resolve(Solved solved, Candidate candidate, List<Change> done) {
        Set<Integer> stopped = new TreeSet<>();
        Map<Integer, Double> inputs = new TreeMap<>();
        Map<Integer, Double> ohms = new LinkedHashMap<>();
        List<EdgeChange> added = new ArrayList<>();
        faults(solved.model(), candidate, done, ohms, added, stopped);
        Resolved after = solved.resolver().after(TOLERANCE_V);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Map<Integer, Double> all = new LinkedHashMap<>(ohms);
            inputs.forEach(all::putIfAbsent);
            stopped.forEach(source -> open(solved.model().ofSource(source), all));
            List<EdgeChange> changes = new ArrayList<>(added);
            all.forEach((element, ohm) -> changes.add(new EdgeChange.Changed(element, ohm)));
            after = solved.resolver().after(TOLERANCE_V, changes.toArray(new EdgeChange[0]));
            if (!follow(solved, after, stopped, inputs)) {
                break;
            }
        }
        return after;
    }

    /** Whether a regulator has to be changed because of what the last round found. */
    private static boolean follow(Solved solved, Resolved after, Set<Integer> stopped, Map<Integer, Double> inputs) {
        boolean more = false;
        for (SupplyModel.Regulator regulator : solved.model().regulators()) {
            double in = volts(after.between(regulator.in(), regulator.inZero())).orElse(0);
            if (in < STOPS_BELOW * regulator.inVolts()) {
                more |= stopped.add(regulator.source());
            }
            if (regulator.input() >= 0 && regulator.outAmps() > 0) {
                double out = stopped.contains(regulator.source())
                        ? 0
                        : Math.max(0, after.amps(solved.model().ofSource(regulator.source())));
                double part = out / regulator.outAmps();
                double usual = solved.model().network().ohms(regulator.input());
                double before = usual / inputs.getOrDefault(regulator.input(), usual);
                if (Math.abs(part - before) > FOLLOWS) {
                    inputs.put(regulator.input(), part < NOTHING ? Double.POSITIVE_INFINITY : usual / part);
                    more = true;
                }
            }
        }
        return more;
    }

    /** What the fault and the test do, and which sources and fuses open because of it. */
    private void faults(
            SupplyModel model,
            Candidate candidate,
            List<Change> done,
            Map<Integer, Double> ohms,
            List<EdgeChange> added,
            Set<Integer> stopped) {
        List<Change> all = new ArrayList<>(candidate.changes());
        all.addAll(done);
        all.forEach(change -> note(model, change, all, ohms, added));
        defect(model, candidate.defect(), ohms, stopped);
        if (!added.isEmpty() && !candidate.changes().isEmpty()) {
            PowerReach reach = new PowerReach(new Edited(circuit, candidate.changes()), stopped);
            reach.blown().stream().forEach(edge -> open(model.ofEdge(edge), ohms));
            reach.off().stream().forEach(stopped::add);
        }
    }

    private static void open(int element, Map<Integer, Double> ohms) {
        if (element >= 0) {
            ohms.put(element, Double.POSITIVE_INFINITY);
        }
    }

    private void note(
            SupplyModel model, Change change, List<Change> all, Map<Integer, Double> ohms, List<EdgeChange> added) {
        Wiring wiring = circuit.wiring();
        if (change instanceof Change.Opened opened) {
            open(model.ofEdge(opened.element()), ohms);
            for (PowerSource source : PowerGraph.of(circuit).sources()) {
                boolean here =
                        source.part() >= 0 && wiring.parts().get(source.part()).edge() == opened.element();
                open(here ? model.ofSource(source.index()) : SupplyModel.NONE, ohms);
            }
        } else if (change instanceof Change.Moved moved && model.ofEdge(moved.element()) >= 0) {
            open(model.ofEdge(moved.element()), ohms);
            add(model, moved.a(), moved.b(), SHORT_OHM, added);
        } else if (change instanceof Change.Added join) {
            int instead = insteadOf(model, join, all);
            if (instead >= 0) {
                ohms.put(instead, model.network().ohms(instead) + join.ohm());
            } else {
                add(model, join.a(), join.b(), Math.max(SHORT_OHM, join.ohm()), added);
            }
        }
    }

    /** The element that a bad contact stands for, or none. */
    private int insteadOf(SupplyModel model, Change.Added join, List<Change> all) {
        for (Change change : all) {
            if (change instanceof Change.Opened opened) {
                int a = circuit.wiring().graph().from(opened.element());
                int b = circuit.wiring().graph().to(opened.element());
                boolean same = (a == join.a() && b == join.b()) || (a == join.b() && b == join.a());
                if (same) {
                    return model.ofEdge(opened.element());
                }
            }
        }
        return SupplyModel.NONE;
    }

    private static void add(SupplyModel model, int a, int b, double ohm, List<EdgeChange> added) {
        if (model.holds(a) && model.holds(b) && a != b) {
            added.add(new EdgeChange.Added(a, b, ohm));
        }
    }

    private static void defect(SupplyModel model, Defect defect, Map<Integer, Double> ohms, Set<Integer> stopped) {
        if (defect instanceof Defect.SourceDown down) {
            stopped.add(down.source().index());
        } else if (defect instanceof Defect.Inside in && in.how() == Defect.Inside.How.DEAD) {
            model.loadsOf(in.unit()).forEach(element -> open(element, ohms));
        } else if (defect instanceof Defect.SourceSags sags) {
            int element = model.ofSource(sags.source().index());
            if (element >= 0) {
                ohms.put(
                        element,
                        model.network().ohms(element)
                                + model.sagOhm(sags.source().index(), sags.part()));
            }
        }
    }
}
