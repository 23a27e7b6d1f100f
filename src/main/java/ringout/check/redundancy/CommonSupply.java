package ringout.check.redundancy;

import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.loss.Item;
import ringout.graph.loss.Items;
import ringout.graph.loss.Pair;
import ringout.graph.loss.Roots;
import ringout.graph.loss.SupplyLoss;

/**
 * A redundant pair on one supply: two units that stand in for each other, or two inputs of a unit, that one thing takes both.
 *
 * <p>Why it matters: the second is there for the day the first fails, and fails with it.
 *
 * <p>Condition: one item (lead, plug, fuse, regulator, joint, unit) lies on every way of the supply of both, a dominator of both in
 * the supply graph. What the project accepts as a common root, and all that lies before it, does not count: the battery is common to
 * everything.
 *
 * <p>Does not see: a common cause outside the wiring (heat, water, firmware); a return in common (R06).
 *
 * <p>Reference: common practice, no source; dominators by T. Lengauer and R. E. Tarjan (1979).
 */
@CheckInfo(
        code = "R03",
        name = "redundant-pair-common-supply",
        severity = Severity.S3,
        since = "0.3",
        needs = {"which units are redundant", "unit types of both"})
public final class CommonSupply implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Pairs.unknown(at, out);
        for (Pair pair : Pairs.known(at)) {
            SupplyLoss losses = SupplyLoss.of(at.circuit());
            boolean fed = List.of(pair.a(), pair.b()).stream()
                    .allMatch(side -> side.supplies().stream().anyMatch(s -> losses.reaches(s.plus())));
            if (fed) {
                out.looked();
                List<Integer> common = pair.commonSupply(at.circuit(), Roots.of(at.circuit()));
                if (!common.isEmpty()) {
                    out.finding(draft(at, pair, common));
                }
            }
        }
    }

    private static Draft draft(Situation at, Pair pair, List<Integer> common) {
        Items items = Items.of(at.circuit());
        Item first = items.item(common.get(0));
        String what =
                pair.inputs() ? "both inputs of " + at.directory().name(pair.a().unit()) : pair.names();
        Draft draft = Draft.of(Severity.S3, "redundant pair on one supply: " + what + " hang on " + first.name())
                .about(pair.a().name(), pair.b().name())
                .path(Pairs.way(at, pair.b()))
                .sum("on every way to " + pair.names() + ": " + Pairs.names(items, common))
                .source("common practice, no source")
                .why("the second is there for the day the first fails: without " + first.name() + " both are gone")
                .meter("with " + first.name() + " off or pulled, measure at " + pair.names()
                        + ": one of them must still be fed")
                .fix("feed " + pair.a().name() + " or " + pair.b().name() + " from another source than " + first.name()
                        + (Roots.of(at.circuit()).none()
                                ? ", or declare " + first.name() + " an accepted common root"
                                : ""))
                .explains("R10");
        Pairs.leadsTo(at, pair, items, common.get(0)).forEach(draft::at);
        return draft;
    }
}
