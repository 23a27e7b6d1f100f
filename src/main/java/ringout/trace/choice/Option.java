package ringout.trace.choice;

import java.util.Comparator;

/**
 * A test that could be made now.
 *
 * @param question number of the question
 * @param bits expected reduction of uncertainty about the repair action
 * @param minutes hands, re-proof, risk, and what has yet to be opened
 * @param disturbance minutes of re-proof and risk, to decide near ties
 */
public record Option(int question, double bits, double minutes, double disturbance) {
    /** Best rate first, equal ones in the order of the problem. */
    static final Comparator<Option> BY_RATE =
            Comparator.comparingDouble((Option one) -> -one.rate()).thenComparingInt(Option::question);

    private static final double INSTANT = 1e-6;

    /** The same test by another number. */
    Option numbered(int other) {
        return new Option(other, bits, minutes, disturbance);
    }

    /** Bits a minute. */
    public double rate() {
        return bits / Math.max(minutes, INSTANT);
    }
}
