package ringout.check.installation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import ringout.model.Unit;
import ringout.solve.field.Spot;

/** How far units are from each other: straight, between their middles, which is where the list says they are. */
final class Apart {
    private Apart() {}

    /** The distance in mm, if both have a position. */
    static OptionalDouble mm(Unit one, Unit other) {
        Optional<Spot> here = spot(one);
        Optional<Spot> there = spot(other);
        return here.isPresent() && there.isPresent()
                ? OptionalDouble.of(here.get().distance(there.get()))
                : OptionalDouble.empty();
    }

    /** Those of two units that have no position. */
    static List<String> unplaced(Unit one, Unit other) {
        return Stream.of(one, other)
                .filter(unit -> spot(unit).isEmpty())
                .map(Unit::ref)
                .toList();
    }

    /** Where a unit is, if the list says it. */
    static Optional<Spot> spot(Unit unit) {
        return unit.xMm().isKnown() && unit.yMm().isKnown() && unit.zMm().isKnown()
                ? Optional.of(new Spot(
                        unit.xMm().or(0.0), unit.yMm().or(0.0), unit.zMm().or(0.0)))
                : Optional.empty();
    }
}
