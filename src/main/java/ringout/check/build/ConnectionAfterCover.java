package ringout.check.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wiring;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.Covers;
import ringout.graph.order.Items;
import ringout.graph.order.LeadEnd;
import ringout.graph.order.PlanStep;
import ringout.graph.order.Progress;
import ringout.graph.order.StepKind;
import ringout.model.Lead;

/**
 * A connection that the procedure makes after the lid over it is closed.
 *
 * <p>Why it matters: the plug cannot be reached, so the lid comes off again, or the plug is pushed in blind through a gap and
 * nobody sees whether it latched.
 *
 * <p>Condition: a step makes an end of a lead on a plug that a closed lid hides, or a lid that lies over that lid. A lid that
 * an earlier step opened again hides nothing; nor does one that leaves the plug reachable through a hole, declared so.
 *
 * <p>Does not see: a lead in no step at all (X05); whether a hand fits where the list says a plug can be reached.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "B01",
        name = "connection-after-cover",
        severity = Severity.S2,
        since = "0.3",
        needs = {"what each lid hides", "order of the steps"})
public final class ConnectionAfterCover implements Check {
    /** An end made too late, and the lid in the way. */
    private record Late(LeadEnd end, PlanStep step, Progress.Closed lid) {}

    @Override
    public void look(Situation at, Outcomes out) {
        if (!Lids.any(at)) {
            return;
        }
        BuildPlan plan = BuildPlan.of(at.circuit());
        List<PlanStep> making = plan.steps(StepKind.MAKE);
        if (making.isEmpty() && plan.untold().isEmpty()) {
            return;
        }
        Lids.ask(at, out);
        if (!making.isEmpty() && !at.aircraft().airframe().covers().isEmpty()) {
            out.looked();
        }
        late(at, making).forEach((key, ends) -> out.finding(draft(at, ends)));
        Lids.askUntold(at, out, untold(at, plan));
    }

    /** Ends made behind a closed lid, by row and step. */
    private static Map<String, List<Late>> late(Situation at, List<PlanStep> making) {
        Items items = Items.of(at.circuit());
        Progress progress = Progress.of(at.circuit());
        Map<String, List<Late>> late = new LinkedHashMap<>();
        for (PlanStep step : making) {
            for (LeadEnd end : BuildPlan.ends(items, at.wiring(), step)) {
                Optional<Progress.Closed> lid = progress.hiding(step.index(), end.unit(), end.plug());
                lid.ifPresent(closed -> late.computeIfAbsent(
                                end.row() + " " + step.index() + " " + closed.cover(), key -> new ArrayList<>(2))
                        .add(new Late(end, step, closed)));
            }
        }
        return late;
    }

    /** Steps that do not say what they do and name a plug or lead under a closed lid. */
    private static List<PlanStep> untold(Situation at, BuildPlan plan) {
        Items items = Items.of(at.circuit());
        Progress progress = Progress.of(at.circuit());
        return plan.untold().stream()
                .filter(step -> step.items().isEmpty()
                        || BuildPlan.ends(items, at.wiring(), step).stream()
                                .anyMatch(end -> progress.hiding(step.index(), end.unit(), end.plug())
                                                .isPresent()
                                        || lastChance(at, plan, end)))
                .toList();
    }

    /** Whether the end has no other step that makes it: then the untold step may be the one, or may close the lid before it. */
    private static boolean lastChance(Situation at, BuildPlan plan, LeadEnd end) {
        Covers covers = Covers.of(at.circuit());
        boolean hidden = false;
        for (int cover = 0; cover < covers.all().size(); cover++) {
            hidden |= covers.hides(cover, end.unit(), end.plug());
        }
        return hidden && plan.making(end).isEmpty();
    }

    private static Draft draft(Situation at, List<Late> ends) {
        Wiring wiring = at.wiring();
        Covers covers = Covers.of(at.circuit());
        Late first = ends.get(0);
        Lead lead = at.aircraft().leads().get(first.end().row());
        String lid = covers.name(first.lid().cover());
        String made = first.step().step().id();
        String closed = first.lid().by().step().id();
        List<String> plugs = ends.stream()
                .map(late -> wiring.plugName(late.end().unit(), late.end().plug()))
                .toList();
        String at2 = String.join(" and ", plugs);
        return Draft.of(
                        Severity.S2,
                        "connection after cover: " + lead.id() + " at " + at2 + " is made in step " + made
                                + ", under the " + lid + " closed in step " + closed)
                .about(lead.id(), lid)
                .at(lead)
                .at(Lids.place(first.step()))
                .at(Lids.place(first.lid().by()))
                .cause(Lids.cause(first.step()))
                .explains("B02", "B09", "B03")
                .sum("the " + lid + " hides " + at2 + "; step " + closed + " closes it, step " + made + " comes after; "
                        + Lids.again(covers, first.lid().cover()))
                .why("the plug cannot be reached: the lid comes off again, or the plug goes in blind")
                .meter("look at the aircraft or its build record: when " + lead.id() + " was in before the " + lid
                        + " closed, the plan is wrong")
                .fix("make " + lead.id() + " before step " + closed + ", or declare how " + at2
                        + " is reached with the " + lid + " on");
    }
}
