package ringout.check.topology;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
            for (int i = 0; i < rows.size(); i++) {
                for (int j = i + 1; j < rows.size(); j++) {
                    look(at, out, first, ordered(rows.get(i), rows.get(j)), told);
                }
            }
        });
        told.values().forEach(out::finding);
    }

    private static List<Row> ordered(Row a, Row b) {
        boolean swap = a.lead().id().compareTo(b.lead().id()) > 0;
        return swap ? List.of(b, a) : List.of(a, b);
    }

    /** The rows at each plug that has more than one, by the first pin of the plug. */
    private static Map<Integer, List<Row>> rows(Wiring wiring) {
        Map<Integer, int[]> lastRow = new HashMap<>();
        Map<Integer, Map<Integer, Row>> shared = new LinkedHashMap<>();
        for (Wire wire : wiring.wires()) {
            for (int pin : new int[] {wire.fromPin(), wire.toPin()}) {
                if (!wiring.directory().isJoint(wiring.unitOf(pin))) {
                    int plug = wiring.firstPin(wiring.unitOf(pin), wiring.plugIndex(pin));
                    int[] seen = lastRow.computeIfAbsent(plug, key -> new int[] {wire.leadIndex(), 0});
                    if (seen[0] != wire.leadIndex()) {
                        shared.computeIfAbsent(plug, key -> new LinkedHashMap<>());
                    }
                }
            }
        }
        for (Wire wire : shared.isEmpty() ? List.<Wire>of() : wiring.wires()) {
            note(wiring, wire, wire.fromPin(), shared);
            note(wiring, wire, wire.toPin(), shared);
        }
        Map<Integer, List<Row>> found = new LinkedHashMap<>();
        shared.forEach((plug, rows) -> found.put(plug, List.copyOf(rows.values())));
        return found;
    }

    private static void note(Wiring wiring, Wire wire, int pin, Map<Integer, Map<Integer, Row>> shared) {
        Map<Integer, Row> rows = shared.get(wiring.firstPin(wiring.unitOf(pin), wiring.plugIndex(pin)));
        if (rows != null && !wiring.directory().isJoint(wiring.unitOf(pin))) {
            Row row = rows.computeIfAbsent(
                    wire.leadIndex(),
                    index -> new Row(index, wire.lead(), whole(wiring, index), new TreeSet<>(), new TreeSet<>()));
            int a = Math.min(wire.fromPin(), wire.toPin());
            int b = Math.max(wire.fromPin(), wire.toPin());
            row.pairs().add(a + ":" + b);
            row.pins().add(pin);
        }
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
