package ringout.sheet.build;

import java.util.Locale;

/** Numbers of the sheets in words. */
final class Words {
    private static final double FINE = 100;

    private Words() {}

    /** A whole number. */
    static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }

    /** Two decimals below a hundred, one above. */
    static String reading(double value) {
        return String.format(Locale.ROOT, Math.abs(value) < FINE ? "%.2f" : "%.1f", value);
    }

    /** A name for a file: lower case, words joined by a dash. */
    static String file(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    }
}
