package ringout.present.words;

import java.util.Locale;
import ringout.solve.meter.Meaning;
import ringout.solve.meter.Reading;

/** Readings of a meter in words. */
public final class ReadingWords {
    private static final double MILLI = 1000;
    private static final double PERCENT = 100;

    private ReadingWords() {}

    /** A reading with its unit, or why there is none. */
    public static String of(Reading reading) {
        if (reading instanceof Reading.Ohms ohms) {
            return OhmsWords.of(ohms.ohm());
        }
        if (reading instanceof Reading.Volts volts) {
            return volts(volts.volts());
        }
        if (reading instanceof Reading.Floating) {
            return "floating, no voltage from any supply";
        }
        if (reading instanceof Reading.Collapse collapse) {
            return String.format(
                    Locale.ROOT,
                    "no voltage can be told: %s collapses it, only %.0f %% of the loads can be carried",
                    collapse.limiting(),
                    collapse.margin() * PERCENT);
        }
        return reading instanceof Reading.NoConnection
                ? OhmsWords.NO_CONNECTION
                : "no voltage can be told: the computation did not come to rest";
    }

    /** The readings that mean the same. */
    public static String of(Meaning meaning) {
        if (meaning.first() instanceof Reading.Ohms) {
            return OhmsWords.range(meaning.least(), meaning.most());
        }
        if (meaning.first() instanceof Reading.Volts) {
            return range(meaning.least(), meaning.most());
        }
        if (meaning.first() instanceof Reading.NoConnection) {
            return "over range";
        }
        if (meaning.first() instanceof Reading.Floating) {
            return "floating";
        }
        return meaning.first() instanceof Reading.Collapse ? "overloaded" : "no figure";
    }

    /** A voltage: {@code 43.62 V}, {@code 12 mV}. */
    public static String volts(double volts) {
        double shown = volts == 0 ? 0.0 : volts;
        return Math.abs(shown) < 0.1 && shown != 0
                ? String.format(Locale.ROOT, "%.1f mV", shown * MILLI)
                : String.format(Locale.ROOT, "%.2f V", shown);
    }

    /** From one voltage to another. */
    public static String range(double least, double most) {
        String low = volts(least);
        String high = volts(most);
        return low.equals(high) ? low : low + " to " + high;
    }
}
