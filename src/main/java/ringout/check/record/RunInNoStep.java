package ringout.check.record;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.Item;
import ringout.graph.order.Items;
import ringout.graph.order.LeadEnd;
import ringout.graph.order.PlanStep;
import ringout.graph.order.StepKind;
import ringout.model.Datum;
import ringout.model.Lead;

/**
 * A lead that no step makes, or a step that makes a lead that is not in the list.
 *
 * <p>Why it matters: what no step makes is forgotten or made at any time, under any lid; what is not in the list is checked by
 * nobody.
 *
 * <p>Condition: the procedure makes leads, and an end of a lead is made in none of its steps; or a step makes something that
 * is neither in the list nor aboard. Leads that come fitted are marked so ("delivered").
 *
 * <p>Does not see: whether the step was done.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "X05",
        name = "run-in-no-step",
        severity = Severity.S3,
        since = "0.3",
        needs = {"what is done in each step", "whether a lead comes fitted"})
public final class RunInNoStep implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        if (at.aircraft().record().steps().isEmpty()) {
            return;
        }
        BuildPlan plan = BuildPlan.of(at.circuit());
        List<PlanStep> making = plan.steps(StepKind.MAKE);
        if (making.isEmpty()) {
            return;
        }
        out.looked();
        Untold open = Untold.of(at, plan);
        Set<String> fitted = new TreeSet<>();
        Set<String> steps = new TreeSet<>();
        Set<String> named = new TreeSet<>();
        List<Lead> leads = at.aircraft().leads();
        for (int row = 0; row < leads.size(); row++) {
            List<LeadEnd> missing = BuildPlan.ends(at.wiring(), row).stream()
                    .filter(end -> plan.making(end).isEmpty())
                    .toList();
            Lead lead = leads.get(row);
            if (missing.isEmpty() || lead.delivered().is(true)) {
                continue;
            }
            if (lead.delivered() instanceof Datum.Unknown) {
                fitted.add(lead.id());
            } else if (open.ends().keySet().containsAll(missing)) {
                named.add(lead.id());
                missing.forEach(end -> steps.add(open.ends().getOrDefault(end, "")));
            } else {
                out.finding(noStep(at, lead, missing));
            }
        }
        ask(out, "whether " + String.join(", ", fitted) + " comes fitted", fitted);
        ask(out, "what is done in " + String.join(", ", steps) + " to " + String.join(", ", named), steps);
        making.forEach(step -> strange(out, step));
    }

    private static void ask(Outcomes out, String missing, Set<String> objects) {
        if (!objects.isEmpty()) {
            out.cannotTell(missing, "ask the author of the procedure", 2, objects.toArray(new String[0]));
        }
    }

    /** Ends of leads named by steps that do not say what they do, and the step of each. */
    private record Untold(Map<LeadEnd, String> ends) {
        static Untold of(Situation at, BuildPlan plan) {
            Map<LeadEnd, String> ends = new HashMap<>();
            for (PlanStep step : plan.untold()) {
                BuildPlan.ends(Items.of(at.circuit()), at.wiring(), step)
                        .forEach(end ->
                                ends.putIfAbsent(end, "step " + step.step().id()));
            }
            return new Untold(ends);
        }
    }

    private static Draft noStep(Situation at, Lead lead, List<LeadEnd> missing) {
        String ends = String.join(
                " and ",
                missing.stream()
                        .map(end -> at.wiring().plugName(end.unit(), end.plug()))
                        .toList());
        return Draft.of(Severity.S3, "run in no step: " + lead.id() + " at " + ends + " is made in no step")
                .about(lead.id())
                .at(lead)
                .sum("steps that make " + ends + ": 0")
                .why("it is forgotten, or made at any time and under any lid")
                .fix("add the leads that no step makes to a step, or mark them as delivered fitted");
    }

    private static void strange(Outcomes out, PlanStep step) {
        for (Item item : step.items()) {
            if (item instanceof Item.Strange of) {
                String id = step.step().id();
                out.finding(Draft.of(
                                Severity.S3,
                                "step without run: step " + id + " makes " + of.name() + ", which is not in the list")
                        .about("step " + id, of.name())
                        .at(Rows.place(step))
                        .cause(of.name())
                        .sum("rows and plugs called " + of.name() + ": 0")
                        .why("what is not in the list is checked by nobody")
                        .fix("add " + of.name() + " to the list, or take it out of step " + id));
            }
        }
    }
}
