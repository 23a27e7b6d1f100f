package ringout.check.power;

import java.util.List;
import ringout.check.form.Assumed;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Sound;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Part;
import ringout.graph.Trail;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.Protection;
import ringout.graph.power.SupplyTree;
import ringout.model.Datum;

/**
 * Two fuses in line of which the wrong one may open.
 *
 * <p>Why it matters: a fault in one branch takes the whole rail away, because the fuse nearer to the pack opens first.
 *
 * <p>Condition: the rating of a fuse over that of the next one behind it on the same rail is below 1.6. Never across a regulator.
 *
 * <p>Does not see: the curves of the fuses.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "P24",
        name = "fuse-order",
        severity = Severity.S3,
        since = "0.1",
        needs = {"fuse rating"})
public final class FuseOrder implements Sound {
    @Override
    public void look(Situation at, Outcomes out) {
        Protection protection = Protection.of(at.circuit());
        SupplyTree tree = PowerGraph.of(at.circuit()).tree();
        Threshold ratio = at.limit(Thresholds.FUSE_RATIO);
        Gaps gaps = new Gaps();
        for (Part behind : protection.fuses()) {
            List<Part> line = protection.fusesBefore(end(behind, tree), tree);
            if (line.size() > 1) {
                judge(at, out, gaps, ratio, line.get(1), behind);
            }
        }
        gaps.tell(out, PowerData::way);
    }

    private static int end(Part fuse, SupplyTree tree) {
        return tree.edgeTo(fuse.to()) == fuse.edge() ? fuse.to() : fuse.from();
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, Threshold ratio, Part before, Part behind) {
        Protection protection = Protection.of(at.circuit());
        Datum<Double> first = protection.rating(before);
        Datum<Double> second = protection.rating(behind);
        if (!first.isKnown() || !second.isKnown()) {
            List.of(before, behind).stream()
                    .filter(fuse -> !protection.rating(fuse).isKnown())
                    .forEach(fuse -> gaps.add(PowerData.FUSE, FuseRows.where(at, fuse)));
        } else if (first.or(0.0) < ratio.value() * second.or(0.0)) {
            out.finding(draft(at, ratio, before, behind));
        } else {
            out.looked();
        }
    }

    private static Draft draft(Situation at, Threshold limit, Part before, Part behind) {
        Protection protection = Protection.of(at.circuit());
        Datum<Double> first = protection.rating(before);
        Datum<Double> second = protection.rating(behind);
        double ratio = first.or(0.0) / second.or(1.0);
        Draft draft = Draft.of(
                        Severity.S3,
                        "fuses in the wrong order: " + FuseRows.words(at, before) + " before "
                                + FuseRows.words(at, behind))
                .about(FuseRows.where(at, before), FuseRows.where(at, behind))
                .path(PowerGraph.of(at.circuit()).tree().trailTo(behind.to()).orElse(Trail.NONE))
                .sum(Figures.of(first.or(0.0)) + " A / " + Figures.of(second.or(0.0)) + " A = " + Figures.of(ratio)
                        + ", at least " + Figures.of(limit.value()) + " wanted")
                .judged(ratio, limit.value(), "", limit.source())
                .input(first)
                .input(second)
                .onAssumption(Assumed.turns(first, f -> limit.value() - ratio * f)
                        || Assumed.turns(second, f -> limit.value() - ratio / f))
                .why("a fault behind " + FuseRows.where(at, behind) + " may open " + FuseRows.where(at, before)
                        + ", and everything behind it goes dark")
                .meter("read the ratings on both fuses")
                .fix("fit at most " + Figures.of(first.or(0.0) / limit.value()) + " A in " + FuseRows.where(at, behind)
                        + ", or leave one of the two out");
        FuseRows.at(at, draft, before);
        FuseRows.at(at, draft, behind);
        return draft;
    }
}
