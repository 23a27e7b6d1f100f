package ringout.check.topology;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Site;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Lead;
import ringout.model.Plug;

/**
 * Two rows between the same pins, or two leads in one plug that is made for one.
 *
 * <p>Why it matters: a row written twice makes the bill and the drawing wrong; with two pin maps nobody knows which is built;
 * and two leads do not fit one plug.
 *
 * <p>Condition: two rows join the same two plugs over a common pin (S4, S2 when their pin maps differ), or two leads end in one
 * plug of several pins, neither declared for the plug nor for both leads (S4). Two conductors for current are one row with two
 * conductors; clamps and studs count their leads by M16. Rows of one conductor each may share a plug, not a pin.
 *
 * <p>Does not see: two rows of one lead under two ids.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "T19",
        name = "listed-twice",
        severity = Severity.S4,
        since = "0.1",
        needs = {"whether two leads may share the plug"})
public final class ListedTwice implements Check {
    /** What one row does at one plug. */
    private record Row(int index, Lead lead, boolean whole, Set<String> pairs, Set<Integer> pins) {}

    @Override
    public void look(Situation at, Outcomes out) {
        Map<Integer, List<Row>> byPlug = rows(at.wiring());
        Map<Long, Draft> told = new LinkedHashMap<>();
        if (!at.wiring().wires().isEmpty()) {
            out.looked();
        }
        byPlug.forEach((first, rows) -> {
            List<Row> whole = rows.stream().filter(Row::whole).toList();
            for (Row row : whole) {
                rows.stream()
                        .filter(other -> !other.whole() || other.index() > row.index())
                        .forEach(other -> look(at, out, first, ordered(row, other), told));
            }
            pairs(rows).forEach(pair -> look(at, out, first, ordered(pair.get(0), pair.get(1)), told));
        });
        told.values().forEach(out::finding);
    }

    /** Rows of one conductor each that come to one pin, two by two. */
    private static List<List<Row>> pairs(List<Row> rows) {
        Map<Integer, List<Row>> byPin = new TreeMap<>();
        rows.stream()
                .filter(row -> !row.whole())
                .forEach(row -> row.pins()
                        .forEach(pin -> byPin.computeIfAbsent(pin, key -> new ArrayList<>())
                                .add(row)));
        List<List<Row>> found = new ArrayList<>();
        for (List<Row> here : byPin.values()) {
            for (int i = 0; i + 1 < here.size(); i++) {
                found.add(List.of(here.get(i), here.get(i + 1)));
            }
        }
        return found;
    }

    private static List<Row> ordered(Row a, Row b) {
        boolean swap = a.lead().id().compareTo(b.lead().id()) > 0;
        return swap ? List.of(b, a) : List.of(a, b);
    }

    /** The rows at each plug that has more than one, by the first pin of the plug. */
    private static Map<Integer, List<Row>> rows(Wiring wiring) {
        int[] firstRow = new int[wiring.pinCount()];
        Arrays.fill(firstRow, -1);
        BitSet several = new BitSet();
        for (Wire wire : wiring.wires()) {
            second(wiring, wire, wire.fromPin(), firstRow, several);
            second(wiring, wire, wire.toPin(), firstRow, several);
        }
        Map<Integer, Map<Integer, Row>> shared = new LinkedHashMap<>();
        for (int first = several.nextSetBit(0); first >= 0; first = several.nextSetBit(first + 1)) {
            int unit = wiring.unitOf(first);
            int plug = wiring.plugIndex(first);
            Map<Integer, Row> rows = shared.computeIfAbsent(first, key -> new LinkedHashMap<>());
            for (int pin = first; pin < wiring.endPin(unit, plug); pin++) {
                for (int wire : wiring.wiresAt(pin)) {
                    note(wiring, wiring.wires().get(wire), pin, rows);
                }
            }
        }
        Map<Integer, List<Row>> found = new LinkedHashMap<>();
        shared.forEach((plug, rows) -> found.put(plug, List.copyOf(rows.values())));
        return found;
    }

    /** Notes the plugs that a second row comes to; a joint is made for several. */
    private static void second(Wiring wiring, Wire wire, int pin, int[] firstRow, BitSet several) {
        int unit = wiring.unitOf(pin);
        if (!wiring.directory().isJoint(unit)) {
            int plug = wiring.firstPin(unit, wiring.plugIndex(pin));
            if (firstRow[plug] < 0) {
                firstRow[plug] = wire.leadIndex();
            } else if (firstRow[plug] != wire.leadIndex()) {
                several.set(plug);
            }
        }
    }

    private static void note(Wiring wiring, Wire wire, int pin, Map<Integer, Row> rows) {
        Row row = rows.computeIfAbsent(
                wire.leadIndex(),
                index -> new Row(index, wire.lead(), whole(wiring, index), new TreeSet<>(), new TreeSet<>()));
        int a = Math.min(wire.fromPin(), wire.toPin());
        int b = Math.max(wire.fromPin(), wire.toPin());
        row.pairs().add(a + ":" + b);
        row.pins().add(pin);
    }

    private static boolean whole(Wiring wiring, int row) {
        return wiring.from(row) instanceof Site.OnPlug && wiring.to(row) instanceof Site.OnPlug;
    }

    private static void look(Situation at, Outcomes out, int first, List<Row> pair, Map<Long, Draft> told) {
        Row a = pair.get(0);
        Row b = pair.get(1);
        long key = (long) Math.min(a.index(), b.index()) << 32 | Math.max(a.index(), b.index());
        boolean samePin = a.pins().stream().anyMatch(b.pins()::contains);
        if (told.containsKey(key)) {
            return;
        }
        if (samePin && samePlugs(at.wiring(), a, b)) {
            told.put(key, twice(a, b));
        } else if (a.whole() || b.whole()) {
            crowded(at, out, first, pair, samePin, told, key);
        }
    }

    private static boolean samePlugs(Wiring wiring, Row a, Row b) {
        return ends(wiring, a.index()).equals(ends(wiring, b.index()));
    }

    private static Set<Integer> ends(Wiring wiring, int row) {
        return new TreeSet<>(List.of(plug(wiring, wiring.from(row)), plug(wiring, wiring.to(row))));
    }

    private static int plug(Wiring wiring, Site site) {
        if (site instanceof Site.OnPin pin) {
            return wiring.firstPin(pin.unit(), pin.plug());
        }
        return site instanceof Site.OnPlug plug ? wiring.firstPin(plug.unit(), plug.plug()) : -1;
    }

    private static Draft twice(Row a, Row b) {
        boolean same = a.pairs().equals(b.pairs());
        boolean part = a.pairs().containsAll(b.pairs()) || b.pairs().containsAll(a.pairs());
        String ids = a.lead().id() + " and " + b.lead().id();
        return Draft.of(
                        part ? Severity.S4 : Severity.S2,
                        "listed twice: " + ids + " join the same two plugs" + (part ? "" : " with different pin maps"))
                .about(a.lead().id(), b.lead().id())
                .at(a.lead())
                .at(b.lead())
                .sum(ids + ": " + a.lead().from() + " to " + a.lead().to() + ", "
                        + (same ? "same pins" : part ? "common pins" : "pins crossed between them"))
                .why(
                        part
                                ? "the drawing and the bill count a lead that is not there"
                                : "nobody knows which of the two is built")
                .meter(part ? "" : "ring out the lead pin by pin to see which map it has")
                .fix(
                        part
                                ? "keep one of " + ids + ", or list two conductors for current as one row"
                                : "keep the row that matches the lead, "
                                        + a.lead().id() + " or " + b.lead().id())
                .explains(part ? new String[0] : new String[] {"T05", "T12", "S07"});
    }

    private static void crowded(
            Situation at, Outcomes out, int first, List<Row> pair, boolean samePin, Map<Long, Draft> told, long key) {
        Plug plug = at.wiring().plug(first);
        Lead a = pair.get(0).lead();
        Lead b = pair.get(1).lead();
        String name =
                at.wiring().plugName(at.wiring().unitOf(first), at.wiring().plugIndex(first));
        boolean single = plug.pins().size() == 1 || plug.conductors().isKnown();
        boolean declared = plug.twoLeads().is(true)
                || (a.sharedPins().is(true) && b.sharedPins().is(true));
        if (single || (declared && !samePin)) {
            return;
        }
        if (plug.twoLeads() instanceof ringout.model.Datum.Unknown && !samePin) {
            out.cannotTell("whether two leads may share " + name, "look at the plug", 2, name);
            return;
        }
        told.put(
                key,
                Draft.of(Severity.S4, "two leads in one plug: " + a.id() + " and " + b.id() + " both end in " + name)
                        .about(a.id(), b.id(), name)
                        .at(a)
                        .at(b)
                        .sum("2 leads at " + name + (samePin ? ", on a common pin" : "") + ", a plug takes one")
                        .why("one of them is meant for another plug, or they must be made up together")
                        .fix("correct the end of " + a.id() + " or " + b.id() + ", or declare two leads for " + name));
    }
}
