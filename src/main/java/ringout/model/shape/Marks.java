package ringout.model.shape;

import java.util.Optional;
import ringout.model.Datum;

/** The marks a user writes instead of a value: "?" and "n/a". */
public final class Marks {
    private Marks() {}

    /** The datum a mark stands for: "?" or "n/a". */
    public static Optional<Datum<Object>> of(String text) {
        if (text.equals("?")) {
            return Optional.of(Datum.unknown());
        }
        if (text.equalsIgnoreCase("n/a") || text.equalsIgnoreCase("na")) {
            return Optional.of(Datum.notApplicable());
        }
        return Optional.empty();
    }

    /** The mark of a datum without a value; empty when it is not asked. */
    public static String write(Datum<?> datum) {
        if (datum instanceof Datum.Unknown) {
            return "?";
        }
        return datum.isNotApplicable() ? "n/a" : "";
    }
}
