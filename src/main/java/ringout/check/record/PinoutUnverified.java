package ringout.check.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.PinoutSource;
import ringout.model.UnitType;

/**
 * A unit type in use whose pin-out comes from a forum or from memory.
 *
 * <p>Why it matters: makers number the same plug from either end; a supply contact at the wrong place burns the unit at the
 * first power-up, and every verdict about its pins rests on hearsay.
 *
 * <p>Condition: leads go to a unit whose type says its pin-out is from a forum or from memory. S3 when one of them is on a supply, pack
 * or 0V contact, else S4.
 *
 * <p>Does not see: a maker's drawing of another revision.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "X15",
        name = "pin-out-unverified",
        severity = Severity.S3,
        since = "0.3",
        needs = {"where the pin-out of each type comes from"})
public final class PinoutUnverified implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Wiring wiring = at.wiring();
        List<String> open = new ArrayList<>();
        for (List<Integer> units : users(at).values()) {
            UnitType type = at.directory().type(units.get(0));
            Datum<PinoutSource> source = type.pinoutSource();
            if (source.isMissing()) {
                open.add(type.name());
            } else if (source.is(PinoutSource.FORUM) || source.is(PinoutSource.MEMORY)) {
                out.finding(draft(wiring, type, units));
            } else {
                out.looked();
            }
        }
        if (!open.isEmpty()) {
            out.cannotTell(
                    "source of the pin-out of " + String.join(", ", open),
                    "maker's drawing, or ring the plugs out",
                    2 * open.size(),
                    open.toArray(new String[0]));
        }
    }

    /** Units that leads go to, by the name of their type, in order. */
    private static Map<String, List<Integer>> users(Situation at) {
        Map<String, List<Integer>> users = new TreeMap<>();
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            if (at.directory().typeKnown(unit) && wired(at.wiring(), unit, false)) {
                users.computeIfAbsent(at.directory().type(unit).name(), key -> new ArrayList<>())
                        .add(unit);
            }
        }
        return users;
    }

    private static boolean wired(Wiring wiring, int unit, boolean powerOnly) {
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if (wiring.wiresAt(pin).length > 0 && (!powerOnly || power(wiring, pin))) {
                return true;
            }
        }
        return false;
    }

    private static boolean power(Wiring wiring, int pin) {
        return wiring.role(pin)
                .filter(role -> switch (role) {
                    case SUPPLY_IN, SUPPLY_OUT, SUPPLY_THROUGH, ZERO_V, PACK_PLUS, PACK_MINUS -> true;
                    default -> false;
                })
                .isPresent();
    }

    private static Draft draft(Wiring wiring, UnitType type, List<Integer> units) {
        boolean power = units.stream().anyMatch(unit -> wired(wiring, unit, true));
        String from = type.pinoutSource().known().map(PinoutSource::word).orElse("");
        List<String> names =
                units.stream().map(unit -> wiring.directory().name(unit)).toList();
        Draft draft = Draft.of(
                        power ? Severity.S3 : Severity.S4,
                        "pin-out unverified: " + type.name() + " (" + String.join(", ", names) + ") is from " + from)
                .about(type.name())
                .at(new Place(type.at(), type.name(), type.name() + ": unit type"))
                .cause("pin-out of " + type.name())
                .sum("pin-out from " + from + ", neither maker nor ring-out; leads on "
                        + (power ? "its supply or 0V contacts" : "its signal contacts"))
                .why(
                        "makers number the same plug from either end: a wrong supply contact burns the unit at first power-up")
                .meter(
                        "unit alone, power off: the 0V contacts of its plugs are one point, under 1 ohm, and no supply contact is one with them")
                .fix("ring out these types or take the maker's drawing, and write down where the pin-out comes from");
        units.forEach(unit -> draft.seen(wiring.directory().unit(unit)));
        return draft;
    }
}
