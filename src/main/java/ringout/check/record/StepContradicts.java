package ringout.check.record;

import java.util.LinkedHashSet;
import java.util.Set;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.Item;
import ringout.graph.order.Items;
import ringout.graph.order.PlanStep;
import ringout.model.Datum;

/**
 * A step of the procedure that says something else of a unit or lead than the list.
 *
 * <p>Why it matters: the mechanic builds what the step says, everybody else works from the list.
 *
 * <p>Condition: a step names a field of the row (address, terminator, length, propeller) and a value, and the row has another
 * value. A unit with several ports agrees when one of them does. Words that are no field of the row are left alone.
 *
 * <p>Does not see: which of the two is right; a slip of the pen is for the author to mend.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "X04",
        name = "procedure-contradicts-list",
        severity = Severity.S2,
        since = "0.3",
        needs = {"what the step says", "value in the list"})
public final class StepContradicts implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        if (at.aircraft().record().steps().isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        Set<String> unclear = new LinkedHashSet<>();
        for (PlanStep step : BuildPlan.of(at.circuit()).steps()) {
            Datum<String> says = step.step().says();
            boolean told = !(says instanceof Datum.NotAsked) && !says.isNotApplicable();
            if (told && step.step().attribute().isMissing()) {
                unclear.add("step " + step.step().id());
            } else if (told) {
                step.items().forEach(item -> look(at, out, step, item, gaps, unclear));
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("look at the aircraft and write it into the list", 2));
        if (!unclear.isEmpty()) {
            out.cannotTell(
                    "what is said in " + String.join(", ", unclear),
                    "ask the author of the procedure",
                    2,
                    unclear.toArray(new String[0]));
        }
    }

    private static void look(Situation at, Outcomes out, PlanStep step, Item item, Gaps gaps, Set<String> unclear) {
        String attribute = step.step().attribute().or("");
        Listed listed = Listed.of(at, item, attribute);
        if (!listed.exists()) {
            return;
        }
        String name = Items.of(at.circuit()).name(item);
        if (!step.step().says().isKnown()) {
            unclear.add("step " + step.step().id());
        } else if (listed.isMissing()) {
            gaps.add(attribute + " in the list", name);
        } else if (listed.agrees(step.step().says().or(""))) {
            out.looked();
        } else {
            out.finding(draft(at, step, item, listed));
        }
    }

    private static Draft draft(Situation at, PlanStep step, Item item, Listed listed) {
        String name = Items.of(at.circuit()).name(item);
        String attribute = step.step().attribute().or("");
        String says = step.step().says().or("");
        String id = step.step().id();
        Draft draft = Draft.of(
                        Severity.S2,
                        "procedure contradicts list: step " + id + " says " + attribute + " " + says + " of " + name
                                + ", the list says " + listed.words())
                .about(name, attribute)
                .at(Rows.place(step))
                .cause(item instanceof Item.OfLead ? name : name + "/" + listed.field())
                .cause("step " + id)
                .sum("step " + id + ": " + says + "; list: " + listed.words())
                .why("the mechanic builds what the step says, everybody else works from the list")
                .fix("ask the author, then write " + says + " into the row of " + name + " or " + listed.words()
                        + " into step " + id);
        Rows.see(at, item, draft);
        return draft;
    }
}
