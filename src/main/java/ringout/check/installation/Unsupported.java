package ringout.check.installation;

import java.util.List;
import java.util.OptionalDouble;
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
 * A lead that hangs free for too long, or holds a unit that should swing on its damper.
 *
 * <p>Why it matters: a free lead swings with the rotors until a strand breaks at its plug; a stiff or short one carries the vibration
 * past the damper into the inertial unit.
 *
 * <p>Condition: the longest piece without support is above 150 mm (S4). Where it is not told but the way has points with clamps,
 * the longest piece between them counts; a lead no longer than that is not asked. At a unit on a damper a conductor is thicker than 26 AWG by more than half a gauge, or the
 * free loop is under 30 mm (S3).
 *
 * <p>Does not see: how far it can be pushed aside between supports (12.7 mm by hand, FAA AC 43.13-1B), the stiffness of a sleeve.
 *
 * <p>Reference: common practice on a multirotor, no source.
 */
@CheckInfo(
        code = "M18",
        name = "unsupported",
        severity = Severity.S4,
        since = "0.3",
        needs = {"longest piece without support", "wire size and free loop at damped units"})
public final class Unsupported implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        boolean begun = Asked.ofLeads(at, List.of(Lead::unsupportedMm));
        for (Lead lead : at.aircraft().leads()) {
            free(at, out, gaps, lead, begun);
        }
        DampedUnit.look(at, out, gaps);
        gaps.tell(out, datum -> switch (datum) {
            case "longest piece without support" -> new Gaps.Way("lay a rule between its ties", 2);
            case "whether it sits on a damper" -> new Gaps.Way("push at the unit", 1);
            case "wire size" -> new Gaps.Way("read the print on the wire, or measure the bare conductor", 2);
            default -> new Gaps.Way("lay a rule along the loop", 1);
        });
    }

    private static void free(Situation at, Outcomes out, Gaps gaps, Lead lead, boolean begun) {
        Threshold limit = at.limit(InstallationThresholds.UNSUPPORTED);
        boolean told = lead.unsupportedMm().isKnown();
        OptionalDouble between = told || lead.route().isEmpty() ? OptionalDouble.empty() : betweenClamps(lead);
        double mm = told ? lead.unsupportedMm().or(0.0) : between.orElse(0);
        boolean shortEnough = lead.lengthMm().isKnown() && lead.lengthMm().or(0.0) <= limit.value();
        if (mm > limit.value() && !shortEnough) {
            out.finding(draft(lead, mm, told, limit));
        } else if (told) {
            out.looked();
        } else if (begun && lead.unsupportedMm().isMissing() && !shortEnough) {
            gaps.add("longest piece without support", lead.id());
        }
    }

    /** The longest piece of the way between two clamps that follow each other; less than that it cannot be. */
    private static OptionalDouble betweenClamps(Lead lead) {
        double longest = 0;
        int last = -1;
        for (int i = 0; i < lead.route().size(); i++) {
            if (lead.route().get(i).flags().contains(PointFlag.CLAMP)) {
                if (last >= 0) {
                    longest = Math.max(
                            longest, Way.of(lead.route().subList(last, i + 1)).lengthMm());
                }
                last = i;
            }
        }
        return longest > 0 ? OptionalDouble.of(longest) : OptionalDouble.empty();
    }

    private static Draft draft(Lead lead, double mm, boolean told, Threshold limit) {
        return Draft.of(Severity.S4, "lead hangs free: " + lead.id() + " for " + Figures.of(mm) + " mm")
                .about(lead.id())
                .at(lead)
                .input(lead.unsupportedMm())
                .sum(Figures.of(mm) + " mm " + (told ? "without support" : "between two clamps of its way")
                        + ", at most " + Figures.of(limit.value()) + " mm")
                .judged(mm, limit.value(), "mm", limit.source())
                .onAssumption(Assumed.turns(lead.unsupportedMm(), factor -> mm * factor - limit.value()))
                .why("it swings with the rotors until a strand breaks at its plug")
                .meter("shake the frame by hand and watch it")
                .fix("tie " + lead.id() + " down so that no piece is longer than " + Figures.of(limit.value()) + " mm");
    }
}
