package ringout.check.signal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Severity;
import ringout.graph.signal.Sides;
import ringout.model.Unit;
import ringout.model.UnitKind;

/**
 * Two units of one type in each other's place, or each joined to the port made for the other.
 *
 * <p>Why it matters: the aircraft is symmetric, so every net and every reading is right; yet left acts right and front measures rear.
 *
 * <p>Condition: of two units of one type whose places are named for opposite sides (left, right, front, rear, upper, lower) the
 * one named left sits right of the other, and so on; or a unit is joined to a plug, or driven by an output, that is named for the
 * other side. Two that change places are one finding. Units of one type at mirrored places without such a name are asked about.
 *
 * <p>Does not see: leads of a bus exchanged at a tap, which do no harm because the address travels with the unit; servos (S16);
 * motors (S10).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "S25",
        name = "role-swap",
        severity = Severity.S2,
        since = "0.1",
        needs = {"place name of each of several equal units", "position of each", "place each port is made for"})
public final class RoleSwap implements Check {
    /** Positions closer than this are one place. */
    private static final double CELL_MM = 10;

    @Override
    public void look(Situation at, Outcomes out) {
        Map<String, List<Unit>> byType = new TreeMap<>();
        Map<String, List<Unit>> nameless = new TreeMap<>();
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            Unit record = at.directory().unit(unit);
            if (at.circuit().aboard(unit) && record.positionRole().isKnown()) {
                byType.computeIfAbsent(record.type(), key -> new ArrayList<>()).add(record);
            } else if (at.circuit().aboard(unit) && record.positionRole().isMissing() && named(at, unit)) {
                nameless.computeIfAbsent(record.type(), key -> new ArrayList<>())
                        .add(record);
            }
        }
        Gaps gaps = new Gaps();
        byType.values().forEach(units -> new RolePlaces(units).look(out, gaps));
        nameless.values().forEach(units -> mirrored(units, gaps));
        new RolePorts(at).look(out);
        gaps.tell(
                out,
                datum -> datum.equals("position")
                        ? new Gaps.Way("measure it from the hub", 2)
                        : new Gaps.Way("look at its label and at the drawing", 1));
    }

    /** Asks for the names of equal units that sit at mirrored places. */
    private static void mirrored(List<Unit> units, Gaps gaps) {
        Map<List<Long>, List<Unit>> cells = new HashMap<>();
        for (Unit record : units) {
            if (record.xMm().isKnown() && record.yMm().isKnown()) {
                List<Long> cell = List.of(
                        Math.round(Math.abs(record.xMm().or(0.0)) / CELL_MM),
                        Math.round(Math.abs(record.yMm().or(0.0)) / CELL_MM));
                cells.computeIfAbsent(cell, key -> new ArrayList<>()).add(record);
            }
        }
        cells.values().stream()
                .filter(same -> same.stream()
                                .map(unit -> List.of(
                                        Math.round(unit.xMm().or(0.0) / CELL_MM),
                                        Math.round(unit.yMm().or(0.0) / CELL_MM)))
                                .distinct()
                                .count()
                        > 1)
                .forEach(same -> same.forEach(unit -> gaps.add("place name", unit.ref())));
    }

    private static boolean named(Situation at, int unit) {
        UnitKind kind = at.directory().type(unit).kind().or(UnitKind.UNIT);
        return switch (kind) {
            case SENSOR, PUMP, LIGHT, ACTUATOR, SATELLITE_RECEIVER, MONITOR -> true;
            default -> false;
        };
    }

    /** What the place of a unit is named for. */
    static Sides sides(Unit unit) {
        return Sides.of(unit.positionRole().or(""));
    }
}
