package ringout.check.topology;

import java.util.Locale;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.bus.Trunk;
import ringout.model.Datum;

/**
 * A bus with more or fewer than two terminators.
 *
 * <p>Why it matters: with one the open end rings, with three the drivers cannot swing the bus far enough; both show as errors
 * under load, far units first.
 *
 * <p>Formula: number of terminators in the circuit of one piece of bus, which must be 2; the meter reads 120 ohm over that
 * number, or the node inputs in parallel when there is none. S2, or S3 at 250 kbit/s or less with a trunk under 2 m. A
 * terminator of two resistors and a capacitor counts as one.
 *
 * <p>Does not see: a break in the pair (T13), their place (T07), a state with something taken off (T17), the value of a
 * terminator that is listed as one.
 *
 * <p>Reference: ISO 11898-2 (two terminators); DroneCAN specification, section 8.
 */
@CheckInfo(
        code = "T06",
        name = "terminator-count",
        severity = Severity.S2,
        since = "0.1",
        needs = {"terminator of each bus unit"})
public final class TerminatorCount implements Check {
    private static final double SLOW_KBIT = 250;
    private static final double SHORT_MM = 2000;

    @Override
    public void look(Situation at, Outcomes out) {
        if (Removals.judgedElsewhere(at)) {
            return;
        }
        Buses buses = Buses.of(at.circuit());
        for (BusSegment segment : buses.segments()) {
            if (segment.wired()) {
                look(at, out, buses, segment);
            }
        }
    }

    private static void look(Situation at, Outcomes out, Buses buses, BusSegment segment) {
        Termination termination = new Termination(buses, segment);
        if (termination.unknown()) {
            termination.ask(out);
            return;
        }
        out.looked();
        if (termination.count() != Termination.RIGHT) {
            out.finding(draft(at, buses, segment, termination));
        }
    }

    private static Draft draft(Situation at, Buses buses, BusSegment segment, Termination termination) {
        String bus = buses.name(segment);
        boolean few = termination.count() < Termination.RIGHT;
        TerminatorPlan plan = new TerminatorPlan(buses, segment);
        Draft draft = Draft.of(
                        severity(buses, segment),
                        "terminator count: " + bus + " has " + termination.words() + termination.where()
                                + ", a bus has two")
                .about(bus)
                .sum(sum(termination))
                .judged(termination.count(), Termination.RIGHT, "terminators", "ISO 11898-2")
                .why(
                        few
                                ? "an open end reflects every edge: errors at full rate, far units first"
                                : "drivers cannot swing the bus far enough: far units drop out first")
                .meter("power off, everything mated, H to L: " + termination.reading() + " now, 60 ohm when right")
                .fix(plan.words())
                .cause(Termination.cause(buses, segment))
                .explains("T17");
        plan.show(draft);
        segment.on().forEach(on -> draft.seen(at.directory().unit(on.unit())));
        LooseTerminators.of(at).forEach(unit -> draft.cause(LooseTerminators.cause(unit)));
        return draft;
    }

    private static String sum(Termination termination) {
        return switch (termination.count()) {
            case 0 -> "no terminator, only node inputs: " + termination.reading();
            default ->
                String.format(
                        Locale.ROOT,
                        "120 ohm / %d = %s, 60 ohm when right",
                        termination.count(),
                        termination.reading());
        };
    }

    private static Severity severity(Buses buses, BusSegment segment) {
        Datum<Double> rate = buses.rateKbit(segment);
        Trunk trunk = buses.trunk(segment);
        boolean slow = rate.isKnown() && rate.or(0.0) <= SLOW_KBIT;
        boolean small = trunk.withoutLength().isEmpty() && trunk.lengthMm() < SHORT_MM;
        return slow && small ? Severity.S3 : Severity.S2;
    }
}
