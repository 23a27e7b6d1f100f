package ringout.check.record;

import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.order.Item;
import ringout.graph.order.Items;
import ringout.model.ListedValue;

/**
 * A tail that differs from the baseline of its type without a change on record.
 *
 * <p>Why it matters: what was proved for the type does not hold for this tail, and nobody knows why it is so.
 *
 * <p>Condition: a value of the baseline is not that of the list, or its row is gone, and no change on record names the unit or
 * lead. Serial numbers differ by nature and are left out.
 *
 * <p>Does not see: rows the baseline does not tell of; whether the change was wise.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "X12",
        name = "tail-differs-from-baseline",
        severity = Severity.S3,
        since = "0.3",
        needs = {"field and value of the baseline", "value in the list"})
public final class TailDiffers implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        if (at.aircraft().record().baseline().isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        for (ListedValue base : at.aircraft().record().baseline()) {
            if (!"serial".equalsIgnoreCase(base.field().or("").strip())) {
                look(at, out, base, gaps);
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("look into the baseline and at the aircraft", 2));
    }

    private static void look(Situation at, Outcomes out, ListedValue base, Gaps gaps) {
        Item item = Items.of(at.circuit()).find(base.item());
        boolean gone = item instanceof Item.Strange;
        Listed listed = Listed.of(at, item, base.field().or(""));
        if (!gone && (base.value().isMissing() || !listed.exists())) {
            gaps.add("field and value in the baseline", base.item());
        } else if (!gone && listed.isMissing()) {
            gaps.add(base.field().or("") + " in the list", base.item());
        } else if ((!gone && listed.agrees(base.value().or(""))) || changed(at, base.item())) {
            out.looked();
        } else {
            out.finding(draft(at, base, item, listed));
        }
    }

    private static boolean changed(Situation at, String item) {
        return at.aircraft().record().changes().stream()
                .anyMatch(change -> change.objects().stream().anyMatch(item::equalsIgnoreCase));
    }

    private static Draft draft(Situation at, ListedValue base, Item item, Listed listed) {
        boolean gone = item instanceof Item.Strange;
        String field = base.field().or("");
        String now = gone ? "is not in the list" : "has " + field + " " + listed.words();
        Draft draft = Draft.of(
                        Severity.S3,
                        "tail differs from baseline: " + base.item() + " " + now + ", in the baseline "
                                + (gone ? "it is" : base.value().or("")) + ", and no change is on record")
                .about(base.item(), field)
                .at(Rows.place(base, "baseline"))
                .cause(base.item() + "/baseline " + field)
                .sum("baseline: " + base.value().or("there") + "; list: " + (gone ? "no such row" : listed.words())
                        + "; changes that name " + base.item() + ": 0")
                .why("what was proved for the type does not hold for this tail, and nobody knows why it is so")
                .fix("write the change of " + base.item() + " down with its reason, or bring it back to the baseline");
        Rows.see(at, item, draft);
        return draft;
    }
}
