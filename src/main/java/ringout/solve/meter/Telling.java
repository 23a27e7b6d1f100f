package ringout.solve.meter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Sorts faults by what they make a meter show, and tells which readings are the same to it. */
final class Telling {
    /** A hand-held meter on its ohms range after zeroing: 0.8 % of the reading and one digit. Common practice, no source. */
    private static final double OF_READING = 0.008;

    private static final double DIGIT_OHM = 0.1;

    /** The same meter on its volts range: 1 % of the reading and a few digits. Common practice, no source. */
    private static final double OF_VOLTS = 0.01;

    private static final double DIGIT_VOLT = 0.05;

    /** A fault, its place among all faults, and the reading it makes. */
    record Effect(Fault fault, int order, Reading reading) {}

    private Telling() {}

    /** Whether a meter cannot tell two readings apart, given what everything may be within its tolerance. */
    static boolean same(Reading x, Reading y) {
        if (x instanceof Reading.Ohms one && y instanceof Reading.Ohms other) {
            return within(one.ohm(), other) || within(other.ohm(), one);
        }
        if (x instanceof Reading.Volts one && y instanceof Reading.Volts other) {
            return Math.abs(one.volts() - other.volts())
                    <= DIGIT_VOLT + OF_VOLTS * Math.max(Math.abs(one.volts()), Math.abs(other.volts()));
        }
        return x.getClass().equals(y.getClass());
    }

    /** Whether the meter may show a value where a reading is expected; infinite is over range. */
    static boolean admits(Reading expected, double shown) {
        if (expected instanceof Reading.Ohms band) {
            return Double.isFinite(shown) && within(shown, band);
        }
        if (expected instanceof Reading.Volts band) {
            double slack = DIGIT_VOLT + OF_VOLTS * Math.abs(shown);
            return shown >= band.least() - slack && shown <= band.most() + slack;
        }
        return expected instanceof Reading.NoConnection && Double.isInfinite(shown);
    }

    private static boolean within(double ohm, Reading.Ohms band) {
        return ohm >= lowest(band) && ohm <= highest(band);
    }

    /** The smallest value in ohm the meter shows for a resistance within its band. */
    static double lowest(Reading.Ohms band) {
        return Math.max(0, (band.least() - DIGIT_OHM) / (1 + OF_READING));
    }

    /** The largest value in ohm the meter shows for a resistance within its band. */
    static double highest(Reading.Ohms band) {
        return (band.most() + DIGIT_OHM) / (1 - OF_READING);
    }

    /** Effects that the meter shows as the same reading together, from the smallest reading to over range. */
    static List<Meaning> grouped(List<Effect> effects) {
        List<Effect> sorted = new ArrayList<>(effects);
        sorted.sort(Comparator.comparingDouble(effect -> value(effect.reading())));
        List<Meaning> groups = new ArrayList<>();
        for (int i = 0; i < sorted.size(); ) {
            int end = i + 1;
            while (end < sorted.size()
                    && same(sorted.get(i).reading(), sorted.get(end).reading())) {
                end++;
            }
            groups.add(group(sorted.subList(i, end)));
            i = end;
        }
        return groups;
    }

    private static double value(Reading reading) {
        if (reading instanceof Reading.Ohms ohms) {
            return ohms.ohm();
        }
        return reading instanceof Reading.Volts volts ? volts.volts() : order(reading);
    }

    /** Readings without a number come last, each kind for itself. */
    private static double order(Reading reading) {
        return reading instanceof Reading.Collapse ? Double.MAX_VALUE : Double.POSITIVE_INFINITY;
    }

    private static Meaning group(List<Effect> effects) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Effect effect : effects) {
            least = Math.min(least, bound(effect.reading(), true));
            most = Math.max(most, bound(effect.reading(), false));
        }
        return new Meaning(
                effects.get(0).reading(),
                effects.get(effects.size() - 1).reading(),
                least,
                most,
                effects.stream()
                        .sorted(Comparator.comparingInt(Effect::order))
                        .map(Effect::fault)
                        .toList());
    }

    private static double bound(Reading reading, boolean least) {
        if (reading instanceof Reading.Ohms ohms) {
            return least ? ohms.least() : ohms.most();
        }
        if (reading instanceof Reading.Volts volts) {
            return least ? volts.least() : volts.most();
        }
        return Double.POSITIVE_INFINITY;
    }
}
