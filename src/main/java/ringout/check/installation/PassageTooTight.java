package ringout.check.installation;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
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

/**
 * A hole too full of leads, or too small for the plug that must pass it.
 *
 * <p>Why it matters: in a full hole leads chafe and none can be replaced; a hole that lets the bare wire through may not pass
 * the plug, which then is crimped on in the aircraft.
 *
 * <p>Formula: sum of pi/4 d2 over the outer diameters of the leads through the hole, at most 60 percent of the hole; largest plug
 * at most as large as the hole. Leads are those listed with the hole and those whose way names it.
 *
 * <p>Does not see: the grommet's own thickness, holes that are not round.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "M24",
        name = "passage-too-tight",
        severity = Severity.S3,
        since = "0.3",
        needs = {"diameter of each hole", "outer diameter of each lead through it", "largest plug that must pass"})
public final class PassageTooTight implements Check {
    private static final double QUARTER_PI = Math.PI / 4;

    @Override
    public void look(Situation at, Outcomes out) {
        if (at.aircraft().airframe().holes().isEmpty()) {
            return;
        }
        Map<String, Map<String, Lead>> through = through(at);
        Gaps gaps = new Gaps();
        for (Hole hole : at.aircraft().airframe().holes()) {
            look(at, out, gaps, hole, through.getOrDefault(fold(hole.name()), Map.of()));
        }
        gaps.tell(out, datum -> new Gaps.Way("measure it", 1));
    }

    private static String fold(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    /** Leads by identity, by the hole they pass. */
    private static Map<String, Map<String, Lead>> through(Situation at) {
        Map<String, Map<String, Lead>> through = new LinkedHashMap<>();
        Map<String, String> listed = new LinkedHashMap<>();
        for (Hole hole : at.aircraft().airframe().holes()) {
            through.computeIfAbsent(fold(hole.name()), key -> new LinkedHashMap<>());
            hole.leads().forEach(id -> listed.merge(id, fold(hole.name()), (one, more) -> one + "\n" + more));
        }
        for (Lead lead : at.aircraft().leads()) {
            String holes = listed.getOrDefault(lead.id(), "");
            for (String hole : holes.split("\n", -1)) {
                through.getOrDefault(hole, new LinkedHashMap<>()).put(lead.id(), lead);
            }
            lead.route()
                    .forEach(point -> through.getOrDefault(fold(point.through().or("")), new LinkedHashMap<>())
                            .put(lead.id(), lead));
        }
        return through;
    }

    private static void look(Situation at, Outcomes out, Gaps gaps, Hole hole, Map<String, Lead> leads) {
        if (hole.diameterMm().isMissing()) {
            gaps.add("diameter", "hole " + hole.name());
        }
        if (!hole.diameterMm().isKnown()) {
            return;
        }
        if (hole.plugMm().isMissing()) {
            gaps.add("largest plug that must pass", "hole " + hole.name());
        } else if (hole.plugMm().isKnown()
                && hole.plugMm().or(0.0) > hole.diameterMm().or(0.0)) {
            out.finding(plug(hole));
        } else if (hole.plugMm().isKnown()) {
            out.looked();
        }
        fill(at, out, gaps, hole, leads);
    }

    private static void fill(Situation at, Outcomes out, Gaps gaps, Hole hole, Map<String, Lead> leads) {
        Threshold limit = at.limit(InstallationThresholds.HOLE_FILL);
        double sum = 0;
        boolean open = false;
        for (Lead lead : leads.values()) {
            open |= lead.diameterMm().isMissing();
            sum += area(lead.diameterMm().or(0.0));
        }
        double percent = 100 * sum / area(hole.diameterMm().or(0.0));
        if (percent > limit.value()) {
            out.finding(full(hole, leads, percent, limit, open));
        } else if (open) {
            leads.values().stream()
                    .filter(lead -> lead.diameterMm().isMissing())
                    .forEach(lead -> gaps.add("outer diameter", lead.id()));
        } else if (!leads.isEmpty()) {
            out.looked();
        }
    }

    private static double area(double diameter) {
        return QUARTER_PI * diameter * diameter;
    }

    private static Draft full(Hole hole, Map<String, Lead> leads, double percent, Threshold limit, boolean open) {
        Draft draft = Draft.of(
                        Severity.S3,
                        "hole too full: " + hole.name() + " is filled to " + (open ? "more than " : "")
                                + Figures.of(percent) + " % by " + String.join(", ", leads.keySet()))
                .about(hole.name(), "fill")
                .cause("hole " + hole.name())
                .input(hole.diameterMm())
                .sum(Figures.of(percent * area(hole.diameterMm().or(0.0)) / 100) + " mm2 of leads in "
                        + Figures.of(area(hole.diameterMm().or(0.0))) + " mm2, at most " + Figures.of(limit.value())
                        + " %")
                .judged(percent, limit.value(), "%", limit.source())
                .why("leads chafe in it, and none can be replaced without the others")
                .meter("push a spare wire through: it must go by hand")
                .fix("lead some of " + String.join(", ", leads.keySet()) + " another way, or widen " + hole.name());
        leads.values().forEach(lead -> {
            draft.input(lead.diameterMm());
            draft.seen(lead);
        });
        return draft;
    }

    private static Draft plug(Hole hole) {
        double plug = hole.plugMm().or(0.0);
        double wide = hole.diameterMm().or(0.0);
        return Draft.of(
                        Severity.S3,
                        "plug does not pass: " + Figures.of(plug) + " mm through " + hole.name() + " of "
                                + Figures.of(wide) + " mm")
                .about(hole.name(), "plug")
                .cause("hole " + hole.name() + "/plug")
                .input(hole.plugMm())
                .input(hole.diameterMm())
                .sum("largest plug " + Figures.of(plug) + " mm, hole " + Figures.of(wide) + " mm")
                .judged(plug, wide, "mm", "geometry")
                .why("the plug has to be crimped on in the aircraft, and comes off for every repair")
                .fix("widen " + hole.name() + " to more than " + Figures.of(plug) + " mm, or put a joint on one side");
    }
}
