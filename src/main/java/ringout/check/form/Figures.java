package ringout.check.form;

import java.util.Locale;
import java.util.OptionalDouble;
import ringout.model.shape.Scalars;

/** Numbers as a message says them: no more digits than a meter shows. */
public final class Figures {
    private static final double HUNDRED = 100;
    private static final double TEN = 10;

    private Figures() {}

    /** A number: whole from 100 up, one decimal from 10 up, two below, without trailing zeros. */
    public static String of(double value) {
        double size = Math.abs(value);
        if (!Double.isFinite(value)) {
            return "?";
        }
        int decimals = size >= HUNDRED ? 0 : size >= TEN ? 1 : 2;
        return Scalars.number(Double.parseDouble(String.format(Locale.ROOT, "%." + decimals + "f", value)));
    }

    /** A number that may not be known. */
    public static String of(OptionalDouble value) {
        return value.isPresent() ? of(value.getAsDouble()) : "?";
    }
}
