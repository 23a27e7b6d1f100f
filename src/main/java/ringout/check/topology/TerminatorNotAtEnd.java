package ringout.check.topology;

import java.util.ArrayList;
import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.model.Lead;

/**
 * Two terminators, but a member hangs beyond the path between them.
 *
 * <p>Why it matters: what hangs beyond a terminator reflects at full bit rate, while a meter still reads 60 ohm with
 * everything mated; only pulling the end plug tells.
 *
 * <p>Formula: length of lead in m from the end of the terminated trunk to the farthest member beyond it, against the stub
 * limit (S2 above it, S4 below).
 *
 * <p>Does not see: branches in the middle of the trunk (T08), wrong counts (T06), the branch inside a unit, a state with
 * something taken off (T17).
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
        if (Removals.judgedElsewhere(at)) {
            return;
        }
        Buses buses = Buses.of(at.circuit());
        for (BusSegment segment : buses.segments()) {
            Termination termination = new Termination(buses, segment);
            if (segment.wired() && termination.unknown()) {
                termination.ask(out);
            } else if (segment.wired() && termination.count() == Termination.RIGHT) {
                out.looked();
                termination.overhangs().forEach(over -> look(at, out, buses, segment, over));
            }
        }
    }

    private static void look(Situation at, Outcomes out, Buses buses, BusSegment segment, Termination.Overhang over) {
        Threshold limit = at.limit(Thresholds.BUS_STUB);
        boolean far = over.branch().lengthMm() > limit.value();
        if (!over.bare().isEmpty() && !far) {
            Metres.ask(out, over.bare());
            return;
        }
        Severity severity = far ? Severity.S2 : Severity.S4;
        out.finding(draft(at, buses, segment, over, limit).severity(severity));
    }

    private static Draft draft(
            Situation at, Buses buses, BusSegment segment, Termination.Overhang over, Threshold limit) {
        String end = buses.name(over.end());
        String member = buses.name(over.member());
        double mm = over.branch().lengthMm();
        TerminatorPlan plan = new TerminatorPlan(buses, segment);
        Draft draft = Draft.of(
                        Severity.S2,
                        "terminator not at the end: " + buses.name(segment) + " is terminated at " + end + ", but "
                                + member + " hangs " + Metres.words(mm) + " m beyond it")
                .about(end, member)
                .path(at.circuit().trail(over.end().leg(), over.member().leg()).orElse(Trail.NONE))
                .sum(sum(buses, over, limit))
                .judged(Metres.of(mm), Metres.of(limit.value()), "m", limit.source())
                .why("reflections at full bit rate; a meter still reads 60 ohm with everything mated")
                .meter("pull the bus plug of " + member + " and measure into the lead: 60 ohm now, 120 ohm when right")
                .fix(plan.words())
                .cause(Termination.cause(buses, segment))
                .explains("T08", "T17");
        over.branch()
                .links()
                .forEach(link -> buses.links()
                        .get(link)
                        .leads()
                        .forEach(lead -> draft.seen(lead).input(lead.lengthMm())));
        plan.show(draft);
        return draft;
    }

    private static String sum(Buses buses, Termination.Overhang over, Threshold limit) {
        List<String> parts = new ArrayList<>();
        for (int link : over.branch().links()) {
            Lead lead = buses.links().get(link).lead();
            parts.add(
                    lead.id() + " " + lead.lengthMm().known().map(Metres::words).orElse("?"));
        }
        String total = parts.size() > 1 ? " = " + Metres.words(over.branch().lengthMm()) : "";
        return String.join(" + ", parts) + total + " m beyond the terminated trunk, limit "
                + Metres.words(limit.value()) + " m";
    }
}
