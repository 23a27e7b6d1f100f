package ringout.model.shape;

import java.util.List;
import ringout.model.Datum;

/** Whether a field was given at all. */
public final class Given {
    private Given() {}

    /** Whether a value of a field says anything; "?" and "n/a" do. */
    public static boolean is(Slot slot, Object value) {
        return switch (slot.kind()) {
            case SPAN -> false;
            case REQUIRED -> !value.toString().isEmpty();
            case DATUM -> !(value instanceof Datum.NotAsked);
            case SCALARS, RECORDS -> !((List<?>) value).isEmpty();
            case RECORD -> any(Shape.of(slot.type()), value);
        };
    }

    /** Whether a record says anything. */
    public static boolean any(Shape<?> shape, Object record) {
        return shape.slots().stream().anyMatch(slot -> is(slot, slot.get(record)));
    }

    /** Whether a record says anything beyond the key that names it. */
    public static boolean beyondKey(Shape<?> shape, Object record) {
        return shape.slots().stream().anyMatch(slot -> !shape.isKey(slot) && is(slot, slot.get(record)));
    }
}
