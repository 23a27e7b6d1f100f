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
 * A redundant pair on one 0V conductor.
 *
 * <p>Why it matters: two supplies are drawn with care and share the one black wire; when it opens both are gone.
 *
 * <p>Condition: one lead, plug or joint lies on every return of both, a dominator of both in the 0V graph. A 0V plane of a unit they
 * share counts as one point and is a note only. What the project accepts as a common root, and all that lies before it, does not
 * count.
 *
 * <p>Does not see: a return in common that is doubled but too thin for both (P10, P11).
 *
 * <p>Reference: common practice, no source; dominators by T. Lengauer and R. E. Tarjan (1979).
 */
@CheckInfo(
        code = "R06",
        name = "redundant-pair-common-return",
        severity = Severity.S3,
        since = "0.3",
        needs = {"which units are redundant", "unit types of both"})
public final class CommonReturn implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Pairs.unknown(at, out);
        for (Pair pair : Pairs.known(at)) {
            SupplyLoss losses = SupplyLoss.of(at.circuit());
            boolean returned = List.of(pair.a(), pair.b()).stream()
                    .allMatch(side -> side.supplies().stream()
                            .anyMatch(
                                    s -> s.zero() >= 0 && !losses.zero(s.zero()).isEmpty()));
            if (returned) {
                out.looked();
                judge(at, out, pair);
            }
        }
    }

    /** The nearest of what they share: before any unit the lead rather than its plug. */
    private static Item lead(Items items, List<Integer> common) {
        return common.stream()
                .map(items::item)
                .takeWhile(item -> item.kind() != Item.Kind.UNIT)
                .filter(item -> item.kind() != Item.Kind.PLUG)
                .findFirst()
                .orElse(items.item(common.get(0)));
    }

    private static void judge(Situation at, Outcomes out, Pair pair) {
        List<Integer> common = pair.commonZero(at.circuit(), Roots.of(at.circuit()));
        if (common.isEmpty()) {
            return;
        }
        Items items = Items.of(at.circuit());
        Item first = lead(items, common);
        boolean plane = first.kind() == Item.Kind.UNIT;
        if (plane && pair.inputs()) {
            return;
        }
        String what =
                pair.inputs() ? "both inputs of " + at.directory().name(pair.a().unit()) : pair.names();
        Draft draft = Draft.of(
                        plane ? Severity.S5 : Severity.S3,
                        "redundant pair on one return: " + what + " return through " + (plane ? "the 0V of " : "")
                                + first.name())
                .about(pair.a().name(), pair.b().name())
                .sum("on every return of " + pair.names() + ": " + Pairs.names(items, common))
                .why(
                        plane
                                ? "a plane counts as one point: what breaks is the lead behind it"
                                : "without " + first.name() + " neither has a return, whatever feeds them")
                .meter("power off, " + first.name()
                        + " off: ohms from the 0V of each to pack minus, one must still read low")
                .fix("bring " + pair.a().name() + " or " + pair.b().name() + " a return that does not pass "
                        + first.name());
        if (first.kind() == Item.Kind.LEAD) {
            draft.at(at.aircraft().leads().get(first.number()));
        } else {
            draft.cause(first.name() + " return of " + pair.names());
        }
        out.finding(draft);
    }
}
