package ringout.check.record;

import java.util.Locale;
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
 * A difference between the aircraft and its list that nobody has decided on.
 *
 * <p>Why it matters: all verdicts are about the list. As long as nobody says which of the two is right, they may be about another
 * aircraft.
 *
 * <p>Condition: a value found on the aircraft is not that of the list, or the thing found is not in the list at all, and the
 * difference is neither accepted nor to be corrected. When the list is brought up to date the difference is gone.
 *
 * <p>Does not see: what nobody looked at; what units report of themselves (A11).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "X03",
        name = "difference-undecided",
        severity = Severity.S3,
        since = "0.3",
        needs = {"field and value found", "value in the list"})
public final class DifferenceUndecided implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        if (at.aircraft().record().found().isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        Items items = Items.of(at.circuit());
        for (ListedValue found : at.aircraft().record().found()) {
            Item item = items.find(found.item());
            Listed listed = Listed.of(at, item, found.field().or(""));
            boolean strange = item instanceof Item.Strange;
            if (decided(found)) {
                out.looked();
            } else if (!strange && found.value().isMissing()) {
                gaps.add("value found", found.item());
            } else if (!strange && !listed.exists()) {
                gaps.add("field of the list that is meant by " + found.field().or("?"), found.item());
            } else if (!strange && listed.agrees(found.value().or(""))) {
                out.looked();
            } else {
                out.finding(draft(at, found, item, listed));
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("ask who looked, or look again", 2));
    }

    private static boolean decided(ListedValue found) {
        String decision = found.decision().or("").strip().toLowerCase(Locale.ROOT);
        return decision.startsWith("accept") || decision.startsWith("correct");
    }

    private static Draft draft(Situation at, ListedValue found, Item item, Listed listed) {
        boolean strange = item instanceof Item.Strange;
        String what = strange
                ? found.item() + " is on the aircraft and not in the list"
                : found.item() + " has " + found.field().or("") + " "
                        + found.value().or("") + " on the aircraft, " + listed.words() + " in the list";
        Draft draft = Draft.of(Severity.S3, "difference undecided: " + what)
                .about(found.item(), found.field().or(""))
                .at(Rows.place(found, "found"))
                .cause(found.item() + "/found " + found.field().or(""))
                .sum(
                        strange
                                ? "rows called " + found.item() + ": 0; decision: none"
                                : "found: " + found.value().or("") + "; list: " + listed.words() + "; decision: none")
                .input(found.value())
                .why("all verdicts are about the list: as long as nobody decides they may be about another aircraft")
                .fix(
                        strange
                                ? "trace " + found.item()
                                        + " before anything else, then add it to the list or take it out"
                                : "decide: accept and write " + found.value().or("") + " into the row of "
                                        + found.item() + ", or correct the aircraft");
        Rows.see(at, item, draft);
        return draft;
    }
}
