package ringout.solve.meter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Sorts faults by what they make a meter show, and tells which readings are the same to it. */
final class Telling {
    /** A hand-held meter on its ohms range after zeroing: 0.8 % of the reading and one digit. Common practice, no source. */
    private static final double OF_READING = 0.008;

    private static final double DIGIT_OHM = 0.1;

    /** A fault, its place among all faults, and the reading it makes. */
    record Effect(Fault fault, int order, Reading reading) {}

    private Telling() {}

    /** Whether a meter cannot tell two readings apart, given what everything may be within its tolerance. */
    static boolean same(Reading x, Reading y) {
        if (x instanceof Reading.Ohms one && y instanceof Reading.Ohms other) {
            return within(one.ohm(), other) || within(other.ohm(), one);
        }
        return x.connected() == y.connected();
    }

    private static boolean within(double ohm, Reading.Ohms band) {
        double slack = DIGIT_OHM + OF_READING * ohm;
        return ohm >= band.least() - slack && ohm <= band.most() + slack;
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
        return reading instanceof Reading.Ohms ohms ? ohms.ohm() : Double.POSITIVE_INFINITY;
    }

    private static Meaning group(List<Effect> effects) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (Effect effect : effects) {
            boolean ohms = effect.reading() instanceof Reading.Ohms;
            least = Math.min(least, ohms ? ((Reading.Ohms) effect.reading()).least() : Double.POSITIVE_INFINITY);
            most = Math.max(most, ohms ? ((Reading.Ohms) effect.reading()).most() : Double.POSITIVE_INFINITY);
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
}
