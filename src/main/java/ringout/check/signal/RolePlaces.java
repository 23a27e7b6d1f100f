package ringout.check.signal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.signal.Sides;
import ringout.model.Datum;
import ringout.model.PortSetting;
import ringout.model.Unit;

/**
 * Units of one type: what their places are named for against where they sit.
 *
 * @param units the units of the type whose places have a name
 */
record RolePlaces(List<Unit> units) {
    /** One axis of the aircraft. */
    private record Axis(
            String name, ToIntFunction<Sides> side, Function<Unit, Datum<Double>> position, String high, String low) {}

    private static final List<Axis> AXES = List.of(
            new Axis("x", Sides::x, Unit::xMm, "front", "rear"),
            new Axis("y", Sides::y, Unit::yMm, "right", "left"),
            new Axis("z", Sides::z, Unit::zMm, "upper", "lower"));

    /** Says which of them sit on the wrong side. */
    void look(Outcomes out, Gaps gaps) {
        AXES.forEach(axis -> look(out, axis, gaps));
    }

    private void look(Outcomes out, Axis axis, Gaps gaps) {
        List<Unit> high = side(axis, 1);
        List<Unit> low = side(axis, -1);
        if (high.isEmpty() || low.isEmpty()) {
            return;
        }
        boolean open = false;
        for (List<Unit> side : List.of(high, low)) {
            for (Unit unit : side) {
                if (axis.position().apply(unit).isMissing()) {
                    gaps.add("position", unit.ref());
                    open = true;
                }
            }
        }
        double highest = extreme(axis, low, 1);
        double lowest = extreme(axis, high, -1);
        if (highest > lowest) {
            out.finding(draft(axis, beyond(axis, high, highest, -1), beyond(axis, low, lowest, 1)));
        } else if (!open) {
            out.looked();
        }
    }

    private List<Unit> side(Axis axis, int sign) {
        return units.stream()
                .filter(unit -> axis.side().applyAsInt(RoleSwap.sides(unit)) == sign)
                .toList();
    }

    /** The position farthest to one side. */
    private static double extreme(Axis axis, List<Unit> of, int sign) {
        double most = Double.NEGATIVE_INFINITY;
        for (Unit unit : of) {
            most = Math.max(most, sign * axis.position().apply(unit).or(sign * Double.NEGATIVE_INFINITY));
        }
        return sign * most;
    }

    private static List<Unit> beyond(Axis axis, List<Unit> of, double bound, int sign) {
        List<Unit> found = new ArrayList<>();
        for (Unit unit : of) {
            Datum<Double> own = axis.position().apply(unit);
            if (own.isKnown() && sign * own.or(0.0) > sign * bound) {
                found.add(unit);
            }
        }
        return found;
    }

    private Draft draft(Axis axis, List<Unit> high, List<Unit> low) {
        List<Unit> all = new ArrayList<>(high);
        all.addAll(low);
        List<String> words = all.stream().map(unit -> words(axis, unit)).toList();
        List<String> refs = all.stream().map(Unit::ref).sorted().toList();
        Draft draft = Draft.of(Severity.S2, "role swap: " + String.join(", ", words))
                .about(refs)
                .about("place " + axis.name())
                .sum(axis.high() + " must lie at a larger " + axis.name() + " than " + axis.low() + ": "
                        + String.join(", ", words) + identities(all))
                .why("every net is right, and yet what is meant for " + axis.low() + " happens " + axis.high())
                .meter("unplug " + refs.get(0) + ": see which one the ground station misses")
                .fix("exchange " + String.join(" and ", refs) + ", or their place names");
        all.forEach(unit -> draft.at(unit, "place").input(axis.position().apply(unit)));
        return draft;
    }

    private static String words(Axis axis, Unit unit) {
        return unit.ref() + " is " + unit.positionRole().or("").toLowerCase(Locale.ROOT) + " and sits at " + axis.name()
                + " " + Figures.of(axis.position().apply(unit).or(0.0)) + " mm";
    }

    private static String identities(List<Unit> units) {
        List<String> known = new ArrayList<>();
        for (Unit unit : units) {
            unit.serial().known().ifPresent(serial -> known.add(unit.ref() + " serial " + serial));
            unit.ports().stream()
                    .map(PortSetting::address)
                    .flatMap(address -> address.known().stream())
                    .findFirst()
                    .ifPresent(address -> known.add(unit.ref() + " address " + address));
        }
        return known.isEmpty() ? "" : " (" + String.join(", ", known) + ")";
    }
}
