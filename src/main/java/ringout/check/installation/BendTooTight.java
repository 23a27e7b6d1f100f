package ringout.check.installation;

import java.util.Optional;
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
import ringout.model.Lead;
import ringout.model.LeadKind;
import ringout.model.PointFlag;
import ringout.model.RoutePoint;

/**
 * A lead bent tighter than its thickness allows.
 *
 * <p>Why it matters: strands break at the outside of the bend and insulation thins at the inside; a coaxial lead changes its impedance
 * and its centre wanders.
 *
 * <p>Formula: least radius of a bend = 10 x outer diameter; 3 x where the lead is held at a break-out; 10 x for coaxial leads.
 * S4; S3 for coaxial leads. A lead is told of once, by its tightest bend.
 *
 * <p>Does not see: bends nobody listed, bends that move.
 *
 * <p>Reference: FAA AC 43.13-1B, chapter 11 (10 x, 3 x where supported); coaxial: SAE AS50881 (10 x; ASTM F2639 has 6 x).
 */
@CheckInfo(
        code = "M03",
        name = "bend-too-tight",
        severity = Severity.S4,
        since = "0.3",
        needs = {"radius of each bend", "outer diameter of the lead"})
public final class BendTooTight implements Check {
    /** A bend and the radius it must have. */
    private record Bend(double radius, double factor, double diameter, Threshold limit) {
        private double least() {
            return factor * diameter;
        }

        private double share() {
            return radius / least();
        }
    }

    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        for (Lead lead : at.aircraft().leads()) {
            if (!lead.route().isEmpty()) {
                look(at, out, gaps, lead);
            }
        }
        gaps.tell(
                out,
                datum -> datum.startsWith("outer")
                        ? new Gaps.Way("measure it", 1)
                        : new Gaps.Way("hold a round template against the bend", 2));
    }

    private static void look(Situation at, Outcomes out, Gaps gaps, Lead lead) {
        Optional<Bend> tightest = Optional.empty();
        for (RoutePoint point : lead.route()) {
            boolean bends = point.flags().contains(PointFlag.BEND) || Asked.is(point.bendMm());
            if (!bends || point.bendMm().isNotApplicable()) {
                continue;
            }
            if (point.bendMm().isMissing()) {
                gaps.add("radius of a bend", lead.id());
            } else if (lead.diameterMm().isMissing()) {
                gaps.add("outer diameter", lead.id());
            } else if (lead.diameterMm().isKnown()) {
                Bend bend = bend(at, lead, point);
                out.looked();
                if (tightest.isEmpty() || bend.share() < tightest.get().share()) {
                    tightest = Optional.of(bend);
                }
            }
        }
        tightest.filter(bend -> bend.radius() < bend.least()).ifPresent(bend -> out.finding(draft(lead, bend)));
    }

    private static Bend bend(Situation at, Lead lead, RoutePoint point) {
        boolean coax = lead.kind().is(LeadKind.COAX);
        boolean held = point.flags().contains(PointFlag.BREAKOUT);
        Threshold limit = at.limit(
                coax
                        ? InstallationThresholds.BEND_COAX
                        : held ? InstallationThresholds.BEND_BREAKOUT : InstallationThresholds.BEND_BUNDLE);
        return new Bend(point.bendMm().or(0.0), limit.value(), lead.diameterMm().or(0.0), limit);
    }

    private static Draft draft(Lead lead, Bend bend) {
        boolean coax = lead.kind().is(LeadKind.COAX);
        return Draft.of(
                        coax ? Severity.S3 : Severity.S4,
                        "bend too tight: " + lead.id() + " of " + Figures.of(bend.diameter()) + " mm bends at "
                                + Figures.of(bend.radius()) + " mm, needs " + Figures.of(bend.least()) + " mm")
                .about(lead.id())
                .at(lead)
                .input(lead.diameterMm())
                .sum(Figures.of(bend.factor()) + " x " + Figures.of(bend.diameter()) + " mm = "
                        + Figures.of(bend.least()) + " mm, radius " + Figures.of(bend.radius()) + " mm")
                .judged(bend.radius(), bend.least(), "mm", bend.limit().source())
                .why(
                        coax
                                ? "its impedance changes at the bend, and the centre wanders to the screen"
                                : "strands break at the outside of the bend, and the fault comes and goes")
                .meter("hold a round template of " + Figures.of(bend.least()) + " mm against the bend")
                .fix("lead " + lead.id() + " in a wider arc, " + Figures.of(bend.least()) + " mm or more");
    }
}
