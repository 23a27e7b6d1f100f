package ringout.check.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.Energised;
import ringout.graph.order.PlanStep;
import ringout.graph.order.StepKind;
import ringout.model.Datum;
import ringout.model.UnitKind;

/**
 * A step of the procedure that powers speed controllers with propellers fitted.
 *
 * <p>Why it matters: a motor that starts by itself cuts hands. There is no reason for it on the bench.
 *
 * <p>Condition: a step that energises reaches a speed controller over the leads made by then, and propellers are fitted: the step
 * says so, or an earlier one does or fits them and no later one says they are off. It cannot be waived.
 *
 * <p>Does not see: what is done after release for flight; propellers that are fitted and not written down.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "B06",
        name = "propellers-fitted",
        severity = Severity.S1,
        since = "0.3",
        needs = {"whether propellers are fitted in each step that energises"})
public final class PropellersFitted implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        if (at.aircraft().record().steps().isEmpty()) {
            return;
        }
        List<String> untold = new ArrayList<>();
        for (PlanStep step : BuildPlan.of(at.circuit()).steps(StepKind.ENERGISE)) {
            Optional<Integer> controller = controller(at, step);
            if (controller.isPresent()) {
                Datum<Boolean> fitted = fitted(at, step);
                if (fitted.is(true)) {
                    out.finding(draft(at, step, controller.get()));
                } else if (fitted.isMissing()) {
                    untold.add("step " + step.step().id());
                } else {
                    out.looked();
                }
            }
        }
        if (!untold.isEmpty()) {
            out.cannotTell(
                    "whether propellers are fitted in " + String.join(", ", untold),
                    "write it beside the step: propellers off",
                    1,
                    untold.toArray(new String[0]));
        }
    }

    /** The first speed controller that gets power in a step. */
    private static Optional<Integer> controller(Situation at, PlanStep step) {
        Energised now = Energised.after(at.circuit(), step);
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            if (at.directory().type(unit).kind().is(UnitKind.SPEED_CONTROLLER) && now.powers(unit)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    /** What this step says of propellers, or the last before it that says or fits something. */
    private static Datum<Boolean> fitted(Situation at, PlanStep step) {
        Datum<Boolean> last = Datum.notAsked();
        for (PlanStep earlier : BuildPlan.of(at.circuit()).steps().subList(0, step.index() + 1)) {
            Datum<Boolean> told = earlier.step().propellersOn();
            boolean fits = earlier.is(StepKind.FIT)
                    && earlier.step()
                            .attribute()
                            .or("")
                            .toLowerCase(Locale.ROOT)
                            .contains("propeller");
            if (!(told instanceof Datum.NotAsked)) {
                last = told;
            } else if (fits) {
                last = Datum.of(true);
            }
        }
        return last;
    }

    private static Draft draft(Situation at, PlanStep step, int controller) {
        String name = at.directory().name(controller);
        return Draft.of(
                        Severity.S1,
                        "propellers fitted: step " + step.step().id() + " powers " + name + " with propellers on")
                .about("step " + step.step().id())
                .at(Lids.place(step))
                .cause(Lids.cause(step))
                .sum("step " + step.step().id() + " brings supply to " + name + "; propellers are fitted by then")
                .why("a motor that starts by itself cuts hands")
                .fix("take the propellers off before step " + step.step().id() + " and say so in it");
    }
}
