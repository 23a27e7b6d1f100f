package ringout.read.bind;

import java.util.Optional;
import ringout.model.Datum;

/** The marks a user writes instead of a value. */
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
}
