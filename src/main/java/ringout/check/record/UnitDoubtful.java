package ringout.check.record;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Severity;
import ringout.model.Bus;
import ringout.model.Datum;
import ringout.model.InnerPart;
import ringout.model.Lead;
import ringout.model.Unit;
import ringout.model.UnitType;

/**
 * A number that is likely to be in another unit of measure than its column.
 *
 * <p>Why it matters: every verdict that rests on it is wrong by a factor of 10, 25.4 or 1000, and looks right.
 *
 * <p>Condition: a value outside what is built: a lead shorter than 10 mm or longer than 100 m, a gauge thinner than 40 or a
 * cross-section above 120 mm2, a cut length that differs from its route by a factor of 10, 25.4 or 1000 within 10 %, a
 * lead shorter than a fifth of the straight way between its units, a current above 1000 A, a capacity above 1000 Ah, a cell above 5 V
 * or below 1 V or above 100 mOhm, a bus faster than 100 Mbit/s, a unit more than 50 m from the hub. It asks; it never converts.
 *
 * <p>Does not see: a wrong unit that leaves the value in the usual range.
 *
 * <p>Reference: common practice, no source; the ranges are judgement.
 */
@CheckInfo(
        code = "X14",
        name = "unit-of-measure-doubtful",
        severity = Severity.S5,
        since = "0.1",
        asksOnly = true,
        needs = {"unit of measure of each number"})
public final class UnitDoubtful implements Check {
    private final Ranges ranges = new Ranges();

    /** What is doubtful, by kind of value. */
    private static final class Doubts {
        private final Map<String, Set<String>> byKind = new TreeMap<>();
        private final Map<String, Set<String>> owners = new TreeMap<>();
        private boolean seen;

        void note(String kind, String value, String owner) {
            byKind.computeIfAbsent(kind, key -> new TreeSet<>()).add(value + " of " + owner);
            owners.computeIfAbsent(kind, key -> new TreeSet<>()).add(owner);
        }
    }

    @Override
    public void look(Situation at, Outcomes out) {
        Doubts doubts = new Doubts();
        for (int row = 0; row < at.aircraft().leads().size(); row++) {
            lead(at, doubts, row);
        }
        at.aircraft().units().forEach(unit -> unit(doubts, unit));
        at.aircraft().types().forEach(type -> type(doubts, type));
        for (Bus bus : at.aircraft().buses()) {
            value(doubts, "bit rate", "kbit/s", bus.rateKbit(), bus.name());
        }
        if (doubts.seen) {
            out.looked();
        }
        doubts.byKind.forEach((kind, values) -> {
            Set<String> owners = doubts.owners.getOrDefault(kind, Set.of());
            out.cannotTell(
                    "unit of measure of " + kind + " " + String.join(", ", values),
                    "look at the source of the number, or measure again",
                    2 * owners.size(),
                    owners.toArray(new String[0]));
        });
    }

    private void value(Doubts doubts, String kind, String unit, Datum<Double> datum, String owner) {
        if (datum.isKnown()) {
            doubts.seen = true;
            if (ranges.isDoubtful(kind, datum.or(0.0))) {
                doubts.note(kind, Figures.of(datum.or(0.0)) + " " + unit, owner);
            }
        }
    }

    private void lead(Situation at, Doubts doubts, int row) {
        Lead lead = at.aircraft().leads().get(row);
        value(doubts, "length", "mm", lead.lengthMm(), lead.id());
        value(doubts, "cross-section", "mm2", lead.areaMm2(), lead.id());
        value(doubts, "current", "A", lead.averageA(), lead.id());
        value(doubts, "current", "A", lead.peakA(), lead.id());
        lead.awg()
                .known()
                .filter(awg -> !awg.isUsual())
                .ifPresent(awg -> doubts.note("gauge", awg + " AWG", lead.id()));
        if (lead.lengthMm().isKnown()) {
            double length = lead.lengthMm().or(0.0);
            if (lead.routeMm().isKnown()
                    && ranges.isFactor(length, lead.routeMm().or(0.0))) {
                doubts.note(
                        "length against route",
                        Figures.of(length) + " mm on "
                                + Figures.of(lead.routeMm().or(0.0)) + " mm",
                        lead.id());
            }
            Distances.straight(at, row)
                    .filter(way -> ranges.isFarTooShort(length, way) && !ranges.isDoubtful("length", length))
                    .ifPresent(way -> doubts.note(
                            "length", Figures.of(length) + " mm over " + Figures.of(way) + " mm", lead.id()));
        }
    }

    private void unit(Doubts doubts, Unit unit) {
        value(doubts, "position", "mm", unit.xMm(), unit.ref());
        value(doubts, "position", "mm", unit.yMm(), unit.ref());
        value(doubts, "position", "mm", unit.zMm(), unit.ref());
        unit.loads().forEach(load -> {
            value(doubts, "current", "A", load.averageA(), unit.ref());
            value(doubts, "current", "A", load.peakA(), unit.ref());
        });
    }

    private void type(Doubts doubts, UnitType type) {
        for (InnerPart part : type.parts()) {
            value(doubts, "capacity", "Ah", part.rating().capacityAh(), type.name());
            value(doubts, "cell voltage", "V", part.rating().fullV(), type.name());
            value(doubts, "cell voltage", "V", part.rating().nominalV(), type.name());
            value(doubts, "cell voltage", "V", part.rating().emptyV(), type.name());
            value(doubts, "cell resistance", "mOhm", part.rating().cellMilliohm(), type.name());
        }
        type.loads().forEach(load -> {
            value(doubts, "current", "A", load.averageA(), type.name());
            value(doubts, "current", "A", load.peakA(), type.name());
        });
    }
}
