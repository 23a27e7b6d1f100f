package ringout.check.power;

import ringout.check.form.Figures;
import ringout.finding.Severity;
import ringout.graph.power.Consumer;
import ringout.graph.power.Volts;
import ringout.model.Datum;

/**
 * What a unit gets held against what it takes.
 *
 * @param consumer the unit's rail
 * @param volts what it gets at rest
 * @param sag what its packs lose under load
 * @param least lowest voltage it takes
 * @param most highest voltage it takes
 * @param margin part of the limit that must be left
 */
record RangeVerdict(
        Consumer consumer, Volts volts, PackSag.Sag sag, Datum<Double> least, Datum<Double> most, double margin) {
    /** Whether the highest voltage leaves the margin. */
    boolean highPasses() {
        return !most.isKnown() || volts.high() <= most.or(0.0) * (1 - margin);
    }

    /** Whether the lowest voltage leaves the margin, at rest or under load. */
    boolean lowPasses(boolean loaded) {
        return !least.isKnown() || low(loaded) >= least.or(0.0) * (1 + margin);
    }

    private double low(boolean loaded) {
        return volts.low() - (loaded ? sag.volts() : 0);
    }

    /** Whether something is out of range by what is known. */
    boolean isBad() {
        return !highPasses() || !lowPasses(true);
    }

    /**
     * Whether it is out of range whatever the missing data are. The nominal voltage lies between lowest and highest: that much
     * it says of either.
     */
    boolean isCertain() {
        return (most.isKnown() && volts.nominal().orElse(volts.low()) > most.or(0.0))
                || (least.isKnown() && volts.nominal().orElse(volts.high()) < least.or(0.0));
    }

    /** Whether only one side of what it gets is known: it may be even further out. */
    boolean isOpen() {
        return isHigh() ? Double.isInfinite(volts.high()) : volts.low() <= 0;
    }

    private boolean above() {
        return most.isKnown() && volts.high() > most.or(0.0);
    }

    private boolean below() {
        return least.isKnown() && low(true) < least.or(0.0);
    }

    /** S1 above the range, S2 below, S3 inside without margin. */
    Severity severity() {
        if (above()) {
            return Severity.S1;
        }
        return below() ? Severity.S2 : Severity.S3;
    }

    /** Whether the trouble is at the upper end. */
    boolean isHigh() {
        return above() || (!below() && !highPasses());
    }

    /** The voltage judged. */
    double judged() {
        if (isOpen()) {
            return volts.nominal().orElse(isHigh() ? volts.low() : volts.high());
        }
        return isHigh() ? volts.high() : low(true);
    }

    /** The limit it is held against, margin included when only the margin is gone. */
    double limit() {
        double bound = isHigh() ? most.or(0.0) : least.or(0.0);
        if (severity() != Severity.S3) {
            return bound;
        }
        return isHigh() ? bound * (1 - margin) : bound * (1 + margin);
    }

    /** The arithmetic in words. */
    String sum() {
        String nominal = consumer.limits()
                .flatMap(rail -> rail.nominalV().known())
                .map(v -> " (a " + Figures.of(v) + " V unit)")
                .orElse("");
        String range = "takes " + said(least) + " to " + said(most) + " V" + nominal;
        String gets = "gets " + Supplies.range(volts) + " at rest";
        String loaded =
                !isHigh() && sag.volts() > 0 ? ", " + Figures.of(low(true)) + " V empty with " + sag.words() : "";
        String held = severity() == Severity.S3
                ? "; " + Figures.of(limit()) + " V is the limit with " + Figures.of(margin * 100) + " % margin"
                : "";
        return gets + loaded + ", " + range + held;
    }

    private static String said(Datum<Double> datum) {
        return datum.known().map(Figures::of).orElse(datum.isNotApplicable() ? "any" : "?");
    }
}
