package ringout.check.record;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.model.BomLine;
import ringout.model.UnitType;

/**
 * A bill of material that counts other units than the list.
 *
 * <p>Why it matters: a unit is not there when it is to be fitted, or lies about and ends up in another aircraft.
 *
 * <p>Condition: a line of the bill names a unit type, by its name or the maker's part number, and its count is not that of the
 * units of that type in the list; or a type aboard is in no line. Sources that stay on the ground are left out.
 *
 * <p>Does not see: housings, contacts, wire and sleeves.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "X13",
        name = "bill-differs-from-list",
        severity = Severity.S4,
        since = "0.3",
        needs = {"count of each line of the bill"})
public final class BillDiffers implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        List<BomLine> bill = at.aircraft().record().bom();
        if (bill.isEmpty()) {
            return;
        }
        Map<String, UnitType> byName = new TreeMap<>();
        Map<String, List<String>> units = units(at, byName);
        Set<String> told = new HashSet<>();
        List<String> open = new ArrayList<>();
        for (BomLine line : bill) {
            String type = typeOf(line, byName);
            if (type.isEmpty()) {
                continue;
            }
            told.add(type);
            int aboard = units.getOrDefault(type, List.of()).size();
            if (!line.count().isKnown()) {
                open.add(line.part());
            } else if (line.count().or(0) == aboard) {
                out.looked();
            } else {
                out.finding(counted(line, line.count().or(0), units.getOrDefault(type, List.of())));
            }
        }
        units.forEach((type, refs) -> {
            if (!told.contains(type)) {
                out.finding(untold(type, refs));
            }
        });
        if (!open.isEmpty()) {
            out.cannotTell(
                    "count of " + String.join(", ", open),
                    "look at the bill of material",
                    1,
                    open.toArray(new String[0]));
        }
    }

    /** Units by type, in order. */
    private static Map<String, List<String>> units(Situation at, Map<String, UnitType> byName) {
        Map<String, List<String>> units = new TreeMap<>();
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            UnitType type = at.directory().type(unit);
            if (at.directory().typeKnown(unit) && !type.external().is(true)) {
                byName.putIfAbsent(type.name(), type);
                units.computeIfAbsent(type.name(), key -> new ArrayList<>())
                        .add(at.directory().name(unit));
            }
        }
        at.aircraft().types().forEach(type -> byName.putIfAbsent(type.name(), type));
        return units;
    }

    private static String typeOf(BomLine line, Map<String, UnitType> byName) {
        String part = fold(line.part());
        return byName.values().stream()
                .filter(type -> !type.external().is(true))
                .filter(type -> fold(type.name()).equals(part)
                        || (type.makerPart().isKnown()
                                && fold(type.makerPart().or("")).equals(part)))
                .map(UnitType::name)
                .findFirst()
                .orElse("");
    }

    private static String fold(String name) {
        return name.strip().toUpperCase(Locale.ROOT);
    }

    private static Draft counted(BomLine line, int count, List<String> refs) {
        String aboard = refs.isEmpty() ? "none" : refs.size() + " (" + String.join(", ", refs) + ")";
        return Draft.of(
                        Severity.S4,
                        "bill differs from list: " + count + " " + line.part() + " in the bill, " + aboard
                                + " in the list")
                .about(line.part())
                .at(new Place(line.at(), line.part(), line.part() + ": line of the bill"))
                .cause("bill " + line.part())
                .sum("bill " + count + ", list " + refs.size())
                .why("a unit is not there when it is to be fitted, or lies about")
                .fix("set the count of " + line.part() + " to " + refs.size() + ", or correct the unit list");
    }

    private static Draft untold(String type, List<String> refs) {
        return Draft.of(
                        Severity.S4,
                        "bill differs from list: " + type + " (" + String.join(", ", refs)
                                + ") is in no line of the bill")
                .about(type)
                .cause("bill " + type)
                .sum("bill 0, list " + refs.size())
                .why("a unit is not there when it is to be fitted, or lies about")
                .fix("add the types that are missing to the bill of material");
    }
}
