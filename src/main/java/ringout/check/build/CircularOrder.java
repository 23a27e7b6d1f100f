package ringout.check.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.order.Act;
import ringout.graph.order.Before;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.Covers;
import ringout.graph.order.PlanStep;
import ringout.graph.order.Precedence;

/**
 * Steps that wait for each other in a ring, so that none of them can come first.
 *
 * <p>Why it matters: the procedure cannot be followed; somebody will leave a step out, and nobody knows which.
 *
 * <p>Condition: a ring in the order that things force: a unit before its plugs, all that a lid hides before the lid, a lid
 * before what it carries, tests after what they test, power after what it comes from, steps after those they say they wait
 * for. Told in words, with the cheapest link to cut: a bench supply lead or an extension lead breaks most rings.
 *
 * <p>Does not see: needs that nobody wrote down, such as power for a setting; say so in the step ("after").
 *
 * <p>Reference: common practice, no source; the minutes of a cut are judgement.
 */
@CheckInfo(
        code = "B03",
        name = "circular-order",
        severity = Severity.S3,
        since = "0.3",
        needs = {"what is done in each step", "steps that a step waits for"})
public final class CircularOrder implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        BuildPlan plan = BuildPlan.of(at.circuit());
        if (!plan.begun()) {
            return;
        }
        Precedence order = Precedence.of(at.circuit());
        out.looked();
        order.rings().forEach(ring -> out.finding(draft(at, order, ring)));
        for (PlanStep step : plan.steps()) {
            for (String id : step.step().after()) {
                if (plan.step(id).isEmpty()) {
                    String waits = "step " + step.step().id();
                    out.cannotTell(
                            "step " + id + ", which " + waits + " waits for",
                            "ask the author of the procedure",
                            2,
                            waits);
                }
            }
        }
        Lids.askUntold(at, out, plan.untold());
    }

    private static Draft draft(Situation at, Precedence order, List<Before> ring) {
        List<Act> acts =
                ring.stream().map(edge -> order.acts().get(edge.first())).toList();
        String first = acts.get(0).words();
        List<String> waits = new ArrayList<>();
        for (int i = ring.size() - 1; i >= 0; i--) {
            waits.add(acts.get(i).words());
        }
        Before cheapest = ring.stream()
                .filter(edge -> !edge.cut().isEmpty())
                .min(Comparator.comparingDouble(Before::minutes))
                .orElse(ring.get(0));
        Draft draft = Draft.of(
                        Severity.S3,
                        "circular order: " + first + " waits for " + String.join(", which waits for ", waits))
                .about(acts.stream().map(Act::words).toList())
                .sum(ring.stream()
                        .map(edge -> order.acts().get(edge.first()).words() + " before "
                                + order.acts().get(edge.then()).words() + ": " + edge.why())
                        .collect(Collectors.joining("; ")))
                .why("no step of the ring can come first: somebody leaves one out, and nobody knows which")
                .fix(cheapest.cut().isEmpty() ? "take one of these needs away" : cut(cheapest));
        places(at, acts, draft);
        return draft;
    }

    private static String cut(Before edge) {
        boolean known = Double.isFinite(edge.minutes());
        return "cheapest cut: " + edge.cut() + (known ? ", about " + Figures.of(edge.minutes()) + " min" : "");
    }

    private static void places(Situation at, List<Act> acts, Draft draft) {
        BuildPlan plan = BuildPlan.of(at.circuit());
        Covers covers = Covers.of(at.circuit());
        for (Act act : acts) {
            if (act.step() >= 0) {
                PlanStep step = plan.steps().get(act.step());
                draft.at(Lids.place(step)).cause(Lids.cause(step));
            } else {
                covers.find(act.name())
                        .ifPresent(cover -> draft.cause("lid " + act.name())
                                .at(Lids.place(covers.all().get(cover))));
            }
        }
    }
}
