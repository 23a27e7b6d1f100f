package ringout.check.installation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Unit;
import ringout.model.UnitKind;

/** Motors and actuators near a compass: their magnets are no currents, a distance is all that helps. */
final class Magnets {
    static final String POSITION = "position";

    private Magnets() {}

    static void look(Situation at, Outcomes out, Gaps gaps, int compass) {
        Threshold limit = at.limit(Thresholds.COMPASS_MAGNET);
        Unit here = at.directory().unit(compass);
        List<String> unplaced = new ArrayList<>();
        boolean clear = false;
        for (int unit = 0; unit < at.directory().count(); unit++) {
            if (unit == compass || !magnetic(at, unit)) {
                continue;
            }
            Unit other = at.directory().unit(unit);
            OptionalDouble apart = Apart.mm(here, other);
            if (apart.isEmpty()) {
                unplaced.addAll(Apart.unplaced(here, other));
            } else if (apart.getAsDouble() < limit.value()) {
                out.finding(draft(here, other, apart.getAsDouble(), limit));
            } else {
                clear = true;
            }
        }
        unplaced.forEach(ref -> gaps.add(POSITION, ref));
        if (clear && unplaced.isEmpty()) {
            out.looked();
        }
    }

    private static boolean magnetic(Situation at, int unit) {
        return !at.directory().isJoint(unit)
                && at.circuit().aboard(unit)
                && at.directory().typeKnown(unit)
                && (at.directory().type(unit).kind().is(UnitKind.MOTOR)
                        || at.directory().type(unit).kind().is(UnitKind.ACTUATOR));
    }

    private static Draft draft(Unit compass, Unit other, double apart, Threshold limit) {
        return Draft.of(
                        Severity.S4,
                        "magnet near the compass: " + other.ref() + " sits " + Figures.of(apart) + " mm from "
                                + compass.ref())
                .about(compass.ref(), other.ref())
                .at(compass, "position")
                .seen(other)
                .sum(Figures.of(apart) + " mm between the middles, limit " + Figures.of(limit.value()) + " mm")
                .judged(apart, limit.value(), "mm", limit.source())
                .why("its magnets turn the compass, and differently as it moves")
                .meter("move " + other.ref() + " by hand and watch the heading: it must not change")
                .fix("put " + compass.ref() + " at least " + Figures.of(limit.value()) + " mm from " + other.ref());
    }
}
