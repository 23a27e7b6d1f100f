package ringout.read.bind;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import ringout.model.Datum;
import ringout.model.shape.Slot;

/** Compares records by what they say, not by where they stand. */
public final class Alike {
    private Alike() {}

    /** The first field in which two records of one shape differ, such as {@code plugs C1 pins 3 role}; nothing when equal. */
    public static Optional<String> difference(Bag one, Bag other) {
        for (Slot slot : one.shape().slots()) {
            boolean sameKey = one.shape().isKey(slot) && Merge.fold(one).equals(Merge.fold(other));
            if (slot.kind() != Slot.Kind.SPAN && !sameKey) {
                Optional<String> where = difference(slot, one, other);
                if (where.isPresent()) {
                    return where;
                }
            }
        }
        return Optional.empty();
    }

    static Optional<String> difference(Slot slot, Bag one, Bag other) {
        return switch (slot.kind()) {
            case RECORD -> difference(one.child(slot), other.child(slot)).map(inner -> slot.name() + " " + inner);
            case RECORDS -> lists(slot, one.children(slot), other.children(slot));
            default ->
                same(one.get(slot).orElse(null), other.get(slot).orElse(null))
                        ? Optional.empty()
                        : Optional.of("`" + slot.name() + "`");
        };
    }

    private static Optional<String> lists(Slot slot, List<Bag> one, List<Bag> other) {
        for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
            String name = slot.name() + " "
                    + (one.get(i).key().isEmpty() ? i + 1 : one.get(i).key());
            Optional<String> where = difference(one.get(i), other.get(i)).map(inner -> name + " " + inner);
            if (where.isPresent()) {
                return where;
            }
        }
        return one.size() == other.size()
                ? Optional.empty()
                : Optional.of("the number of " + slot.name() + ", " + one.size() + " and " + other.size());
    }

    /** Whether two values say the same; not given, empty and an empty list are one. */
    static boolean same(@Nullable Object one, @Nullable Object other) {
        return (one == null || other == null) ? (blank(one) && blank(other)) : one.equals(other);
    }

    /** Whether a value says nothing. */
    static boolean blank(@Nullable Object value) {
        return value == null
                || value instanceof Datum.NotAsked
                || value.equals("")
                || (value instanceof List<?> list && list.isEmpty());
    }
}
