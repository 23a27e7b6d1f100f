package ringout.model.edit;

import java.util.List;
import java.util.Optional;
import ringout.model.Aircraft;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;

/** Reads what stands at a path of an aircraft. */
public final class Lookup {
    private Lookup() {}

    /** The field, record or list the path leads to; nothing where it leads nowhere. */
    public static Optional<Object> of(Aircraft aircraft, Path path) {
        Object at = aircraft;
        for (Path.Step step : path.steps()) {
            Optional<Object> next = step(at, step);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            at = next.get();
        }
        return Optional.of(at);
    }

    private static Optional<Object> step(Object record, Path.Step step) {
        Optional<Slot> slot = Shape.of(record.getClass()).slot(step.field());
        if (slot.isEmpty()) {
            return Optional.empty();
        }
        Object value = slot.get().get(record);
        if (!step.pick().given() || !(value instanceof List<?> list)) {
            return Optional.of(value);
        }
        return Pick.find(Shape.of(slot.get().type()), list, step.pick()) instanceof Told.Right<Integer> found
                ? Optional.of(list.get(found.value()))
                : Optional.empty();
    }
}
