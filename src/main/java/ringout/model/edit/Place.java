package ringout.model.edit;

import java.util.List;
import ringout.model.Aircraft;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.text.Nearest;

/**
 * What a path means by the form of the aircraft alone, before any aircraft is looked at.
 *
 * @param owner shape of the record the last step is a field of
 * @param slot field of the last step
 */
public record Place(Shape<?> owner, Slot slot) {
    /** The meaning of a path. */
    public static Told<Place> of(Path path) {
        Shape<?> shape = Shape.of(Aircraft.class);
        List<Path.Step> steps = path.steps();
        for (int i = 0; ; i++) {
            Path.Step step = steps.get(i);
            Slot slot = shape.slot(step.field())
                    .filter(s -> s.kind() != Slot.Kind.SPAN)
                    .orElse(null);
            if (slot == null) {
                return Told.wrong("no field `" + step.field() + "` here", hint(step.field(), shape));
            }
            if (step.pick().given() && slot.kind() != Slot.Kind.RECORDS) {
                return Told.wrong("`" + step.field() + "` is not a list of records", "leave [ ] away");
            }
            if (i == steps.size() - 1) {
                return Told.right(new Place(shape, slot));
            }
            if (slot.kind() == Slot.Kind.RECORDS && !step.pick().given()) {
                return Told.wrong("`" + step.field() + "` is a list", "say which record: " + step.field() + "[...]");
            }
            if (slot.kind() != Slot.Kind.RECORD && slot.kind() != Slot.Kind.RECORDS) {
                return Told.wrong("`" + step.field() + "` has no fields inside", "");
            }
            shape = Shape.of(slot.type());
        }
    }

    private static String hint(String field, Shape<?> shape) {
        List<String> names = shape.slots().stream()
                .filter(slot -> slot.kind() != Slot.Kind.SPAN)
                .map(Slot::name)
                .toList();
        String near = Nearest.hint(field, names);
        return near.isEmpty() ? String.join(", ", names) : near;
    }
}
