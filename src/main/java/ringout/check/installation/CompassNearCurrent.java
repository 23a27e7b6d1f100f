package ringout.check.installation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Thresholds;
import ringout.finding.Severity;
import ringout.model.CurrentLoop;
import ringout.model.Unit;
import ringout.model.UnitKind;

/**
 * A compass that turns with the throttle: a pair with changing current too near it, or something magnetic.
 *
 * <p>Why it matters: the heading error grows with throttle; the aircraft circles, and may fly away when it climbs hard.
 *
 * <p>Formula: field of a long pair 0.2 I s/r^2 (microtesla, ampere, metre); where the route of its leads is given, the law of Biot
 * and Savart over the closed ring. I is the change of current between idle and full throttle. Heading error up to asin of the level
 * part over the level field of the Earth, half a turn when it is no smaller.
 *
 * <p>Condition: the level part is above the limits of 1, 3 or 7 microtesla; or a motor or an actuator sits within 100 mm. A pair lying
 * flat whose route is not given counts with its whole field: right above its middle that is upright, an eighth of a turn beside it
 * level. A steady current is calibrated away. A twisted pair counts with a tenth of its spacing, which is an assumption.
 *
 * <p>Does not see: pairs that nobody declared; steel screws, latches and loudspeakers; the compass away from the middle of its unit.
 *
 * <p>Reference: Biot and Savart, exact; limits and the distance of magnets common practice, no source.
 */
@CheckInfo(
        code = "M13",
        name = "compass-near-current",
        severity = Severity.S2,
        since = "0.3",
        needs = {
            "pairs near the compass with length, spacing, distance and change of current, or their route",
            "position of compass, motors and actuators"
        })
public final class CompassNearCurrent implements Check {
    static final String SPACING = "spacing of the pair";
    static final String DISTANCE = "distance from the compass to the pair";
    static final String LENGTH = "length of the pair";
    private static final String PAIR = "pair that feeds the motors near the compass";
    private static final String WHICH = "unit with the compass beside the pair";

    @Override
    public void look(Situation at, Outcomes out) {
        if (at.bench()) {
            return;
        }
        Gaps gaps = new Gaps();
        List<Integer> compasses = compasses(at);
        for (CurrentLoop loop : at.aircraft().airframe().loops()) {
            if (!loop.compass().isKnown() && compasses.size() != 1) {
                gaps.add(WHICH, loop.name());
            }
        }
        for (int unit : compasses) {
            currents(at, out, gaps, unit, compasses.size() == 1);
            Magnets.look(at, out, gaps, unit);
        }
        gaps.tell(out, CompassNearCurrent::way);
    }

    private static void currents(Situation at, Outcomes out, Gaps gaps, int unit, boolean alone) {
        Unit compass = at.directory().unit(unit);
        List<CurrentLoop> loops = loops(at, unit, alone);
        if (loops.isEmpty()) {
            if (turns(at) && gaps.isEmpty()) {
                gaps.add(PAIR, compass.ref());
            }
            return;
        }
        List<ChangingPair> pairs = new ArrayList<>();
        loops.forEach(loop -> ChangingPair.of(at, loop, compass, gaps).ifPresent(pairs::add));
        CompassDraft draft = new CompassDraft(at, compass, pairs);
        if (draft.level() > at.limit(Thresholds.COMPASS_NOTE).value()) {
            out.finding(draft.draft());
        } else if (pairs.size() == loops.size()) {
            out.looked();
        }
    }

    /** The declared pairs near a compass; one that names none is near the only one. */
    static List<CurrentLoop> loops(Situation at, int unit, boolean alone) {
        return at.aircraft().airframe().loops().stream()
                .filter(loop -> loop.compass()
                        .known()
                        .map(name -> at.directory().find(name).equals(Optional.of(unit)))
                        .orElse(alone))
                .toList();
    }

    /** Units with a compass, by their type or as a declared pair names them, that are aboard in this state. */
    static List<Integer> compasses(Situation at) {
        Set<Integer> found = new TreeSet<>();
        for (int unit = 0; unit < at.directory().count(); unit++) {
            if (!at.directory().isJoint(unit)
                    && at.directory().typeKnown(unit)
                    && at.directory().type(unit).compass().is(true)) {
                found.add(unit);
            }
        }
        at.aircraft()
                .airframe()
                .loops()
                .forEach(loop -> loop.compass()
                        .known()
                        .flatMap(name -> at.directory().find(name))
                        .filter(unit -> !at.directory().isJoint(unit))
                        .ifPresent(found::add));
        return found.stream().filter(unit -> at.circuit().aboard(unit)).toList();
    }

    /** Whether anything turns a propeller, so that the throttle changes a current. */
    private static boolean turns(Situation at) {
        for (int unit = 0; unit < at.directory().count(); unit++) {
            if (!at.directory().isJoint(unit)
                    && at.directory().typeKnown(unit)
                    && at.directory().type(unit).kind().is(UnitKind.SPEED_CONTROLLER)) {
                return true;
            }
        }
        return false;
    }

    private static Gaps.Way way(String datum) {
        return switch (datum) {
            case PAIR ->
                new Gaps.Way(
                        "measure length, spacing and distance of the pair that runs nearest to it, and declare it", 10);
            case WHICH -> new Gaps.Way("look which unit holds the compass in use", 1);
            case ThrottleChange.DATUM ->
                new Gaps.Way("clamp a meter around one lead, idle and full throttle on the stand", 10);
            case Magnets.POSITION -> new Gaps.Way("measure it from the hub", 2);
            default -> new Gaps.Way("measure it", 2);
        };
    }
}
