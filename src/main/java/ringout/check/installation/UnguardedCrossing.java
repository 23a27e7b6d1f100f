package ringout.check.installation;

import java.util.ArrayList;
import java.util.List;
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
import ringout.model.Hole;
import ringout.model.Lead;
import ringout.model.PointFlag;
import ringout.model.RoutePoint;

/**
 * A lead that crosses an edge, a hole or the sweep of a moving part without a guard.
 *
 * <p>Why it matters: an edge saws through the insulation in some hours of flight; a moving part catches a lead or breaks it by
 * fatigue, and the fault comes and goes with the movement.
 *
 * <p>Condition: a point of the way is marked edge, hole, hinge, fold or sweep and is not guarded (grommet, sleeve, guide). A hole
 * needs no grommet when the lead keeps 9.5 mm from its rim all around.
 *
 * <p>Does not see: points nobody marked, how good the guard is.
 *
 * <p>Reference: clearance at penetrations: FAA AC 43.13-1B, chapter 11 (3/8 in); the rest common practice, no source.
 */
@CheckInfo(
        code = "M19",
        name = "unguarded-crossing",
        severity = Severity.S3,
        since = "0.3",
        needs = {"whether marked points of the way are guarded"})
public final class UnguardedCrossing implements Check {
    private static final List<PointFlag> MOVING = List.of(PointFlag.SWEEP, PointFlag.HINGE, PointFlag.FLEX);

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
                datum -> datum.contains("diameter")
                        ? new Gaps.Way("measure it", 2)
                        : new Gaps.Way("look at the point of the way", 2));
    }

    private static void look(Situation at, Outcomes out, Gaps gaps, Lead lead) {
        List<String> bare = new ArrayList<>();
        boolean moving = false;
        for (RoutePoint point : lead.route()) {
            Optional<String> what = what(point);
            if (what.isEmpty() || point.guarded().isNotApplicable()) {
                continue;
            }
            if (point.guarded().is(true) || clears(at, gaps, lead, point)) {
                out.looked();
            } else if (point.guarded().isMissing()) {
                gaps.add("guard at the " + what.get(), lead.id());
            } else if (rimKnown(at, lead, point)) {
                bare.add(words(at, lead, point, what.get()));
                moving |= point.flags().stream().anyMatch(MOVING::contains);
            }
        }
        if (!bare.isEmpty()) {
            out.finding(draft(at, lead, bare, moving));
        }
    }

    /** What is crossed, the worst word first. */
    private static Optional<String> what(RoutePoint point) {
        List<PointFlag> flags = point.flags();
        for (PointFlag flag : MOVING) {
            if (flags.contains(flag)) {
                return Optional.of(flag == PointFlag.FLEX ? "fold" : flag.word());
            }
        }
        return flags.contains(PointFlag.EDGE)
                ? Optional.of("edge")
                : flags.contains(PointFlag.HOLE) ? Optional.of("hole") : Optional.empty();
    }

    private static boolean hole(RoutePoint point) {
        return what(point).filter("hole"::equals).isPresent();
    }

    private static Optional<Hole> listed(Situation at, RoutePoint point) {
        String name = point.through().or("");
        return at.aircraft().airframe().holes().stream()
                .filter(hole -> hole.name().equalsIgnoreCase(name))
                .findFirst();
    }

    /** Whether the lead keeps clear of the rim of a hole; what is missing to know is noted. */
    private static boolean clears(Situation at, Gaps gaps, Lead lead, RoutePoint point) {
        Optional<Hole> hole = hole(point) && point.guarded().is(false) ? listed(at, point) : Optional.empty();
        if (hole.isEmpty()) {
            return false;
        }
        if (hole.get().diameterMm().isMissing()) {
            gaps.add("diameter", "hole " + hole.get().name());
        } else if (lead.diameterMm().isMissing()) {
            gaps.add("outer diameter", lead.id());
        }
        return hole.get().diameterMm().isKnown()
                && lead.diameterMm().isKnown()
                && clearance(hole.get(), lead)
                        >= at.limit(InstallationThresholds.HOLE_CLEARANCE).value();
    }

    /** Whether an unguarded point can be judged: all but a listed hole whose clearance is not known. */
    private static boolean rimKnown(Situation at, Lead lead, RoutePoint point) {
        Optional<Hole> hole = hole(point) ? listed(at, point) : Optional.empty();
        return hole.isEmpty()
                || (!hole.get().diameterMm().isMissing() && !lead.diameterMm().isMissing());
    }

    private static double clearance(Hole hole, Lead lead) {
        return (hole.diameterMm().or(0.0) - lead.diameterMm().or(0.0)) / 2;
    }

    private static String words(Situation at, Lead lead, RoutePoint point, String what) {
        String rim = (hole(point) ? listed(at, point) : Optional.<Hole>empty())
                .map(hole -> " (" + Figures.of(clearance(hole, lead)) + " mm to the rim)")
                .orElse("");
        return what + point.through().known().map(name -> " " + name).orElse("") + rim;
    }

    private static Draft draft(Situation at, Lead lead, List<String> bare, boolean moving) {
        Threshold limit = at.limit(InstallationThresholds.HOLE_CLEARANCE);
        String where = String.join(", ", bare);
        boolean rim = where.contains("to the rim");
        return Draft.of(Severity.S3, "no guard where " + lead.id() + " crosses: " + where)
                .about(lead.id())
                .at(lead)
                .sum(where + ": neither grommet, sleeve nor guide"
                        + (rim ? "; " + Figures.of(limit.value()) + " mm to the rim would do without" : ""))
                .source(rim ? limit.source() : "common practice, no source")
                .why(
                        moving
                                ? "what moves catches the lead or breaks it in the end, and the fault comes and goes"
                                        + " with it"
                                : "the edge saws through the insulation while everything shakes")
                .meter(
                        moving
                                ? "watch the lead while the part goes through its whole travel"
                                : "look for shine or cuts on the insulation there")
                .fix(
                        moving
                                ? "guide " + lead.id()
                                        + " clear of the travel, or fix it on both sides with a loop between"
                                : "put a grommet or sleeve where " + lead.id() + " crosses");
    }
}
