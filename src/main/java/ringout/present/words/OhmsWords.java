package ringout.present.words;

import java.util.Locale;
import ringout.solve.meter.Reading;

/** Resistances as a meter shows them and a technician says them. */
public final class OhmsWords {
    /** What a meter shows when nothing conducts. */
    public static final String NO_CONNECTION = "no connection (over range)";

    private static final double KILO = 1e3;
    private static final double MEGA = 1e6;
    private static final double FINE = 10;
    private static final double MILLIOHMS_BELOW = 0.1;

    private OhmsWords() {}

    /** A resistance with its unit: {@code 3.4 milliohm}, {@code 0.47 ohm}, {@code 59.6 ohm}, {@code 15.0 kohm}. */
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
        String prefix = ohm < KILO ? "" : ohm < MEGA ? " k" : " M";
        return number(ohm) + (unit(ohm).equals("milliohm") ? " m" : prefix);
    }

    /** From one resistance to another, both in the unit of the larger one. */
    public static String range(double least, double most) {
        if (Double.isInfinite(most)) {
            return of(least).equals(of(most)) ? of(most) : of(least) + " to " + of(most);
        }
        String low = number(least, most);
        String high = number(most, most);
        return (low.equals(high) ? high : low + " to " + high) + " " + unit(most);
    }

    private static String unit(double ohm) {
        if (ohm < MILLIOHMS_BELOW && ohm > 0) {
            return "milliohm";
        }
        return ohm < KILO ? "ohm" : ohm < MEGA ? "kohm" : "Mohm";
    }

    private static String number(double ohm) {
        return number(ohm, ohm);
    }

    /** The figure in the unit and with the digits that suit another resistance. */
    private static String number(double ohm, double like) {
        return switch (unit(like)) {
            case "milliohm" -> String.format(Locale.ROOT, "%.1f", ohm * KILO);
            case "kohm" -> String.format(Locale.ROOT, "%.1f", ohm / KILO);
            case "Mohm" -> String.format(Locale.ROOT, "%.1f", ohm / MEGA);
            default -> String.format(Locale.ROOT, like < FINE ? "%.2f" : "%.1f", ohm);
        };
    }
}
