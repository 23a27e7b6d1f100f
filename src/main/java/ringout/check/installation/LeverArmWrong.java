package ringout.check.installation;

import java.util.List;
import java.util.Locale;
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
import ringout.graph.route.Spot;
import ringout.model.Datum;
import ringout.model.Unit;
import ringout.model.UnitKind;

/**
 * A satellite receiver or inertial unit whose configured offset is not where it sits.
 *
 * <p>Why it matters: every turn of the aircraft is taken for a small movement, and pictures are laid on the map beside their place.
 *
 * <p>Condition: the configured offset and the place of the unit in the list, both from the hub, are more than 20 mm apart. S4; S3 when a
 * function of the aircraft is called mapping or survey. Asked of satellite receivers and inertial units once one of them has an
 * offset listed.
 *
 * <p>Does not see: an offset counted from another point than the hub, its sign in the program of a controller.
 *
 * <p>Reference: judgement.
 */
@CheckInfo(
        code = "M25",
        name = "lever-arm-wrong",
        severity = Severity.S4,
        since = "0.3",
        needs = {"configured offset", "place of the unit"})
public final class LeverArmWrong implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        if (at.aircraft().units().stream().noneMatch(LeverArmWrong::begun)) {
            return;
        }
        boolean maps = at.aircraft().functions().stream()
                .map(function -> function.name().toLowerCase(Locale.ROOT))
                .anyMatch(name -> name.contains("mapping") || name.contains("survey"));
        Gaps gaps = new Gaps();
        for (int i = 0; i < at.aircraft().units().size(); i++) {
            Unit unit = at.directory().unit(i);
            Datum<UnitKind> kind = at.directory().type(i).kind();
            if (begun(unit) || kind.is(UnitKind.SATELLITE_RECEIVER) || kind.is(UnitKind.INERTIAL)) {
                look(at, out, gaps, unit, maps);
            }
        }
        gaps.tell(
                out,
                datum -> datum.startsWith("configured")
                        ? new Gaps.Way("read it from the controller", 3)
                        : new Gaps.Way("measure from the hub", 3));
    }

    private static boolean begun(Unit unit) {
        return Asked.is(unit.leverXMm()) || Asked.is(unit.leverYMm()) || Asked.is(unit.leverZMm());
    }

    private static void look(Situation at, Outcomes out, Gaps gaps, Unit unit, boolean maps) {
        boolean lever = lever(unit).stream().allMatch(Datum::isKnown);
        boolean place = place(unit).stream().allMatch(Datum::isKnown);
        if (lever(unit).stream().anyMatch(Datum::isMissing)) {
            gaps.add("configured offset", unit.ref());
        } else if (lever && place(unit).stream().anyMatch(Datum::isMissing)) {
            gaps.add("place", unit.ref());
        }
        if (!lever || !place) {
            return;
        }
        Spot set = new Spot(
                unit.leverXMm().or(0.0),
                unit.leverYMm().or(0.0),
                unit.leverZMm().or(0.0));
        Spot fitted =
                new Spot(unit.xMm().or(0.0), unit.yMm().or(0.0), unit.zMm().or(0.0));
        Threshold limit = at.limit(InstallationThresholds.LEVER_ARM);
        if (set.to(fitted) > limit.value()) {
            out.finding(draft(unit, set, fitted, limit, maps));
        } else {
            out.looked();
        }
    }

    private static List<Datum<Double>> lever(Unit unit) {
        return List.of(unit.leverXMm(), unit.leverYMm(), unit.leverZMm());
    }

    private static List<Datum<Double>> place(Unit unit) {
        return List.of(unit.xMm(), unit.yMm(), unit.zMm());
    }

    private static Draft draft(Unit unit, Spot set, Spot fitted, Threshold limit, boolean maps) {
        double apart = set.to(fitted);
        return Draft.of(
                        maps ? Severity.S3 : Severity.S4,
                        "lever arm wrong: offset of " + unit.ref() + " is set to " + words(set) + " mm, it sits at "
                                + words(fitted) + " mm")
                .about(unit.ref())
                .at(unit, "lever arm")
                .input(unit.leverXMm())
                .input(unit.xMm())
                .input(unit.yMm())
                .input(unit.zMm())
                .sum(words(set) + " to " + words(fitted) + ": " + Figures.of(apart) + " mm apart, at most "
                        + Figures.of(limit.value()) + " mm")
                .judged(apart, limit.value(), "mm", limit.source())
                .why(
                        maps
                                ? "pictures are laid on the map beside their place, and turns are taken for movements"
                                : "turns of the aircraft are taken for movements")
                .meter("measure from the hub to the unit: forward, right, up")
                .fix("set the offset of " + unit.ref() + " to " + words(fitted)
                        + " mm, or correct its place in the list");
    }

    private static String words(Spot spot) {
        return Figures.of(spot.xMm()) + "/" + Figures.of(spot.yMm()) + "/" + Figures.of(spot.zMm());
    }
}
