package ringout.solve;

import java.util.OptionalDouble;
import ringout.graph.Part;
import ringout.model.PartKind;
import ringout.model.PartRating;

/** Resistance of two-terminal parts that are one: fuses, switches, links, sense resistors, resistors. */
public final class PartResistance {
    private static final double MILLI = 0.001;

    private PartResistance() {}

    /**
     * {@return the resistance of a part in ohm, closed and whole; empty for a part that is no resistance}
     *
     * <p>Fuses, switches and links of which nothing is told count as zero, which their fractions of a milliohm are. A
     * resistor of which nothing is told does not conduct.
     */
    public static OptionalDouble ohm(Part part) {
        if (part.origin() instanceof Part.LeadFuse) {
            return OptionalDouble.of(0);
        }
        if (!(part.origin() instanceof Part.Inner inner)) {
            return OptionalDouble.empty();
        }
        PartRating rating = inner.part().rating();
        return switch (inner.part().kind().or(PartKind.REGULATOR)) {
            case LINK, FUSE, SWITCH, SENSE_RESISTOR ->
                OptionalDouble.of(given(rating).orElse(0));
            case RESISTOR -> OptionalDouble.of(given(rating).orElse(Double.POSITIVE_INFINITY));
            default -> OptionalDouble.empty();
        };
    }

    /** {@return the series resistance a part is given with, in ohm} */
    public static OptionalDouble given(PartRating rating) {
        if (rating.milliohm().isKnown()) {
            return OptionalDouble.of(rating.milliohm().or(0.0) * MILLI);
        }
        return rating.ohm().isKnown() ? OptionalDouble.of(rating.ohm().or(0.0)) : OptionalDouble.empty();
    }
}
