package ringout.trace.predict;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.graph.Circuit;

/**
 * The readings of a meter that mean one outcome of a test, in ohm, V or A. Found from the rule for what is typed, so that whoever reads the
 * bands comes to the same outcome.
 *
 * @param outcome the outcome; empty where such a reading means none
 * @param from least reading of it; the first band of a test has no least one and begins at minus infinity
 */
public record ReadingBand(Optional<String> outcome, double from) {
    /** Bands are wider than this step of the search for their ends: the narrowest is 3 % to either side. */
    private static final double STEP = 1.04;

    /** Where the search begins and ends, in the unit of the test: below is nothing, above is over range. */
    private static final double LEAST = 0.01;

    private static final double MOST = 1e5;
    private static final int HALVINGS = 45;
    private static final MathContext DIGITS = new MathContext(7);

    /** What the meter is set to for a test: ohm, V or A; empty where no number is read. */
    public static String unit(FieldTest test) {
        if (test instanceof FieldTest.BusOhms || test instanceof FieldTest.LegToZero) {
            return "ohm";
        }
        boolean volts = test instanceof FieldTest.Volts
                || test instanceof FieldTest.LoadedVolts
                || test instanceof FieldTest.LegVolts
                || test instanceof FieldTest.LegSign
                || test instanceof FieldTest.Drop;
        return volts ? "V" : test instanceof FieldTest.SupplyCurrent ? "A" : "";
    }

    /** The bands of a test from the lowest reading up; none where no number is read or none can be judged. */
    public static List<ReadingBand> of(Circuit circuit, TestCard card) {
        if (unit(card.test()).isEmpty()) {
            return List.of();
        }
        List<ReadingBand> bands = new ArrayList<>();
        double before = -MOST;
        Optional<String> now = TypedReading.number(circuit, card, before);
        bands.add(new ReadingBand(now, Double.NEGATIVE_INFINITY));
        for (double value : steps()) {
            Optional<String> next = TypedReading.number(circuit, card, value);
            if (!next.equals(now)) {
                bands.add(new ReadingBand(next, end(circuit, card, before, value, now)));
                now = next;
            }
            before = value;
        }
        return bands.size() == 1 && now.isEmpty() ? List.of() : List.copyOf(bands);
    }

    private static List<Double> steps() {
        List<Double> up = new ArrayList<>();
        for (double value = LEAST; value < MOST; value *= STEP) {
            up.add(value);
        }
        List<Double> all = new ArrayList<>();
        for (int i = up.size() - 1; i >= 0; i--) {
            all.add(-up.get(i));
        }
        all.add(0.0);
        all.addAll(up);
        return all;
    }

    /** Where one outcome ends between two readings, to seven digits. */
    private static double end(Circuit circuit, TestCard card, double low, double high, Optional<String> below) {
        double from = low;
        double to = high;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (from + to) / 2;
            if (TypedReading.number(circuit, card, middle).equals(below)) {
                from = middle;
            } else {
                to = middle;
            }
        }
        double end = new BigDecimal(to).round(DIGITS).doubleValue();
        return Math.abs(end) < LEAST / HALVINGS ? 0 : end;
    }
}
