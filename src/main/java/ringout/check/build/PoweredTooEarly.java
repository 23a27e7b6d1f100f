package ringout.check.build;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.Energised;
import ringout.graph.order.PlanStep;
import ringout.graph.order.StepKind;
import ringout.model.Datum;

/**
 * A unit that gets power before what it needs is seen to.
 *
 * <p>Why it matters: a transmitter without antenna burns its power stage, a unit with supply and no 0V returns its current
 * through signal wires, an ejector without safe pin fires, a locked gimbal burns its motors.
 *
 * <p>Condition: a step energises, over the leads made by then, a unit whose type names something that must be true before
 * power, and no step up to that one names the unit with the first two words of it, or of one of its alternatives ("antenna or
 * dummy load": either will do). An antenna on a lead counts. Or the supply of a unit is made and its 0V is not. S1 for antenna,
 * ejector and 0V unless the type says otherwise.
 *
 * <p>Does not see: whether the words of the step were followed; switches and regulators that are still off; propellers (B06).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "B04",
        name = "powered-too-early",
        severity = Severity.S1,
        since = "0.3",
        needs = {"what each type needs before power", "what is done in each step"})
public final class PoweredTooEarly implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        if (at.aircraft().record().steps().isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        Set<Integer> powered = new HashSet<>();
        for (PlanStep step : BuildPlan.of(at.circuit()).steps(StepKind.ENERGISE)) {
            Energised now = Energised.after(at.circuit(), step);
            for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
                if (now.powers(unit) && powered.add(unit)) {
                    needs(at, out, step, unit, gaps);
                    zero(at, out, step, unit, now);
                }
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("ask the maker, or the author of the procedure", 2));
    }

    private static void needs(Situation at, Outcomes out, PlanStep step, int unit, Gaps gaps) {
        var type = at.directory().type(unit);
        String name = at.directory().name(unit);
        if (Needs.antennaUntold(type)) {
            gaps.add("need of an antenna before power", name);
        }
        for (Needs.Need need : Needs.of(type)) {
            boolean wired = need.what().contains("antenna") && Needs.antennaWired(at.wiring(), unit);
            if (wired || met(at, need, step, unit)) {
                out.looked();
                continue;
            }
            List<String> open = untold(at, step, unit);
            if (open.isEmpty()) {
                out.finding(draft(at, need, step, unit));
            } else {
                gaps.add("whether " + String.join(", ", open) + " sees to '" + need.what() + "'", name);
            }
        }
    }

    private static boolean met(Situation at, Needs.Need need, PlanStep until, int unit) {
        return BuildPlan.of(at.circuit()).steps().stream()
                .filter(step -> step.index() <= until.index() && step.kind().isPresent())
                .filter(step -> BuildPlan.names(step, unit))
                .map(step -> step.step().attribute().or("") + " "
                        + step.step().says().or(""))
                .anyMatch(words -> need.isMetBy(words.toLowerCase(Locale.ROOT)));
    }

    /** Steps up to one that name the unit and do not say what they do. */
    private static List<String> untold(Situation at, PlanStep until, int unit) {
        List<String> ids = new ArrayList<>();
        for (PlanStep step : BuildPlan.of(at.circuit()).steps().subList(0, until.index() + 1)) {
            boolean untold = step.kind().isEmpty() || step.step().attribute() instanceof Datum.Unknown;
            if (untold && (step.items().isEmpty() || BuildPlan.names(step, unit))) {
                ids.add("step " + step.step().id());
            }
        }
        return ids;
    }

    private static Draft draft(Situation at, Needs.Need need, PlanStep step, int unit) {
        String name = at.directory().name(unit);
        return Draft.of(
                        need.severity(),
                        "powered too early: step " + step.step().id() + " powers " + name
                                + ", and no step before sees to '" + need.what() + "'")
                .about(name, need.what())
                .seen(at.directory().unit(unit))
                .at(Lids.place(step))
                .cause(name + "/before power")
                .sum("supply reaches " + name + " in step " + step.step().id() + "; " + name + " needs: " + need.what()
                        + "; steps before it that name " + name + " and say so: 0")
                .why("what the type needs before power is left to memory")
                .fix("add a step before step " + step.step().id() + ": check " + name + ", " + need.what());
    }

    /** A supply that is made before the 0V the list gives the unit. */
    private static void zero(Situation at, Outcomes out, PlanStep step, int unit, Energised now) {
        if (now.returns(unit)) {
            out.looked();
            return;
        }
        if (!now.complete(step).returns(unit)) {
            return;
        }
        String name = at.directory().name(unit);
        out.finding(Draft.of(
                        Severity.S1,
                        "powered too early: step " + step.step().id() + " powers " + name + " before its 0V is made")
                .about(name, "0V")
                .seen(at.directory().unit(unit))
                .at(Lids.place(step))
                .cause(name + "/0V before power")
                .sum("leads made by step " + step.step().id() + " bring supply to " + name + "; none of them its 0V")
                .why("its current returns through signal wires and other units")
                .meter("before power: " + name + " 0V to the 0V of the supply, under 0.5 ohm")
                .fix("make the 0V of " + name + " before step " + step.step().id()));
    }
}
