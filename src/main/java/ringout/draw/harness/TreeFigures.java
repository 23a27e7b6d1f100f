package ringout.draw.harness;

import java.util.Locale;
import java.util.OptionalDouble;
import ringout.check.form.Figures;

/** Figures as the boxes of a tree say them. */
final class TreeFigures {
    private TreeFigures() {}

    static String volts(double volts) {
        return String.format(Locale.ROOT, "%.2f", volts + 0.0);
    }

    static String percent(OptionalDouble percent) {
        return percent.isPresent() ? String.format(Locale.ROOT, "%.0f", percent.getAsDouble()) : "?";
    }

    /** At average and at peak: {@code 4.8 / 9}. */
    static String both(OptionalDouble usual, OptionalDouble most) {
        return Figures.of(usual) + " / " + Figures.of(most);
    }

    static String both(double usual, OptionalDouble most) {
        return both(OptionalDouble.of(usual), most);
    }
}
