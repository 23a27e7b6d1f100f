package ringout.plan.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.order.PlanStep;
import ringout.model.Datum;
import ringout.model.Unit;
import ringout.model.UnitKind;
import ringout.solve.power.LoadCase;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PackCharge;
import ringout.solve.power.PowerFlow;

/** Plans the first power-up of an aircraft: every number from the operating point of the circuit of its stage. */
public final class PowerUps {
    /** Volts a bench supply is set to for each cell, between empty and full. Common practice, no source. */
    private static final double BENCH_CELL_V = 4.0;

    /** Band of the current in the hover, as a part of it. Common practice, no source. */
    private static final double HOVER_BAND = 0.1;

    /** Band of the volts in the hover at nominal charge. Judgement, no source. */
    private static final double HOVER_VOLTS = 0.03;

    /** Band of full packs at rest around what they read by themselves. Judgement, no source. */
    private static final double FULL_BAND = 0.01;

    /** A hand meter charges capacitors of 5 mF above 1 kilohm in about 5 s. Common practice, no source. */
    private static final double MICROFARAD_A_SECOND = 1000;

    private final Circuit circuit;
    private final Wiring wiring;
    private final Rig rig;
    private final Procedure procedure;
    private final List<PowerStage> stages = new ArrayList<>();

    private PowerUps(Circuit circuit, Rig rig) {
        this.circuit = circuit;
        this.rig = rig;
        wiring = circuit.wiring();
        procedure = new Procedure(circuit);
    }

    /** {@return the first power-up of an aircraft in a state} */
    public static PowerUp of(Circuit circuit) {
        PlugOrder plugs = PlugOrders.of(circuit);
        Optional<Rig> rig = Rig.of(circuit);
        if (rig.isEmpty()) {
            String needs = Packs.of(circuit).stacks().isEmpty()
                    ? "a pack with plugs: without one nothing is told of the first power-up"
                    : "cells in series of " + String.join(", ", plugs.made()) + ", for what a bench supply is set to";
            return new PowerUp(List.of(), plugs, List.of("cannot tell: needs " + needs));
        }
        return new PowerUp(new PowerUps(circuit, rig.get()).find(), plugs, List.of());
    }

    private List<PowerStage> find() {
        stages.add(ohms());
        double volts = Procedure.volts(procedure.first()).orElse(Math.rint(BENCH_CELL_V * rig.cells() * 10) / 10);
        stages.addAll(BenchStages.of(circuit, rig, procedure, volts));
        stages.add(packs());
        stages.add(motors());
        stages.add(hover());
        return stages;
    }

    private String id() {
        return "U" + stages.size();
    }

    private PowerStage ohms() {
        double sum = 0;
        List<String> untold = new ArrayList<>();
        for (int unit = 0; unit < wiring.directory().count(); unit++) {
            if (!wiring.directory().isJoint(unit) && circuit.aboard(unit)) {
                Datum<Double> own = wiring.directory().type(unit).inputMicrofarad();
                Unit row = wiring.directory().unit(unit);
                sum += own.or(0.0) + row.extraMicrofarad().or(0.0);
                if (own.isMissing() && wiring.directory().type(unit).kind().is(UnitKind.SPEED_CONTROLLER)) {
                    untold.add(row.ref());
                }
            }
        }
        double seconds = Math.max(5, Math.ceil(sum / MICROFARAD_A_SECOND));
        Expected rises = untold.isEmpty()
                ? new Expected.Look(
                        "main + to main -, meter on ohms",
                        String.format(
                                Locale.ROOT,
                                "starts low and rises above 1 kohm within %.0f s, as %.1f mF of capacitors charge",
                                seconds,
                                sum / 1000))
                : new Expected.CannotTell(
                        "main + to main -: seconds to rise", "input capacitance of " + String.join(", ", untold));
        return new PowerStage(
                id(),
                PowerStage.Kind.OHMS,
                "ohms before any power",
                List.of(),
                List.of(),
                List.of(),
                new Supply(Supply.Kind.NONE, OptionalDouble.empty(), OptionalDouble.empty(), rig.where()),
                List.of(rises, new Expected.Look("main + to frame", "above 1 Mohm")),
                List.of(String.format(Locale.ROOT, "below 10 ohm after %.0f s", seconds)),
                List.of(),
                List.of("other way round the meter may read a diode: turn the leads once"),
                "");
    }

    private PowerStage packs() {
        OperatingPoint point = OperatingPoint.of(circuit, LoadCase.IDLE.with(PackCharge.FULL));
        List<Expected> readings = new ArrayList<>();
        OptionalDouble volts = OptionalDouble.empty();
        if (point instanceof PowerFlow flow) {
            readings.addAll(VoltPoints.ofPacks(flow));
            volts = OptionalDouble.of(rig.restVolts(flow));
        }
        Optional<String> lack = Lacks.ofCurrent(point);
        if (lack.isEmpty() && point instanceof PowerFlow flow) {
            double amps = rig.amps(flow);
            readings.add(new Expected.Reading(
                    "current of all packs, by clamp meter",
                    amps,
                    amps * (1 - BenchStages.BAND),
                    amps * (1 + BenchStages.BAND),
                    "A",
                    "20 % of what makers tell"));
        } else {
            readings.add(new Expected.CannotTell("current of all packs", lack.orElse("an operating point")));
        }
        Optional<PlanStep> step = procedure.powering(UnitKind.PACK);
        return new PowerStage(
                id(),
                PowerStage.Kind.PACKS,
                "full packs in place of the bench supply, motors at rest",
                List.of(),
                List.of(),
                List.of(),
                new Supply(Supply.Kind.PACKS, volts, OptionalDouble.empty(), ""),
                readings,
                List.of("sags by more than 0.1 V at rest", "any plug warm within 2 min", "smell, smoke"),
                List.of("plugs made in the order below", "each pack measured by itself before"),
                List.of("volts are those of full packs; less charge reads less, band " + Math.round(100 * FULL_BAND)
                        + " % around what the packs read by themselves"),
                step.map(one -> one.step().id()).orElse(""));
    }

    private PowerStage motors() {
        long count = java.util.stream.IntStream.range(0, wiring.directory().count())
                .filter(unit -> !wiring.directory().isJoint(unit)
                        && wiring.directory().type(unit).kind().is(UnitKind.MOTOR))
                .count();
        return new PowerStage(
                id(),
                PowerStage.Kind.MOTORS,
                "motors one by one at 10 %, no propellers",
                List.of(),
                List.of(),
                List.of(),
                new Supply(Supply.Kind.PACKS, OptionalDouble.empty(), OptionalDouble.empty(), ""),
                List.of(
                        new Expected.CannotTell(
                                "current of one motor", "current of a motor at 10 % without propeller; read the first"),
                        new Expected.Look("current of each of " + count + " motors", "equal within 15 %"),
                        new Expected.Look("each motor", "the one commanded, the way marked; two people look")),
                List.of("wrong motor or wrong way", "another motor twitches", "current runs away"),
                List.of("propellers off: look at every motor", "aircraft held down, hands clear"),
                List.of(),
                procedure
                        .powering(UnitKind.SPEED_CONTROLLER)
                        .map(one -> one.step().id())
                        .orElse(""));
    }

    private PowerStage hover() {
        OperatingPoint point = OperatingPoint.of(circuit, LoadCase.AVERAGE);
        List<Expected> readings = new ArrayList<>();
        Optional<String> lack = Lacks.ofCurrent(point).or(() -> Lacks.ofVolts(point));
        int plus = rig.board(wiring, rig.plus());
        int minus = rig.board(wiring, rig.minus());
        String at = "board, " + wiring.name(plus) + " against " + wiring.name(minus) + ", read over the radio";
        if (lack.isEmpty()
                && point instanceof PowerFlow flow
                && flow.volts(plus, minus).isPresent()) {
            double volts = flow.volts(plus, minus).getAsDouble();
            double off = HOVER_VOLTS * volts;
            readings.add(new Expected.Reading(at, volts, volts - off, volts + off, "V", "3 %, packs at nominal"));
            double amps = rig.amps(flow);
            double by = HOVER_BAND * amps;
            readings.add(new Expected.Reading(
                    "current of all packs, read over the radio", amps, amps - by, amps + by, "A", "10 %"));
        } else {
            readings.add(new Expected.CannotTell(at, lack.orElse("an operating point")));
            readings.add(new Expected.CannotTell("current of all packs", lack.orElse("an operating point")));
        }
        return new PowerStage(
                id(),
                PowerStage.Kind.HOVER,
                "first hover, 60 s",
                List.of(),
                List.of(),
                List.of(),
                new Supply(Supply.Kind.PACKS, OptionalDouble.empty(), OptionalDouble.empty(), ""),
                readings,
                List.of("current more than 15 % off", "any message of the flight controller"),
                List.of(
                        "released and signed; propellers fitted after the motor test only",
                        "area clear, one person flies"),
                List.of(
                        "weights, air and packs move the current: the numbers are those of the list at nominal voltage",
                        "after landing: packs out, propellers still, rails below 5 V; look with infrared first, then touch"
                                + " every clamp and plug: less than 20 K above its neighbour"),
                "");
    }
}
