package ringout.trace.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Repair;
import ringout.trace.predict.TestCard;

/**
 * What is to be proved again after the repair: everything opened or disturbed, not just what was wrong.
 *
 * @param object unit, plug, lead or lid, as the list names it
 * @param what is to be done with it
 */
public record Retest(String object, String what) {
    /** What is to be proved after the tests made so far and a repair. */
    public static List<Retest> of(Diagnosis search, Candidate repaired) {
        Wiring wiring = search.circuit().wiring();
        Map<String, String> found = new LinkedHashMap<>();
        search.scene()
                .silent()
                .forEach(unit ->
                        found.put(unit, "responds, steadily, with all loads on; then power off and on once more"));
        Set<String> lids = new TreeSet<>(search.observed().opened());
        lids.addAll(repaired.opening().covers());
        for (TestReading reading : search.readings()) {
            TestCard card = search.card(reading.test());
            card.disturbs().forEach(object -> put(found, wiring, object));
            lids.addAll(card.opening().covers());
        }
        repair(found, wiring, repaired);
        lids.forEach(lid -> found.put(
                lid, "before it closes: every plug under it seated and latched, no lead pinched, nothing left inside"));
        List<Retest> all = new ArrayList<>();
        found.forEach((object, what) -> all.add(new Retest(object, what)));
        return List.copyOf(all);
    }

    private static void repair(Map<String, String> found, Wiring wiring, Candidate repaired) {
        String object = repaired.repair().object();
        Repair.Sort sort = repaired.repair().sort();
        if (sort == Repair.Sort.LEAD || sort == Repair.Sort.ROUTE) {
            found.put(object, "ring out pin by pin, each against its neighbours too; pull test on every new contact");
            wiring.wires().stream()
                    .filter(wire -> wire.lead().id().equals(object))
                    .flatMap(wire -> List.of(plug(wiring, wire.fromPin()), plug(wiring, wire.toPin())).stream())
                    .forEach(plug -> put(found, wiring, plug));
        } else if (sort == Repair.Sort.UNIT) {
            found.put(
                    object,
                    "settings read back and held against the record; every plug of it seated; calibrations that hang on it");
            plugs(wiring, object).forEach(plug -> put(found, wiring, plug));
        } else if (sort == Repair.Sort.SETTING) {
            found.put(object, "read back after a power cycle, as it reads and not as one remembers");
        } else if (sort == Repair.Sort.PART) {
            found.put(object, "the cause found, not only the part replaced; current at rest against the sheet");
        } else {
            put(found, wiring, object);
        }
        repaired.rows().forEach(row -> put(found, wiring, row));
    }

    private static String plug(Wiring wiring, int pin) {
        return wiring.plugName(wiring.unitOf(pin), wiring.plugIndex(pin));
    }

    private static Set<String> plugs(Wiring wiring, String unit) {
        Set<String> plugs = new TreeSet<>();
        for (Wire wire : wiring.wires()) {
            for (int pin : new int[] {wire.fromPin(), wire.toPin()}) {
                if (wiring.directory().name(wiring.unitOf(pin)).equals(unit)) {
                    plugs.add(plug(wiring, pin));
                }
            }
        }
        return plugs;
    }

    private static void put(Map<String, String> found, Wiring wiring, String object) {
        boolean lead = wiring.wires().stream().anyMatch(wire -> wire.lead().id().equals(object));
        boolean unit = wiring.directory().find(object).isPresent();
        String what = lead
                ? "through from end to end: ohms of each conductor, and none to its neighbour or to 0V"
                : unit ? "responds; settings as on record" : "in its own socket by the label, latched, tugged";
        found.putIfAbsent(object, what);
    }
}
