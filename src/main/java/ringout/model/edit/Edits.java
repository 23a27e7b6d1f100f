package ringout.model.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import ringout.model.Aircraft;
import ringout.model.shape.Identity;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.text.Problem;

/** Applies edits to an aircraft, one after the other; the aircraft given is not changed. */
public final class Edits {
    private Edits() {}

    /** Applies all edits in order; one that cannot be made is told and left out. */
    public static Edited apply(Aircraft aircraft, List<? extends Edit> edits) {
        List<Problem> problems = new ArrayList<>();
        Aircraft now = aircraft;
        for (Edit edit : edits) {
            Told<Object> told = apply(now, edit);
            if (told instanceof Told.Right<Object> right) {
                now = (Aircraft) right.value();
            } else {
                Told.Wrong<Object> wrong = (Told.Wrong<Object>) told;
                problems.add(new Problem(edit.at(), edit.path() + ": " + wrong.why(), wrong.hint()));
            }
        }
        return new Edited(now, List.copyOf(problems));
    }

    private static Told<Object> apply(Aircraft aircraft, Edit edit) {
        return walk(Shape.of(Aircraft.class), aircraft, edit.path().steps(), edit);
    }

    private static Told<Object> walk(Shape<?> shape, Object record, List<Path.Step> steps, Edit edit) {
        Path.Step step = steps.get(0);
        List<Path.Step> rest = steps.subList(1, steps.size());
        Slot slot = shape.slot(step.field()).orElse(null);
        if (slot == null) {
            return Told.wrong("no field `" + step.field() + "` here", "");
        }
        Object value = slot.get(record);
        Told<Object> changed =
                rest.isEmpty() ? last(slot, value, step.pick(), edit) : inner(slot, value, step, rest, edit);
        return changed.then(now -> Told.right(with(shape, record, slot, now)));
    }

    private static Told<Object> inner(Slot slot, Object value, Path.Step step, List<Path.Step> rest, Edit edit) {
        Shape<?> shape = Shape.of(slot.type());
        if (slot.kind() == Slot.Kind.RECORD) {
            return walk(shape, value, rest, edit);
        }
        List<?> list = (List<?>) value;
        if (edit instanceof Edit.Set && Pick.createsSetting(shape, list, step.pick())) {
            Object fresh =
                    with(shape, shape.empty(), shape.slots().get(1), step.pick().key());
            return walk(shape, fresh, rest, edit).then(made -> Told.right(plus(list, made)));
        }
        return Pick.find(shape, list, step.pick())
                .then(index -> walk(shape, list.get(index), rest, edit)
                        .then(now -> distinct(shape, replaced(list, index, now))));
    }

    private static Told<Object> last(Slot slot, Object value, Path.Pick pick, Edit edit) {
        if (edit instanceof Edit.Set set) {
            return Told.right(set.value());
        }
        Shape<?> shape = Shape.of(slot.type());
        List<?> list = (List<?>) value;
        if (edit instanceof Edit.Add add) {
            return distinct(shape, plus(list, add.item()));
        }
        return Pick.find(shape, list, pick).then(index -> Told.right(without(list, index)));
    }

    private static Told<Object> distinct(Shape<?> shape, List<Object> list) {
        if (Identity.unique(shape)) {
            java.util.Set<String> seen = new java.util.HashSet<>();
            for (Object item : list) {
                if (!seen.add(Identity.fold(shape, Identity.key(shape, item)))) {
                    return Told.wrong("there would be two of '" + Identity.key(shape, item) + "'", "");
                }
            }
        }
        return Told.right(list);
    }

    private static <R> Object with(Shape<R> shape, Object record, Slot slot, Object value) {
        return Objects.requireNonNull(shape.with(shape.type().cast(record), slot.name(), value));
    }

    private static List<Object> plus(List<?> list, Object item) {
        return copy(list, copy -> copy.add(item));
    }

    private static List<Object> replaced(List<?> list, int index, Object item) {
        return copy(list, copy -> copy.set(index, item));
    }

    private static List<Object> without(List<?> list, int index) {
        return copy(list, copy -> copy.remove(index));
    }

    private static List<Object> copy(List<?> list, Function<List<Object>, Object> change) {
        List<Object> copy = new ArrayList<>(list);
        Object unused = change.apply(copy);
        return Collections.unmodifiableList(copy);
    }
}
