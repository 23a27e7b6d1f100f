package ringout.check.topology;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.finding.Sketch;
import ringout.graph.Trail;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.bus.TerminatorAt;
import ringout.graph.bus.Trunk;
import ringout.model.Lead;

/**
 * Two terminators, but a member hangs beyond the path between them.
 *
 * <p>Why it matters: what hangs beyond a terminator reflects at full bit rate, while a meter still reads 60 ohm with
 * everything mated; only pulling the end plug tells.
 *
 * <p>Formula: length of lead in mm from the end of the terminated trunk to the member, against the stub limit (S2 above it,
 * S4 below).
 *
 * <p>Does not see: branches in the middle of the trunk (T08), wrong counts (T06), the branch inside a unit.
 *
 * <p>Reference: DroneCAN specification, section 8 (0.3 m at any rate).
 */
@CheckInfo(
        code = "T07",
        name = "terminator-not-at-end",
        severity = Severity.S2,
        since = "0.1",
        needs = {"terminator of each bus unit", "length of each bus lead"})
public final class TerminatorNotAtEnd implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Buses buses = Buses.of(at.circuit());
        for (BusSegment segment : buses.segments()) {
            if (segment.on().size() == 2
                    && segment.unknown().isEmpty()
                    && segment.links().size() > 0) {
                look(at, out, buses, Trunk.of(buses, segment), segment);
            }
        }
    }

    private static void look(Situation at, Outcomes out, Buses buses, Trunk trunk, BusSegment segment) {
        if (!trunk.terminated()) {
            return;
        }
        out.looked();
        Threshold limit = at.limit(Thresholds.BUS_STUB);
        for (Trunk.Branch branch : trunk.branches()) {
            BusHub hub = buses.hubs().get(branch.hub());
            if (branch.atEnd() && hub.member()) {
                look(at, out, buses, new Overhang(segment, branch, hub, limit));
            }
        }
    }

    /** A member beyond the end of the trunk. */
    private record Overhang(BusSegment segment, Trunk.Branch branch, BusHub hub, Threshold limit) {}

    private static void look(Situation at, Outcomes out, Buses buses, Overhang over) {
        List<Lead> leads = new ArrayList<>();
        for (int link : over.branch().links()) {
            leads.add(buses.links().get(link).lead());
        }
        List<Lead> bare =
                leads.stream().filter(lead -> !lead.lengthMm().isKnown()).toList();
        if (!bare.isEmpty()) {
            bare.forEach(
                    lead -> out.cannotTell("length of lead " + lead.id(), "measure it plug to plug", 2, lead.id()));
            return;
        }
        Severity severity = over.branch().lengthMm() > over.limit().value() ? Severity.S2 : Severity.S4;
        out.finding(draft(at, buses, over, leads, severity));
    }

    private static Draft draft(Situation at, Buses buses, Overhang over, List<Lead> leads, Severity severity) {
        String member = buses.name(over.hub());
        String end = buses.name(buses.hubs().get(over.branch().attach()));
        double metres = over.branch().lengthMm() / 1000;
        double limit = over.limit().value() / 1000;
        Draft draft = Draft.of(
                        severity,
                        "terminator not at the end: " + buses.name(over.segment()) + " is terminated at " + end
                                + ", but " + member + " hangs " + number(metres) + " m beyond it")
                .about(end, member)
                .path(way(at, buses, over))
                .sum(number(metres) + " m beyond the terminated trunk, limit " + number(limit) + " m")
                .judged(metres, limit, "m", over.limit().source())
                .why("reflections at full bit rate; a meter still reads 60 ohm with everything mated")
                .meter("pull the bus plug of " + member + " and measure into the lead: 60 ohm now, 120 ohm when right")
                .fix("terminator: off at " + end + ", on at " + member)
                .cause("terminators of " + buses.name(over.segment()))
                .explains("T08", "T17")
                .sketch(new Sketch.Misplaced(Sketch.What.TERMINATOR, end, member));
        leads.forEach(lead -> draft.seen(lead).input(lead.lengthMm()));
        for (TerminatorAt terminator : over.segment().on()) {
            if (terminator.hub() == over.branch().attach()) {
                draft.at(at.directory().unit(terminator.port().unit()), "terminator");
            }
        }
        return draft;
    }

    private static Trail way(Situation at, Buses buses, Overhang over) {
        BusHub from = buses.hubs().get(over.branch().attach());
        return at.circuit().trail(from.high(), over.hub().high()).orElse(Trail.NONE);
    }

    private static String number(double metres) {
        return String.format(Locale.ROOT, "%.2f", metres);
    }
}
