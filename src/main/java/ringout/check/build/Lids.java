package ringout.check.build;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Place;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.Covers;
import ringout.graph.order.PlanStep;
import ringout.graph.order.Progress;
import ringout.graph.order.StepKind;
import ringout.model.Cover;

/** What the checks of lids and steps have in common: whether there is anything to look at, and what is missing for it. */
final class Lids {
    private Lids() {}

    /** Whether there is a procedure and a lid in it. */
    static boolean any(Situation at) {
        if (at.aircraft().record().steps().isEmpty()) {
            return false;
        }
        return !at.aircraft().airframe().covers().isEmpty()
                || !BuildPlan.of(at.circuit()).steps(StepKind.CLOSE).isEmpty();
    }

    /** Where a step stands. */
    static Place place(PlanStep step) {
        return new Place(step.step().at(), step.step().id(), step.words());
    }

    /** Where a lid stands. */
    static Place place(Cover cover) {
        return new Place(cover.at(), cover.name(), cover.name() + ": lid");
    }

    /** The token that folds findings about one step. */
    static String cause(PlanStep step) {
        return "step " + step.step().id();
    }

    /** What it takes to open a lid again, in words. */
    static String again(Covers covers, int cover) {
        OptionalDouble minutes = covers.minutes(cover);
        return minutes.isPresent()
                ? Figures.of(minutes) + " min to open it again"
                : "minutes to open it again not told";
    }

    /** Asks for what hides what, and for the steps that close it. */
    static void ask(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        Covers covers = Covers.of(at.circuit());
        Progress progress = Progress.of(at.circuit());
        for (PlanStep step : progress.withoutCover()) {
            gaps.add("lid", "step " + step.step().id());
        }
        for (int cover : progress.neverClosed()) {
            gaps.add("step that closes", covers.name(cover));
        }
        for (int cover = 0; cover < covers.all().size(); cover++) {
            if (covers.all().get(cover).hides().isEmpty()) {
                gaps.add("what lies under the lid", covers.name(cover));
            }
            for (String name : covers.strange(cover)) {
                gaps.add("what is meant by " + name + " under the lid", covers.name(cover));
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("look at the procedure and at the lid, write it down", 2));
    }

    /** Asks what is done in the steps that do not say so, when they come late enough to matter. */
    static void askUntold(Situation at, Outcomes out, List<PlanStep> steps) {
        List<String> ids = new ArrayList<>();
        steps.forEach(step -> ids.add("step " + step.step().id()));
        if (!ids.isEmpty()) {
            out.cannotTell(
                    "what is done in " + String.join(", ", ids),
                    "ask the author of the procedure",
                    2,
                    ids.toArray(new String[0]));
        }
    }
}
