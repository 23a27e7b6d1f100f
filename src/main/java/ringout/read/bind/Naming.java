package ringout.read.bind;

import java.util.Locale;
import ringout.model.Datum;
import ringout.model.shape.Scalars;
import ringout.model.shape.Shape;

/** How records and values are called in messages. */
public final class Naming {
    private Naming() {}

    /** A record with its key: {@code lead W12}, {@code unit type LOGGER}. */
    public static String of(Bag bag) {
        String key = bag.key();
        return key.isEmpty() ? kind(bag.shape()) : kind(bag.shape()) + " " + key;
    }

    /** What the records of a shape are called: {@code bus port}. */
    public static String kind(Shape<?> shape) {
        return shape.type()
                .getSimpleName()
                .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                .toLowerCase(Locale.ROOT);
    }

    /** A value as the user would write it. */
    static String value(Object value) {
        if (value instanceof Datum.Known<?> known) {
            return Scalars.write(known.value());
        }
        if (value instanceof Datum<?> datum) {
            return datum.absence();
        }
        return Scalars.write(value);
    }
}
