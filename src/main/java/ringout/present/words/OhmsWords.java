package ringout.present.words;

import java.util.Locale;
import ringout.solve.meter.Reading;

/** Resistances as a meter shows them and a technician says them. */
public final class OhmsWords {
    /** What a meter shows when nothing conducts. */
    public static final String NO_CONNECTION = "no connection (over range)";

    private static final double KILO = 1e3;
    private static final double MEGA = 1e6;
    private static final double FINE = 1;

    private OhmsWords() {}

    /** A resistance with its unit: {@code 0.125 ohm}, {@code 59.6 ohm}, {@code 15.0 kohm}. */
    public static String of(double ohm) {
        if (Double.isInfinite(ohm)) {
            return "over range";
        }
        return number(ohm) + " " + unit(ohm);
    }

    /** A reading short enough for a cell of a table: {@code 59.6}, {@code 15.0 k}, {@code open}. */
    public static String cell(Reading reading) {
        if (!(reading instanceof Reading.Ohms ohms)) {
            return "open";
        }
        double ohm = ohms.ohm();
        return number(ohm) + (ohm < KILO ? "" : ohm < MEGA ? " k" : " M");
    }

    /** From one resistance to another; the unit once when it is the same. */
    public static String range(double least, double most) {
        String low = of(least);
        String high = of(most);
        if (low.equals(high)) {
            return low;
        }
        return unit(least).equals(unit(most)) && Double.isFinite(most)
                ? number(least) + " to " + high
                : low + " to " + high;
    }

    private static String unit(double ohm) {
        return ohm < KILO ? "ohm" : ohm < MEGA ? "kohm" : "Mohm";
    }

    private static String number(double ohm) {
        if (ohm < FINE) {
            return String.format(Locale.ROOT, "%.3f", ohm);
        }
        return String.format(Locale.ROOT, "%.1f", ohm < KILO ? ohm : ohm < MEGA ? ohm / KILO : ohm / MEGA);
    }
}
