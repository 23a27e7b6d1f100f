package ringout.check.power;

import ringout.check.form.Assumed;

/**
 * A current or another figure held against a limit, and whether an assumed input decides: when what is assumed moves by
 * 20 % and the verdict turns.
 *
 * @param value the figure
 * @param limit what it must not exceed
 * @param assumedPart the part of the figure that rests on assumed inputs, 0 to 1
 * @param assumedLimit whether the limit is an assumed one
 */
record Verdict(double value, double limit, double assumedPart, boolean assumedLimit) {
    /** What a solved current may differ by from the sum of its loads. */
    private static final double ROUNDING = 1e-6;

    /** Whether the figure is above the limit. */
    boolean exceeds() {
        return value > limit * (1 + ROUNDING);
    }

    /** Whether a move of 20 % in what is assumed would turn it. */
    boolean turns() {
        if (assumedPart == 0 && !assumedLimit) {
            return false;
        }
        double sign = exceeds() ? -Assumed.MOVE : Assumed.MOVE;
        double moved = value * (1 + sign * assumedPart);
        double against = assumedLimit ? limit * (1 - sign) : limit;
        return (moved > against * (1 + ROUNDING)) != exceeds();
    }

    /** How much of the limit is used. */
    double use() {
        return value / limit;
    }
}
