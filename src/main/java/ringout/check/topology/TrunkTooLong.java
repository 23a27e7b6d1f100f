package ringout.check.topology;

import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.bus.BusLink;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.bus.Trunk;
import ringout.model.Bus;
import ringout.model.Datum;
import ringout.model.FrameForm;
import ringout.model.Lead;

/**
 * A trunk that is too long for the bit rate.
 *
 * <p>Why it matters: the far unit's acknowledge must be back within one bit; beyond that the bus fails however clean it is.
 *
 * <p>Formula: length of the trunk in m against the limit of the rate: 40 m at 1 Mbit/s, 100 m at 500, 250 m at 250, 500 m at
 * 125 kbit/s; between two rates the limit of the faster one. A faster data phase has a limit of its own, which the project
 * must give (bus.trunk-data).
 *
 * <p>Does not see: slow drivers, repeaters, more than 5 ns/m of lead.
 *
 * <p>Reference: DroneCAN specification, section 8. Other publications give 25 m at 1 Mbit/s.
 */
@CheckInfo(
        code = "T11",
        name = "trunk-too-long",
        severity = Severity.S3,
        since = "0.1",
        needs = {"length of each bus lead", "bit rate of the bus"})
public final class TrunkTooLong implements Check {
    /** Highest rate of a bus without a faster data phase, ISO 11898-1. */
    private static final double FASTEST_KBIT = 1000;

    @Override
    public void look(Situation at, Outcomes out) {
        Buses buses = Buses.of(at.circuit());
        for (BusSegment segment : buses.segments()) {
            if (segment.wired() && segment.rings() == 0) {
                look(at, out, buses, segment);
            }
        }
    }

    private static void look(Situation at, Outcomes out, Buses buses, BusSegment segment) {
        String name = buses.name(segment);
        Datum<Double> rate = buses.rateKbit(segment);
        if (!rate.isKnown() || rate.or(0.0) > FASTEST_KBIT) {
            String datum = rate.isKnown() ? "arbitration bit rate of " : "bit rate of ";
            out.cannotTell(datum + name, "read it from the parameters of a member", 3, name);
            return;
        }
        Trunk trunk = buses.trunk(segment);
        List<Lead> bare = trunk.withoutLength(trunk.terminated() ? trunk.links() : segment.links());
        Threshold limit = at.limit(limit(rate.or(FASTEST_KBIT)));
        if (trunk.lengthMm() > limit.value()) {
            out.finding(draft(buses, segment, trunk, rate.or(FASTEST_KBIT), limit));
        } else if (bare.isEmpty()) {
            out.looked();
        } else {
            Metres.ask(out, bare);
        }
        if (fastData(buses, segment)) {
            dataPhase(at, out, buses, segment);
        }
    }

    private static boolean fastData(Buses buses, BusSegment segment) {
        Datum<Bus> bus = buses.declaration(segment).map(Datum::of).orElse(Datum.notAsked());
        return bus.known()
                .map(b -> b.frame().is(FrameForm.FLEXIBLE) || b.dataRateKbit().isKnown())
                .orElse(false);
    }

    private static void dataPhase(Situation at, Outcomes out, Buses buses, BusSegment segment) {
        Threshold limit = at.limit(Thresholds.BUS_TRUNK_DATA);
        String name = buses.name(segment);
        Trunk trunk = buses.trunk(segment);
        if (limit.value() <= 0) {
            out.cannotTell(
                    "longest trunk at the data rate of " + name,
                    "take it from the maker of the bus drivers and give it as project limit bus.trunk-data",
                    10,
                    name);
        } else if (trunk.lengthMm() > limit.value()) {
            double rate = buses.declaration(segment)
                    .map(bus -> bus.dataRateKbit().or(0.0))
                    .orElse(0.0);
            out.finding(draft(buses, segment, trunk, rate, limit));
        }
    }

    private static Threshold limit(double kbit) {
        if (kbit > 500) {
            return Thresholds.BUS_TRUNK_1000;
        }
        if (kbit > 250) {
            return Thresholds.BUS_TRUNK_500;
        }
        return kbit > 125 ? Thresholds.BUS_TRUNK_250 : Thresholds.BUS_TRUNK_125;
    }

    private static Draft draft(Buses buses, BusSegment segment, Trunk trunk, double kbit, Threshold limit) {
        String name = buses.name(segment);
        String rate = ringout.model.shape.Scalars.number(kbit) + " kbit/s";
        Draft draft = Draft.of(
                        Severity.S3,
                        "trunk too long: " + name + " is " + Metres.words(trunk.lengthMm()) + " m long, limit "
                                + Metres.words(limit.value()) + " m at " + rate)
                .about(name)
                .sum("trunk " + Metres.words(trunk.lengthMm()) + " m, limit " + Metres.words(limit.value()) + " m at "
                        + rate)
                .judged(Metres.of(trunk.lengthMm()), Metres.of(limit.value()), "m", limit.source())
                .why("the acknowledge of the far unit comes back too late")
                .fix("shorten the trunk, or run " + name + " at a lower rate")
                .cause(name + " trunk");
        for (int link : trunk.links()) {
            BusLink part = buses.links().get(link);
            draft.seen(part.lead()).input(part.lengthMm());
        }
        return draft;
    }
}
