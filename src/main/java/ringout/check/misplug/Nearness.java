package ringout.check.misplug;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import ringout.check.form.Gaps;
import ringout.graph.Directory;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Unit;
import ringout.solve.field.Spot;

/** Whether a plug reaches a socket that it does not belong to. */
final class Nearness {
    /** Names of the data it may lack. */
    static final String POSITION = "position";

    static final String LENGTH = "length";

    private final Wiring wiring;
    private final Directory names;
    private final double neighbours;
    private final Gaps gaps;

    /**
     * Looks at an aircraft.
     *
     * @param neighbours how far apart sockets in different zones are still mistaken for each other, mm
     * @param gaps takes what is missing
     */
    Nearness(Wiring wiring, double neighbours, Gaps gaps) {
        this.wiring = wiring;
        this.names = wiring.directory();
        this.neighbours = neighbours;
        this.gaps = gaps;
    }

    /** Whether sockets of two units are near enough to be mistaken: one unit, one zone, or neighbours. */
    boolean beside(int one, int other) {
        if (one == other || sameZone(names.unit(one), names.unit(other))) {
            return true;
        }
        OptionalDouble apart = apart(one, other);
        if (apart.isEmpty()) {
            unplaced(one, other);
        }
        return apart.isPresent() && apart.getAsDouble() <= neighbours;
    }

    private static boolean sameZone(Unit one, Unit other) {
        return one.zone().isKnown() && one.zone().equals(other.zone());
    }

    /** Whether all leads of a plug are long enough, straight from their other end, for a socket of a unit. */
    boolean reaches(PlugBody body, int unit) {
        if (body.unit() == unit) {
            return true;
        }
        boolean all = true;
        for (PlugBody.End end : body.ends()) {
            Lead lead = end.lead(wiring);
            int far = PlugBody.unit(end.far());
            if (far == unit) {
                continue;
            }
            OptionalDouble way = apart(far, unit);
            if (way.isEmpty()) {
                unplaced(far, unit);
            }
            if (!lead.lengthMm().isKnown()) {
                gaps.add(LENGTH, lead.id());
            }
            all &= way.isPresent() && way.getAsDouble() <= lead.lengthMm().or(0.0);
        }
        return all;
    }

    private OptionalDouble apart(int one, int other) {
        if (names.isJoint(one) || names.isJoint(other)) {
            return OptionalDouble.empty();
        }
        return placed(one) && placed(other)
                ? OptionalDouble.of(spot(one).distance(spot(other)))
                : OptionalDouble.empty();
    }

    private void unplaced(int one, int other) {
        Stream.of(one, other)
                .filter(unit -> names.isJoint(unit) || !placed(unit))
                .forEach(unit -> gaps.add(POSITION, names.name(unit)));
    }

    private boolean placed(int unit) {
        Unit at = names.unit(unit);
        return List.of(at.xMm(), at.yMm(), at.zMm()).stream().allMatch(Datum::isKnown);
    }

    private Spot spot(int unit) {
        Unit at = names.unit(unit);
        return new Spot(at.xMm().or(0.0), at.yMm().or(0.0), at.zMm().or(0.0));
    }
}
