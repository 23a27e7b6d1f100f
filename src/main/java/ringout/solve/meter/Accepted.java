package ringout.solve.meter;

import java.util.Optional;

/**
 * What a hand-held meter with zeroed leads may show when all is well, its own error allowed for.
 *
 * @param low smallest value in ohm
 * @param high largest value in ohm
 */
public record Accepted(double low, double high) {
    /** {@return the band around an expected resistance; empty when a meter should show over range} */
    public static Optional<Accepted> of(Reading expected) {
        return expected instanceof Reading.Ohms band
                ? Optional.of(new Accepted(Telling.lowest(band), Telling.highest(band)))
                : Optional.empty();
    }
}
