package ringout.plan.power;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.order.PlanStep;
import ringout.model.Event;
import ringout.model.EventLoad;
import ringout.model.UnitKind;
import ringout.solve.power.LoadCase;
import ringout.solve.power.LoadFigure;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PackCharge;
import ringout.solve.power.PowerFlow;
import ringout.text.Ranges;

/**
 * The stages on a bench supply in place of the first stack of packs: what cannot be unplugged and the flight controller
 * first, then one gate more each time, the smallest current first.
 */
final class BenchStages {
    /** Band of a bench current: idle figures of makers are no better. Judgement. */
    static final double BAND = 0.2;

    /** Part of the expected current above which something is wrong once all is settled. Judgement. */
    private static final double STOP = 1.3;

    /** Room of the current limit above the highest current of the stage. Judgement. */
    private static final double ROOM = 1.25;

    private static final double TENTH = 10;

    private final Circuit circuit;
    private final Procedure procedure;
    private final Rig rig;
    private final double cellV;
    private final double volts;
    private final VoltPoints.Told told = new VoltPoints.Told();
    private final Set<String> fedBefore = new LinkedHashSet<>();
    private final List<PowerStage> stages = new ArrayList<>();

    private BenchStages(Circuit circuit, Rig rig, Procedure procedure, double volts) {
        this.circuit = circuit;
        this.rig = rig;
        this.procedure = procedure;
        this.volts = volts;
        this.cellV = volts / rig.cells();
    }

    /** {@return the stages, numbered from U1} */
    static List<PowerStage> of(Circuit circuit, Rig rig, Procedure procedure, double volts) {
        return new BenchStages(circuit, rig, procedure, volts).find();
    }

    private List<PowerStage> find() {
        List<Gate> gates = sorted(Gates.of(circuit));
        stage(gates, Optional.empty(), procedure.first());
        for (int open = 0; open < gates.size(); open++) {
            Gate gate = gates.get(open);
            stage(gates.subList(open + 1, gates.size()), Optional.of(gate), procedure.powering(gate.units()));
        }
        return stages;
    }

    /** Regulators by the current they add, the smallest first; then what has plugs of its own. */
    private List<Gate> sorted(List<Gate> gates) {
        Map<Gate, Double> adds = new HashMap<>();
        for (Gate gate : gates) {
            List<Gate> others =
                    gates.stream().filter(other -> !other.equals(gate)).toList();
            adds.put(
                    gate,
                    point(stageCircuit("", others), LoadCase.IDLE) instanceof PowerFlow flow
                            ? rig.amps(flow)
                            : Double.POSITIVE_INFINITY);
        }
        return gates.stream()
                .sorted(Comparator.comparing(Gate::last)
                        .thenComparing(gate -> adds.getOrDefault(gate, Double.POSITIVE_INFINITY)))
                .toList();
    }

    private Circuit stageCircuit(String name, List<Gate> open) {
        List<String> pulled =
                open.stream().flatMap(gate -> gate.plugs().stream()).toList();
        return StageCircuits.of(circuit, name, pulled, rig.otherPacks());
    }

    private OperatingPoint point(Circuit staged, LoadCase of) {
        return OperatingPoint.of(staged, of.with(PackCharge.supply(cellV)));
    }

    private void stage(List<Gate> open, Optional<Gate> gate, Optional<PlanStep> step) {
        String id = "U" + (stages.size() + 1);
        Circuit staged = stageCircuit("stage " + id, open);
        OperatingPoint rest = point(staged, LoadCase.IDLE);
        List<Expected> readings = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        List<String> fresh = List.of();
        OptionalDouble highest = OptionalDouble.empty();
        List<String> stop = new ArrayList<>();
        Optional<String> lack = Lacks.ofCurrent(rest);
        if (rest instanceof PowerFlow flow) {
            fresh = fresh(flow);
            readings.addAll(VoltPoints.of(flow, told, open.isEmpty()));
            Lacks.ofVolts(rest)
                    .ifPresent(words -> notes.add("counted as no resistance, so volts may be lower: " + words));
        }
        if (lack.isEmpty() && rest instanceof PowerFlow flow) {
            double amps = rig.amps(flow);
            readings.add(amps(amps));
            highest = OptionalDouble.of(highest(staged, amps, fresh, notes));
            stop.add(String.format(Locale.ROOT, "more than %.1f A for 2 s once settled", up(amps * STOP, TENTH)));
        } else {
            readings.add(new Expected.CannotTell("current of the supply", lack.orElse("an operating point")));
            stop.add("the supply goes into its limit");
        }
        stop.addAll(Stops.of(circuit, fresh));
        OptionalDouble limit = highest.stream().map(amps -> limit(amps * ROOM)).findFirst();
        differs(limit, step).ifPresent(notes::add);
        stages.add(new PowerStage(
                id,
                PowerStage.Kind.BENCH,
                gate.map(one -> "plug in " + names(one)).orElse("what cannot be unplugged, and the flight controller"),
                fresh,
                open.stream().flatMap(one -> one.plugs().stream()).toList(),
                gate.map(Gate::plugs).orElse(List.of()),
                new Supply(Supply.Kind.BENCH, OptionalDouble.of(volts), limit, rig.where()),
                List.copyOf(readings),
                stop,
                Stops.before(circuit, fresh),
                notes,
                step.map(one -> one.step().id()).orElse("")));
    }

    private String names(Gate gate) {
        return String.join(
                ", ",
                gate.units().stream().map(circuit.wiring().directory()::name).toList());
    }

    private static Expected amps(double amps) {
        return new Expected.Reading(
                "current of the supply", amps, amps * (1 - BAND), amps * (1 + BAND), "A", "20 % of what makers tell");
    }

    /** Units that get power now and did not before, in the order of the list. */
    private List<String> fresh(PowerFlow flow) {
        Set<String> fed = new LinkedHashSet<>();
        flow.loads().stream()
                .filter(LoadFigure::fed)
                .forEach(load ->
                        fed.add(circuit.wiring().directory().name(load.load().unit())));
        List<String> fresh =
                fed.stream().filter(unit -> !fedBefore.contains(unit)).toList();
        fedBefore.addAll(fed);
        return fresh;
    }

    /** The most the stage draws while one unit at a time peaks or an event goes on; motors stay at rest. */
    private double highest(Circuit staged, double rest, List<String> fresh, List<String> notes) {
        double most = rest;
        String why = "";
        for (String unit : fresh) {
            OptionalDouble peak =
                    turnsMotor(unit) ? OptionalDouble.empty() : amps(staged, LoadCase.IDLE.peaking(List.of(unit)));
            if (peak.orElse(0) > most) {
                most = peak.orElse(0);
                why = unit + " is at its peak";
            }
        }
        for (Event event : circuit.wiring().aircraft().events()) {
            OptionalDouble peak =
                    here(event, fresh) ? amps(staged, LoadCase.IDLE.during(event)) : OptionalDouble.empty();
            if (peak.isPresent()) {
                notes.add(String.format(Locale.ROOT, "%.2f A during \"%s\"", peak.getAsDouble(), event.name()));
                if (peak.getAsDouble() > most) {
                    most = peak.getAsDouble();
                    why = event.name();
                }
            }
        }
        if (most > rest * (1 + BAND)) {
            notes.add(String.format(Locale.ROOT, "up to %.2f A while %s", most, why));
        }
        return most;
    }

    private OptionalDouble amps(Circuit staged, LoadCase of) {
        return point(staged, of) instanceof PowerFlow flow ? OptionalDouble.of(rig.amps(flow)) : OptionalDouble.empty();
    }

    private boolean turnsMotor(String unit) {
        return circuit.wiring()
                .directory()
                .find(unit)
                .filter(one -> circuit.wiring().directory().type(one).kind().is(UnitKind.SPEED_CONTROLLER))
                .isPresent();
    }

    /** Whether all units of an event get power in this stage for the first time, and none turns a motor. */
    private boolean here(Event event, List<String> fresh) {
        List<String> units =
                Ranges.items(event.loads().stream().map(EventLoad::unit).toList());
        return !units.isEmpty() && fresh.containsAll(units) && units.stream().noneMatch(this::turnsMotor);
    }

    private static double up(double value, double parts) {
        return Math.ceil(value * parts - 1e-9) / parts;
    }

    /** The next half ampere, whole ampere from 5 A on. */
    private static double limit(double amps) {
        return amps < 5 ? up(amps, 2) : up(amps, 1);
    }

    private static Optional<String> differs(OptionalDouble limit, Optional<PlanStep> step) {
        OptionalDouble theirs = Procedure.limit(step);
        boolean differs = theirs.isPresent() && limit.isPresent() && theirs.getAsDouble() != limit.getAsDouble();
        return differs
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "step %s says limit %.1f A",
                        step.map(one -> one.step().id()).orElse(""),
                        theirs.getAsDouble()))
                : Optional.empty();
    }
}
