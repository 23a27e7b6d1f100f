package ringout.check.installation;

import ringout.check.form.Assumed;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.InstallationThresholds;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.route.Way;
import ringout.model.Lead;
import ringout.model.PointFlag;

/**
 * A lead cut too short or far too long for the way it takes.
 *
 * <p>Why it matters: a short lead pulls at its plugs and cannot be terminated anew when a contact breaks; a long one has to be
 * stowed, swings, and rubs.
 *
 * <p>Condition: the cut length is below the way plus 5 percent, which holds two new terminations (S3); or above the way plus 40
 * percent or 150 mm, whichever is more (S4). A project may ask for a length for new terminations on top. The way is the
 * declared one, or the one along its points where that is longer. A lead over a moving joint counts in its longest position, and
 * its loop there is not called too long.
 *
 * <p>Does not see: how the slack is divided between the ends, positions of a moving joint other than the declared way.
 *
 * <p>Reference: slack for two new terminations: FAA AC 43.13-1B, chapter 11; 5 percent, 40 percent and 150 mm are judgement.
 */
@CheckInfo(
        code = "M02",
        name = "lead-length-against-route",
        severity = Severity.S3,
        since = "0.3",
        needs = {"cut length", "length of the way"})
public final class LeadLength implements Check {
    private static final int ENDS = 2;

    /**
     * What a lead of a way must be.
     *
     * @param way length of the way in mm
     * @param least shortest cut in mm
     * @param most longest cut in mm
     */
    private record Need(double way, double least, double most) {
        private static Need of(Situation at, double way) {
            double slack = at.limit(InstallationThresholds.LEAD_SLACK).value() / 100;
            double ends =
                    ENDS * at.limit(InstallationThresholds.LEAD_TERMINATION).value();
            double share = at.limit(InstallationThresholds.LEAD_EXCESS_SHARE).value() / 100;
            double more = at.limit(InstallationThresholds.LEAD_EXCESS).value();
            return new Need(way, way * (1 + slack) + ends, way + Math.max(way * share, more));
        }
    }

    @Override
    public void look(Situation at, Outcomes out) {
        if (!begun(at)) {
            return;
        }
        Gaps gaps = new Gaps();
        for (Lead lead : at.aircraft().leads()) {
            look(at, out, gaps, lead);
        }
        gaps.tell(
                out,
                datum -> datum.equals("length")
                        ? new Gaps.Way("measure plug to plug", 2)
                        : new Gaps.Way("lay a string along the way", 3));
    }

    private static boolean begun(Situation at) {
        for (Lead lead : at.aircraft().leads()) {
            if (Asked.is(lead.routeMm())) {
                return true;
            }
        }
        return false;
    }

    private static void look(Situation at, Outcomes out, Gaps gaps, Lead lead) {
        if (lead.lengthMm().isNotApplicable() || lead.routeMm().isNotApplicable()) {
            return;
        }
        double along = Way.of(lead).lengthMm();
        if (lead.lengthMm().isMissing()) {
            gaps.add("length", lead.id());
            return;
        }
        double length = lead.lengthMm().or(0.0);
        Need need = Need.of(at, Math.max(along, lead.routeMm().or(0.0)));
        if (need.way() > 0 && length < need.least()) {
            out.finding(tooShort(at, lead, need, along));
        } else if (lead.routeMm().isMissing()) {
            gaps.add("length of the way", lead.id());
        } else if (length > need.most() && !moves(lead)) {
            out.finding(tooLong(at, lead, need));
        } else {
            out.looked();
        }
    }

    /** Whether it passes a joint that moves: its loop is there on purpose. */
    private static boolean moves(Lead lead) {
        return lead.route().stream()
                .anyMatch(point -> point.flags().contains(PointFlag.HINGE)
                        || point.flags().contains(PointFlag.FLEX)
                        || point.flags().contains(PointFlag.SWEEP));
    }

    private static Draft tooShort(Situation at, Lead lead, Need need, double along) {
        Threshold slack = at.limit(InstallationThresholds.LEAD_SLACK);
        Threshold ends = at.limit(InstallationThresholds.LEAD_TERMINATION);
        double length = lead.lengthMm().or(0.0);
        boolean listed = lead.routeMm().or(0.0) >= along;
        String way = Figures.of(need.way()) + " mm" + (moves(lead) ? " in its longest position" : "");
        return Draft.of(
                        Severity.S3,
                        "lead too short: " + lead.id() + " is cut to " + Figures.of(length) + " mm for a way of " + way
                                + ", needs " + up(need.least()) + " mm")
                .about(lead.id())
                .at(lead)
                .sum(Figures.of(need.way()) + " mm " + (listed ? "way" : "along its points") + " x "
                        + Figures.of(1 + slack.value() / 100)
                        + (ends.value() > 0 ? " + 2 x " + Figures.of(ends.value()) + " mm" : "")
                        + " = " + up(need.least()) + " mm; cut " + Figures.of(length)
                        + " mm")
                .judged(length, need.least(), "mm", slack.source())
                .input(lead.lengthMm())
                .input(lead.routeMm())
                .onAssumption(Assumed.turns(
                                lead.routeMm(),
                                factor -> Need.of(at, need.way() * factor).least() - length)
                        || Assumed.turns(lead.lengthMm(), factor -> need.least() - length * factor))
                .why("it pulls at its plugs, and a broken contact cannot be terminated anew")
                .meter("lay a string along the way and measure it; the list may be wrong")
                .fix("cut " + lead.id() + " to " + up(need.least()) + " mm or more");
    }

    private static String up(double mm) {
        return Figures.of(Math.ceil(mm));
    }

    private static Draft tooLong(Situation at, Lead lead, Need need) {
        double length = lead.lengthMm().or(0.0);
        return Draft.of(
                        Severity.S4,
                        "lead too long: " + lead.id() + " is cut to " + Figures.of(length) + " mm for a way of "
                                + Figures.of(need.way()) + " mm")
                .about(lead.id())
                .at(lead)
                .sum(Figures.of(need.way()) + " mm way, " + Figures.of(length - need.way()) + " mm left over, at most "
                        + Figures.of(need.most() - need.way()) + " mm")
                .judged(
                        length,
                        need.most(),
                        "mm",
                        at.limit(InstallationThresholds.LEAD_EXCESS_SHARE).source())
                .input(lead.lengthMm())
                .input(lead.routeMm())
                .onAssumption(Assumed.turns(
                        lead.routeMm(),
                        factor -> length - Need.of(at, need.way() * factor).most()))
                .why("what is left over has to be stowed, swings and rubs")
                .meter("lay a string along the way and measure it; the list may be wrong")
                .fix("cut " + lead.id() + " to " + up(need.least()) + " mm, or correct its way in the list");
    }
}
