package ringout.check.topology;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.bus.TerminatorAt;
import ringout.model.Datum;
import ringout.model.Unit;

/**
 * A bus with more or fewer than two terminators.
 *
 * <p>Why it matters: one terminator rings, three load the drivers; both show as errors under load, far units first.
 *
 * <p>Formula: number of terminators in the circuit of one piece of bus, which must be 2; the meter reads 120 ohm over that
 * number, or the node inputs in parallel when there is none. S2, or S3 at 250 kbit/s or less with a trunk under 2 m.
 *
 * <p>Does not see: the value of a terminator, a break in the pair (T13), their place (T07).
 *
 * <p>Reference: ISO 11898-2; DroneCAN specification, section 8.
 */
@CheckInfo(
        code = "T06",
        name = "terminator-count",
        severity = Severity.S2,
        since = "0.1",
        needs = {"terminator of each bus unit"})
public final class TerminatorCount implements Check {
    private static final int RIGHT = 2;
    private static final double OHM = 120;
    private static final double SLOW_KBIT = 250;
    private static final double SHORT_MM = 2000;

    @Override
    public void look(Situation at, Outcomes out) {
        Buses buses = Buses.of(at.circuit());
        for (BusSegment segment : buses.segments()) {
            if (!segment.links().isEmpty()) {
                look(at, out, buses, segment);
            }
        }
    }

    private static void look(Situation at, Outcomes out, Buses buses, BusSegment segment) {
        List<TerminatorAt> unknown = segment.unknown();
        if (!unknown.isEmpty() && segment.on().size() <= RIGHT) {
            for (TerminatorAt terminator : unknown) {
                String unit = at.directory().name(terminator.port().unit());
                out.cannotTell(
                        "terminator of " + unit,
                        "look at its switch, or measure H to L into the unit with its plugs pulled",
                        3,
                        unit);
            }
            return;
        }
        out.looked();
        int count = segment.on().size();
        if (count != RIGHT) {
            out.finding(draft(at, buses, segment, count));
        }
    }

    private static Draft draft(Situation at, Buses buses, BusSegment segment, int count) {
        String bus = buses.name(segment);
        String names = segment.on().stream()
                .map(terminator -> at.directory().name(terminator.port().unit()))
                .collect(Collectors.joining(", "));
        Draft draft = Draft.of(
                        severity(at, buses, segment),
                        "terminator count: " + bus + " has " + words(count) + ", a bus has two"
                                + (names.isEmpty() ? "" : " (" + names + ")"))
                .about(bus)
                .sum(reading(buses, segment, count))
                .judged(count, RIGHT, "terminators", "ISO 11898-2")
                .why(
                        count < RIGHT
                                ? "the open end reflects every edge; errors at full rate, far units first"
                                : "drivers cannot swing the bus far enough; far units drop out first")
                .meter("power off, everything mated, H to L: " + number(expected(buses, segment, count))
                        + " ohm now, 60 ohm when right")
                .fix(count < RIGHT ? "switch a terminator on at the open end" : "switch off what is not at an end")
                .cause("terminators of " + bus)
                .explains("T17");
        for (TerminatorAt terminator : segment.on()) {
            Unit unit = at.directory().unit(terminator.port().unit());
            draft.seen(unit);
        }
        return draft;
    }

    private static Severity severity(Situation at, Buses buses, BusSegment segment) {
        Datum<Double> rate = at.aircraft().buses().stream()
                .filter(bus -> bus.name().equals(segment.name()))
                .map(bus -> bus.rateKbit())
                .findFirst()
                .orElse(Datum.notAsked());
        boolean slow = rate.isKnown() && rate.or(0.0) <= SLOW_KBIT;
        boolean allLengths =
                segment.links().stream().allMatch(link -> buses.lengthMm(link).isKnown());
        double total = segment.links().stream()
                .mapToDouble(link -> buses.lengthMm(link).or(0.0))
                .sum();
        return slow && allLengths && total < SHORT_MM ? Severity.S3 : Severity.S2;
    }

    private static String reading(Buses buses, BusSegment segment, int count) {
        return count == 0
                ? "no terminator: only node inputs, " + number(expected(buses, segment, count)) + " ohm"
                : "120 ohm / " + count + " = " + number(expected(buses, segment, count)) + " ohm, 60 when right";
    }

    private static double expected(Buses buses, BusSegment segment, int count) {
        if (count > 0) {
            return OHM / count;
        }
        double siemens = 0;
        for (int hub : segment.hubs()) {
            var place = buses.hubs().get(hub);
            siemens += buses.circuit()
                    .wiring()
                    .directory()
                    .layout(place.unit())
                    .port(place.port())
                    .map(port -> 1 / port.nodeOhm().or(Double.POSITIVE_INFINITY))
                    .orElse(0.0);
        }
        return 1 / siemens;
    }

    private static String words(int count) {
        return switch (count) {
            case 0 -> "no terminator";
            case 1 -> "one terminator";
            default -> count + " terminators";
        };
    }

    private static String number(double ohm) {
        return Double.isInfinite(ohm) ? "open" : String.format(Locale.ROOT, "%.0f", ohm);
    }
}
