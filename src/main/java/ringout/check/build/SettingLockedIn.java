package ringout.check.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.Covers;
import ringout.graph.order.PlanStep;
import ringout.graph.order.Progress;
import ringout.graph.order.StepKind;

/**
 * A setting made by hand on a unit that a lid hides, and no step that makes it before the lid is closed.
 *
 * <p>Why it matters: the switch, button or slot is out of reach; it stays as it came from the shelf, or the lid comes off again.
 *
 * <p>Condition: a unit under a lid has a terminator switch, an address that is not set over the link, or a button, slot or
 * selector its type names, and no step before the lid sets it; an address that was read back and is right counts as set.
 * What can be set over the link is exempt.
 *
 * <p>Does not see: whether the value set is the right one (X04); a switch that sticks out of the lid, unless the unit is declared
 * reachable through a hole.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "B11",
        name = "setting-locked-in",
        severity = Severity.S3,
        since = "0.3",
        needs = {"where and how a setting is made", "what each lid hides", "order of the steps"})
public final class SettingLockedIn implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        if (!Lids.any(at)) {
            return;
        }
        Gaps gaps = new Gaps();
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            Optional<Progress.Closed> lid = Progress.of(at.circuit()).lastChance(unit);
            if (lid.isPresent()) {
                for (HandSettings.Setting setting : HandSettings.of(at, unit)) {
                    look(at, out, unit, setting, lid.get(), gaps);
                }
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("look at the unit or its manual, or ask the author of the procedure", 3));
    }

    private static void look(
            Situation at, Outcomes out, int unit, HandSettings.Setting setting, Progress.Closed lid, Gaps gaps) {
        if (setting.needsNoHand()) {
            out.looked();
            return;
        }
        List<String> open = new ArrayList<>();
        for (PlanStep step :
                BuildPlan.of(at.circuit()).steps().subList(0, lid.by().index())) {
            if (BuildPlan.names(step, unit)) {
                String words = step.step().attribute().or("").toLowerCase(Locale.ROOT);
                if (step.is(StepKind.SET) && words.contains(setting.word())) {
                    out.looked();
                    return;
                }
                boolean untold = step.kind().isEmpty()
                        || (step.is(StepKind.SET) && step.step().attribute().isMissing());
                if (untold) {
                    open.add("step " + step.step().id());
                }
            }
        }
        String name = at.directory().name(unit);
        if (!open.isEmpty()) {
            gaps.add("what is set in " + String.join(", ", open), name);
        } else if (setting.onLink().isMissing()) {
            gaps.add("way to set the " + setting.name() + ", by hand or over the link,", name);
        } else {
            out.finding(draft(at, unit, setting, lid));
        }
    }

    private static Draft draft(Situation at, int unit, HandSettings.Setting setting, Progress.Closed lid) {
        String name = at.directory().name(unit);
        Covers covers = Covers.of(at.circuit());
        String step = lid.by().step().id();
        return Draft.of(
                        Severity.S3,
                        "setting locked in: " + setting.name() + " on " + name + " is not set before step " + step
                                + " closes the " + covers.name(lid.cover()))
                .about(name, setting.name())
                .seen(at.directory().unit(unit))
                .at(Lids.place(lid.by()))
                .cause(name + "/" + setting.name() + " before the lid")
                .sum("steps before step " + step + " that set it: 0; it is not set over the link; "
                        + Lids.again(covers, lid.cover()))
                .why("it stays as it came from the shelf, or the lid comes off again")
                .fix("add a step before step " + step + ": set " + setting.word() + " of " + name);
    }
}
