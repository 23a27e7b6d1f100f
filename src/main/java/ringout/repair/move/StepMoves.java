package ringout.repair.move;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import ringout.model.Step;
import ringout.model.edit.Edit;
import ringout.model.edit.Path;
import ringout.text.Span;

/** What is made too late in the plan made earlier: with an earlier step of the same action, the latest one first. */
final class StepMoves implements Move {
    @Override
    public Stream<Candidate> around(Fault fault) {
        List<Step> steps = fault.aircraft().record().steps();
        List<Candidate> all = new ArrayList<>();
        for (int late = 0; late < steps.size(); late++) {
            Step step = steps.get(late);
            if (step.objects().stream().anyMatch(fault::mentions)) {
                for (int early = late - 1; early >= 0; early--) {
                    if (steps.get(early).action().isKnown()
                            && steps.get(early)
                                    .action()
                                    .known()
                                    .equals(step.action().known())) {
                        moved(fault, step, steps.get(early), late - early, all);
                    }
                }
            }
        }
        return all.stream();
    }

    private static void moved(Fault fault, Step late, Step early, int steps, List<Candidate> all) {
        List<String> going = late.objects().stream().filter(fault::mentions).toList();
        List<String> staying = late.objects().stream()
                .filter(object -> !going.contains(object))
                .toList();
        List<String> joined = new ArrayList<>(early.objects());
        going.stream().filter(object -> !joined.contains(object)).forEach(joined::add);
        List<Edit> edits = new ArrayList<>();
        Move.set(step(early).then("objects"), String.join(" ", joined)).ifPresent(edits::add);
        if (staying.isEmpty()) {
            edits.add(new Edit.Remove(Span.NONE, step(late)));
        } else {
            Move.set(step(late).then("objects"), String.join(" ", staying)).ifPresent(edits::add);
        }
        if (edits.size() == 2) {
            all.add(new Candidate(edits, Costs.SETTING + steps));
        }
    }

    private static Path step(Step step) {
        return Path.of("record").then("steps").at(step.id());
    }
}
