package ringout.check.installation;

import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.InstallationThresholds;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Unit;
import ringout.model.UnitKind;
import ringout.model.UnitType;

/**
 * A unit whose arrow does not point the way its orientation setting says.
 *
 * <p>Why it matters: with its inertial unit or compass turned the aircraft rolls over at take-off or circles; nothing on the bench
 * shows it but a look at the horizon on the screen while it is tilted by hand.
 *
 * <p>Condition: bearing or roll of the arrow as fitted differs by more than 5 degrees from the setting, or from the nose
 * where there is no setting (n/a). Asked of flight controllers, inertial units and compasses (S2); of any other unit (S3) when both
 * are told. Turned on purpose with the setting changed is right.
 *
 * <p>Does not see: a pitch as fitted, the sign a program gives its angles.
 *
 * <p>Reference: common practice, no source; 5 degrees is judgement.
 */
@CheckInfo(
        code = "M01",
        name = "orientation-wrong",
        severity = Severity.S2,
        since = "0.3",
        needs = {"bearing and roll of the arrow", "orientation setting"})
public final class OrientationWrong implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        boolean begun = at.aircraft().units().stream()
                .anyMatch(unit ->
                        Asked.is(unit.headingDeg()) || Asked.is(unit.rollDeg()) || Asked.is(unit.orientationSetting()));
        if (!begun) {
            return;
        }
        Gaps gaps = new Gaps();
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            look(at, out, gaps, unit);
        }
        gaps.tell(
                out,
                datum -> datum.startsWith("orientation setting")
                        ? new Gaps.Way("read it from the controller", 3)
                        : new Gaps.Way("look at the arrow on the unit", 1));
    }

    private static void look(Situation at, Outcomes out, Gaps gaps, int number) {
        Unit unit = at.directory().unit(number);
        boolean grave = grave(at.directory().type(number));
        boolean told = unit.headingDeg().isKnown() && unit.orientationSetting().isKnown();
        if ((!grave && !told) || unit.headingDeg().isNotApplicable()) {
            return;
        }
        Optional<Orientation> setting = setting(unit, gaps);
        if (unit.headingDeg().isMissing()) {
            gaps.add("bearing of the arrow", unit.ref());
        }
        boolean rollOpen = unit.rollDeg().isMissing() && grave;
        if (rollOpen) {
            gaps.add("roll of the arrow", unit.ref());
        }
        if (setting.isEmpty() || !unit.headingDeg().isKnown()) {
            return;
        }
        if (setting.get().pitch() != 0) {
            gaps.add("pitch as fitted", unit.ref());
            return;
        }
        Threshold limit = at.limit(InstallationThresholds.ORIENTATION);
        double yaw =
                Orientation.between(unit.headingDeg().or(0.0), setting.get().yaw());
        double roll = unit.rollDeg().isKnown()
                ? Orientation.between(unit.rollDeg().or(0.0), setting.get().roll())
                : 0;
        if (Math.max(yaw, roll) > limit.value()) {
            out.finding(draft(unit, setting.get(), Math.max(yaw, roll), limit, grave));
        } else if (!rollOpen) {
            out.looked();
        }
    }

    /** The setting; without one (n/a) the arrow must point to the nose. */
    private static Optional<Orientation> setting(Unit unit, Gaps gaps) {
        if (unit.orientationSetting().isNotApplicable()) {
            return Optional.of(new Orientation(0, 0, 0));
        }
        Optional<Orientation> read = unit.orientationSetting().known().flatMap(Orientation::of);
        if (read.isEmpty()) {
            gaps.add("orientation setting, as yaw and roll in degrees,", unit.ref());
        }
        return read;
    }

    /** Whether the aircraft is lost with it turned. */
    private static boolean grave(UnitType type) {
        return type.kind().is(UnitKind.INERTIAL)
                || type.kind().is(UnitKind.CONTROLLER)
                || type.compass().is(true);
    }

    private static Draft draft(Unit unit, Orientation set, double off, Threshold limit, boolean grave) {
        String fitted = angles(unit.headingDeg().or(0.0), unit.rollDeg().or(0.0));
        boolean none = unit.orientationSetting().isNotApplicable();
        String wanted = none ? "the nose, and it has no setting" : angles(set.yaw(), set.roll()) + " as set";
        return Draft.of(
                        grave ? Severity.S2 : Severity.S3,
                        "orientation wrong: the arrow of " + unit.ref() + " is at " + fitted + ", not at " + wanted)
                .about(unit.ref())
                .at(unit, "orientation")
                .input(unit.headingDeg())
                .input(unit.rollDeg())
                .input(unit.orientationSetting())
                .sum("fitted " + fitted + (none ? ", no setting" : ", set " + angles(set.yaw(), set.roll())) + ": "
                        + Figures.of(off) + " degrees apart")
                .judged(off, limit.value(), "degrees", limit.source())
                .why(
                        grave
                                ? "the aircraft takes one direction for another: it rolls over at take-off or circles"
                                : "what it measures is told in a wrong direction")
                .meter("tilt the aircraft by hand, nose up and right wing down: the screen must follow")
                .fix(
                        none
                                ? "turn " + unit.ref() + " until its arrow points to the nose"
                                : "set the orientation of " + unit.ref() + " to " + fitted + ", or turn it to "
                                        + angles(set.yaw(), set.roll()));
    }

    private static String angles(double yaw, double roll) {
        return "yaw " + Figures.of(yaw) + (roll == 0 ? "" : " roll " + Figures.of(roll));
    }
}
