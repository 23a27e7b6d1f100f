package ringout.check;

import java.util.ArrayList;
import java.util.List;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.InnerPart;
import ringout.model.PartKind;
import ringout.model.Unit;
import ringout.model.UnitType;
import ringout.model.shape.Shape;

/**
 * A part inside a unit of which nobody said what it is.
 *
 * @param type the unit type
 * @param part the part
 * @param units units of the type aboard
 */
record UnknownPart(UnitType type, InnerPart part, List<String> units) {
    /** What it may be: anything that passes power or makes it. */
    static final List<PartKind> KINDS = List.of(
            PartKind.SOURCE,
            PartKind.REGULATOR,
            PartKind.FUSE,
            PartKind.IDEAL_DIODE,
            PartKind.LINEAR_REGULATOR,
            PartKind.ISOLATED_CONVERTER);

    static List<UnknownPart> all(Aircraft aircraft) {
        List<UnknownPart> all = new ArrayList<>();
        for (UnitType type : aircraft.types()) {
            List<String> units = aircraft.units().stream()
                    .filter(unit -> unit.type().equalsIgnoreCase(type.name()))
                    .map(Unit::ref)
                    .toList();
            type.parts().stream()
                    .filter(part -> part.kind().isMissing() && !units.isEmpty())
                    .forEach(part -> all.add(new UnknownPart(type, part, units)));
        }
        return List.copyOf(all);
    }

    /** The datum, as one asks for it. */
    String missing() {
        return "kind of part " + part.name() + " of " + type.name();
    }

    /** An aircraft whose parts of unknown kind are of one kind. */
    static Aircraft with(Aircraft aircraft, int way) {
        Datum<PartKind> kind = Datum.of(KINDS.get(way % KINDS.size()));
        Shape<UnitType> types = Shape.of(UnitType.class);
        Shape<InnerPart> parts = Shape.of(InnerPart.class);
        List<UnitType> supposed = aircraft.types().stream()
                .map(type -> types.with(
                        type,
                        "parts",
                        type.parts().stream()
                                .map(part -> part.kind().isMissing() ? parts.with(part, "kind", kind) : part)
                                .toList()))
                .toList();
        return Shape.of(Aircraft.class).with(aircraft, "types", supposed);
    }
}
