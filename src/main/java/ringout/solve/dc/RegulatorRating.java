package ringout.solve.dc;

import java.util.OptionalDouble;

/**
 * What a regulator makes of its input.
 *
 * @param volts output voltage at no load
 * @param ohms output resistance, above 0
 * @param efficiency output power over input power, above 0 to 1; empty for a linear regulator, whose input current is its
 *     output current
 * @param quiescentAmps input current at no load
 * @param dropoutVolts least input voltage above the output voltage; below it the output follows the input. Empty for a
 *     converter that steps up or is not known to have a limit
 * @param limitAmps output current at which the regulator stops holding its voltage; empty if it is not known to have one
 */
public record RegulatorRating(
        double volts,
        double ohms,
        OptionalDouble efficiency,
        double quiescentAmps,
        OptionalDouble dropoutVolts,
        OptionalDouble limitAmps) {

    /** Refuses what no regulator is. */
    public RegulatorRating {
        require(volts > 0 && Double.isFinite(volts), "output voltage", volts);
        require(ohms > 0 && Double.isFinite(ohms), "output resistance", ohms);
        require(quiescentAmps >= 0 && Double.isFinite(quiescentAmps), "quiescent current", quiescentAmps);
        efficiency.ifPresent(x -> require(x > 0 && x <= 1, "efficiency", x));
        dropoutVolts.ifPresent(x -> require(x >= 0 && Double.isFinite(x), "dropout", x));
        limitAmps.ifPresent(x -> require(x > 0 && Double.isFinite(x), "current limit", x));
    }

    /** {@return a switching regulator without dropout and limit} */
    public static RegulatorRating switching(double volts, double ohms, double efficiency, double quiescentAmps) {
        return new RegulatorRating(
                volts,
                ohms,
                OptionalDouble.of(efficiency),
                quiescentAmps,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** {@return a linear regulator without limit} */
    public static RegulatorRating linear(double volts, double ohms, double quiescentAmps, double dropoutVolts) {
        return new RegulatorRating(
                volts,
                ohms,
                OptionalDouble.empty(),
                quiescentAmps,
                OptionalDouble.of(dropoutVolts),
                OptionalDouble.empty());
    }

    /** {@return the same with a current limit} */
    public RegulatorRating limitedTo(double amps) {
        return new RegulatorRating(volts, ohms, efficiency, quiescentAmps, dropoutVolts, OptionalDouble.of(amps));
    }

    /** {@return the same with a dropout voltage} */
    public RegulatorRating droppingOutAt(double aboveOutput) {
        return new RegulatorRating(volts, ohms, efficiency, quiescentAmps, OptionalDouble.of(aboveOutput), limitAmps);
    }

    private static void require(boolean holds, String what, double value) {
        if (!holds) {
            throw new IllegalArgumentException("a regulator with " + what + " " + value);
        }
    }
}
