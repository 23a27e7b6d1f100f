package ringout.check.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.PlanStep;
import ringout.graph.order.StepKind;
import ringout.model.Datum;
import ringout.model.Signature;

/**
 * Work that went on past a hold point nobody signed.
 *
 * <p>Why it matters: the hold point is where the last look is cheap; what it would have stopped is now under a lid or under power.
 *
 * <p>Condition: a step after a hold point is done, and there is no signature for the hold point (by its name or the id of its
 * step), nor is the step that signs it marked as done.
 *
 * <p>Does not see: what was looked at before it was signed.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "B07",
        name = "hold-point-unsigned",
        severity = Severity.S3,
        since = "0.3",
        needs = {"which steps are done", "who signed each hold point"})
public final class HoldUnsigned implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        BuildPlan plan = BuildPlan.of(at.circuit());
        boolean begun = at.aircraft().record().steps().stream()
                .anyMatch(step -> step.done().isKnown() || step.done() instanceof Datum.Unknown);
        if (!begun) {
            return;
        }
        List<String> open = new ArrayList<>();
        for (PlanStep hold : plan.steps(StepKind.SIGN)) {
            Optional<PlanStep> later = plan.steps().stream()
                    .filter(step ->
                            step.index() > hold.index() && step.step().done().isKnown())
                    .findFirst();
            boolean maybe = plan.steps().stream()
                    .anyMatch(step -> step.index() > hold.index() && step.step().done() instanceof Datum.Unknown);
            Signed signed = signed(at, hold);
            if (signed == Signed.YES) {
                out.looked();
            } else if ((later.isPresent() && signed == Signed.UNKNOWN) || (later.isEmpty() && maybe)) {
                open.add(name(hold));
            } else if (later.isPresent()) {
                out.finding(draft(hold, later.get()));
            }
        }
        if (!open.isEmpty()) {
            out.cannotTell(
                    "signature of " + String.join(", ", open) + ", or what is done after",
                    "ask who was there",
                    2,
                    open.toArray(new String[0]));
        }
        Lids.askUntold(at, out, plan.untold());
    }

    private enum Signed {
        YES,
        NO,
        UNKNOWN
    }

    private static String name(PlanStep hold) {
        return hold.step().objects().isEmpty()
                ? "step " + hold.step().id()
                : String.join(", ", hold.step().objects());
    }

    private static Signed signed(Situation at, PlanStep hold) {
        Signed found = hold.step().done() instanceof Datum.Unknown ? Signed.UNKNOWN : Signed.NO;
        if (hold.step().done().isKnown()) {
            return Signed.YES;
        }
        for (Signature signature : at.aircraft().record().signatures()) {
            String item = signature.item().strip();
            boolean meant = item.equalsIgnoreCase(hold.step().id())
                    || hold.step().objects().stream().anyMatch(item::equalsIgnoreCase);
            if (meant && signature.by().isKnown()) {
                return Signed.YES;
            }
            found = meant ? Signed.UNKNOWN : found;
        }
        return found;
    }

    private static Draft draft(PlanStep hold, PlanStep later) {
        return Draft.of(
                        Severity.S3,
                        "hold point unsigned: " + name(hold) + " is not signed, and step "
                                + later.step().id() + " after it is done")
                .about(name(hold))
                .at(Lids.place(hold))
                .at(Lids.place(later))
                .cause(Lids.cause(hold))
                .sum("signatures of " + name(hold) + ": 0; step " + later.step().id() + " done "
                        + later.step().done().or(""))
                .why("what the hold point would have stopped is now under a lid or under power")
                .fix("stop, look at what " + name(hold) + " holds for, and sign it before going on");
    }
}
