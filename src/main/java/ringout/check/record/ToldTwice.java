package ringout.check.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.Items;
import ringout.graph.order.LeadEnd;
import ringout.graph.order.PlanStep;
import ringout.graph.order.StepKind;
import ringout.model.Lead;

/**
 * One lead made in two steps, or two leads whose labels read alike.
 *
 * <p>Why it matters: the second time somebody looks for a lead that is long made, or takes another one for it.
 *
 * <p>Condition: two steps make the same end of a lead and none between them breaks it; steps whose words say "again" or "check" do
 * not count. Or the ids of two leads differ only by O and 0, by I, l and 1, by zeros in front or by signs between.
 *
 * <p>Does not see: rows written twice (T19); what the label on the lead says.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "X06",
        name = "told-twice",
        severity = Severity.S4,
        since = "0.3",
        needs = {"what is done in each step"})
public final class ToldTwice implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        if (at.aircraft().record().steps().isEmpty()) {
            return;
        }
        BuildPlan plan = BuildPlan.of(at.circuit());
        if (!plan.steps(StepKind.MAKE).isEmpty()) {
            out.looked();
            for (int row = 0; row < at.aircraft().leads().size(); row++) {
                twice(at, out, plan, row);
            }
            alike(at, out);
        }
        untold(at, out, plan);
    }

    private static void twice(Situation at, Outcomes out, BuildPlan plan, int row) {
        for (LeadEnd end : BuildPlan.ends(at.wiring(), row)) {
            List<PlanStep> making =
                    plan.making(end).stream().filter(step -> !repeats(step)).toList();
            for (int i = 1; i < making.size(); i++) {
                if (!broken(at, plan, end, making.get(i - 1), making.get(i))) {
                    out.finding(draft(at, end, making.get(i - 1), making.get(i)));
                    return;
                }
            }
        }
    }

    private static boolean repeats(PlanStep step) {
        String words =
                (step.step().attribute().or("") + " " + step.step().says().or("")).toLowerCase(Locale.ROOT);
        return words.contains("again") || words.contains("check");
    }

    private static boolean broken(Situation at, BuildPlan plan, LeadEnd end, PlanStep first, PlanStep second) {
        return plan.steps().subList(first.index(), second.index()).stream()
                .filter(step -> step.is(StepKind.BREAK))
                .anyMatch(step -> BuildPlan.ends(Items.of(at.circuit()), at.wiring(), step)
                        .contains(end));
    }

    private static Draft draft(Situation at, LeadEnd end, PlanStep first, PlanStep second) {
        Lead lead = at.aircraft().leads().get(end.row());
        String one = first.step().id();
        String two = second.step().id();
        String plug = at.wiring().plugName(end.unit(), end.plug());
        return Draft.of(
                        Severity.S4,
                        "told twice: " + lead.id() + " at " + plug + " is made in step " + one + " and again in step "
                                + two)
                .about(lead.id())
                .seen(lead)
                .at(Rows.place(first))
                .at(Rows.place(second))
                .cause(lead.id() + " told twice")
                .sum("steps that make " + plug + ": " + one + ", " + two + "; none between them breaks it")
                .why("somebody looks for a lead that is long made, or takes another one for it")
                .fix("take " + lead.id() + " out of step " + one + " or " + two + ", or say that it is checked again");
    }

    private static void alike(Situation at, Outcomes out) {
        Map<String, TreeSet<String>> byLook = new TreeMap<>();
        for (Lead lead : at.aircraft().leads()) {
            String id = lead.id().strip().toUpperCase(Locale.ROOT);
            byLook.computeIfAbsent(look(id), key -> new TreeSet<>()).add(id);
        }
        for (TreeSet<String> ids : byLook.values()) {
            if (ids.size() > 1) {
                List<String> names = new ArrayList<>(ids);
                Draft draft = Draft.of(
                                Severity.S4, "told twice: the leads " + String.join(" and ", names) + " read alike")
                        .about(names)
                        .cause("ids " + String.join(" ", names))
                        .sum("the ids differ by O and 0, I, l and 1, zeros in front or signs only")
                        .why("one is taken for the other, in the procedure and at the aircraft")
                        .fix("give one of " + String.join(", ", names) + " another id");
                at.aircraft().leads().stream()
                        .filter(lead -> ids.contains(lead.id().strip().toUpperCase(Locale.ROOT)))
                        .forEach(draft::seen);
                out.finding(draft);
            }
        }
    }

    /** The id as a tired eye reads it. */
    private static String look(String id) {
        return id.replace('O', '0')
                .replace('I', '1')
                .replace('L', '1')
                .replaceAll("[^A-Z0-9]", "")
                .replaceAll("(?<![0-9])0+(?=[0-9])", "");
    }

    private static void untold(Situation at, Outcomes out, BuildPlan plan) {
        List<String> ids = plan.untold().stream()
                .filter(step -> BuildPlan.ends(Items.of(at.circuit()), at.wiring(), step).stream()
                        .anyMatch(end -> !plan.making(end).isEmpty()))
                .map(step -> "step " + step.step().id())
                .toList();
        if (!ids.isEmpty()) {
            out.cannotTell(
                    "what is done in " + String.join(", ", ids),
                    "ask the author of the procedure",
                    2,
                    ids.toArray(new String[0]));
        }
    }
}
