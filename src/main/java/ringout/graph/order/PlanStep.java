package ringout.graph.order;

import java.util.List;
import java.util.Optional;
import ringout.model.Step;

/**
 * A step of the procedure with what it names found.
 *
 * @param index its place in the procedure
 * @param step the row
 * @param kind what is done; empty when nobody said so
 * @param items what it is done to, in the order of the row
 */
public record PlanStep(int index, Step step, Optional<StepKind> kind, List<Item> items) {
    /** Whether this is done in it. */
    public boolean is(StepKind wanted) {
        return kind.isPresent() && kind.get() == wanted;
    }

    /** The step in words: {@code step 8.1: close top plate}. */
    public String words() {
        String what = step.cover().known().orElse(String.join(", ", step.objects()));
        return ("step " + step.id() + ": " + step.action().or("?") + " " + what).strip();
    }
}
