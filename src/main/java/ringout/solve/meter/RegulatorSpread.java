package ringout.solve.meter;

import java.util.ArrayList;
import java.util.List;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.InnerPart;
import ringout.model.PartRating;
import ringout.model.UnitType;
import ringout.model.shape.Shape;

/** An aircraft whose regulators are all at one end of their tolerance. */
final class RegulatorSpread {
    private static final double PERCENT = 100;

    private RegulatorSpread() {}

    /**
     * The aircraft with every regulator that has an output voltage and a tolerance moved by all of it.
     *
     * @param sign +1 for the upper end, -1 for the lower
     */
    static Aircraft of(Aircraft aircraft, int sign) {
        List<UnitType> types = new ArrayList<>();
        aircraft.types().forEach(type -> types.add(moved(type, sign)));
        return Shape.of(Aircraft.class).with(aircraft, "types", List.copyOf(types));
    }

    /** Whether any regulator of the aircraft has a tolerance. */
    static boolean matters(Aircraft aircraft) {
        return aircraft.types().stream().flatMap(type -> type.parts().stream()).anyMatch(RegulatorSpread::moves);
    }

    private static boolean moves(InnerPart part) {
        return part.rating().outputV().isKnown()
                && part.rating().tolerancePercent().or(0.0) > 0;
    }

    private static UnitType moved(UnitType type, int sign) {
        if (type.parts().stream().noneMatch(RegulatorSpread::moves)) {
            return type;
        }
        List<InnerPart> parts = new ArrayList<>();
        for (InnerPart part : type.parts()) {
            parts.add(moves(part) ? moved(part, sign) : part);
        }
        return Shape.of(UnitType.class).with(type, "parts", List.copyOf(parts));
    }

    private static InnerPart moved(InnerPart part, int sign) {
        PartRating rating = part.rating();
        double volts =
                rating.outputV().or(0.0) * (1 + sign * rating.tolerancePercent().or(0.0) / PERCENT);
        PartRating at = Shape.of(PartRating.class).with(rating, "outputV", Datum.of(volts));
        return Shape.of(InnerPart.class).with(part, "rating", at);
    }
}
