package ringout.sheet;

import java.util.OptionalDouble;

/**
 * What one pack, regulator or supply output gives, and what it may give.
 *
 * @param name the source, such as {@code RG12}
 * @param volts at its poles in V, all loads at their average
 * @param averageA current out of it in A, all loads at their average
 * @param peakA the same, all loads at their peak at once; empty when they cannot be carried
 * @param continuousA continuous rating in A; of a pack its discharge rate times its capacity; empty when not told
 * @param peakRatingA peak rating in A; empty when not told
 */
public record Output(
        String name,
        double volts,
        double averageA,
        OptionalDouble peakA,
        OptionalDouble continuousA,
        OptionalDouble peakRatingA) {
    private static final double PERCENT = 100;

    /** {@return what is left of the continuous rating at average in percent; negative when it is exceeded} */
    public OptionalDouble averageMargin() {
        return margin(OptionalDouble.of(averageA), continuousA);
    }

    /** {@return what is left of the peak rating at peak in percent; negative when it is exceeded} */
    public OptionalDouble peakMargin() {
        return margin(peakA, peakRatingA);
    }

    private static OptionalDouble margin(OptionalDouble amps, OptionalDouble rating) {
        return amps.isPresent() && rating.isPresent() && rating.getAsDouble() > 0
                ? OptionalDouble.of(PERCENT * (1 - amps.getAsDouble() / rating.getAsDouble()))
                : OptionalDouble.empty();
    }
}
