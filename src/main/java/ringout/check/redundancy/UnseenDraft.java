package ringout.check.redundancy;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.model.AircraftFunction;

/** Writes what no planned test would show, and the cheapest tests that would. */
final class UnseenDraft {
    private static final int FEW = 12;
    private static final int FUNCTION_MINUTES = 2;
    private static final int LEAD_MINUTES = 1;

    private UnseenDraft() {}

    static Draft of(UntestedConductor.Unseen unseen) {
        List<String> counts = new ArrayList<>();
        List<String> words = new ArrayList<>();
        tell("an open", unseen, unseen.opens, counts, words);
        tell("a short to the neighbour", unseen, unseen.shorts, counts, words);
        tell("an exchange", unseen, unseen.exchanges, counts, words);
        return Draft.of(
                        Severity.S4,
                        "planned tests miss faults: " + String.join(", ", counts) + " of " + unseen.conductors
                                + (unseen.conductors == 1 ? " conductor" : " conductors") + " would pass")
                .about("planned tests")
                .sum(String.join("; ", words) + "; planned readings: "
                        + unseen.reach.readings().size())
                .why("the sheet is ticked from top to bottom, and the fault flies")
                .fix("add, cheapest first: " + String.join("; ", cheapest(unseen)))
                .cause("planned tests");
    }

    private static void tell(
            String fault,
            UntestedConductor.Unseen unseen,
            Set<Integer> wires,
            List<String> counts,
            List<String> words) {
        if (!wires.isEmpty()) {
            counts.add(fault + " of " + wires.size());
            words.add(fault + ": " + few(names(unseen, wires)));
        }
    }

    /** W23-1: lead, and the contact of its from end where it has several conductors. */
    private static List<String> names(UntestedConductor.Unseen unseen, Set<Integer> wires) {
        List<Wire> all = unseen.at.wiring().wires();
        List<String> names = new ArrayList<>();
        for (int i : wires) {
            Wire wire = all.get(i);
            boolean alone = (i == 0 || all.get(i - 1).leadIndex() != wire.leadIndex())
                    && (i + 1 == all.size() || all.get(i + 1).leadIndex() != wire.leadIndex());
            names.add(wire.lead().id()
                    + (alone ? "" : "-" + unseen.at.wiring().pin(wire.fromPin()).number()));
        }
        return names;
    }

    private static String few(List<String> names) {
        return names.size() <= FEW
                ? String.join(", ", names)
                : String.join(", ", names.subList(0, FEW)) + " and " + (names.size() - FEW) + " more";
    }

    /** Functions nobody looks at yet while one shows more conductors a minute than a ring-out; then ring-outs of what is left. */
    private static List<String> cheapest(UntestedConductor.Unseen unseen) {
        Set<Integer> left = new TreeSet<>(unseen.opens);
        left.addAll(unseen.shorts);
        left.addAll(unseen.exchanges);
        List<String> tests = new ArrayList<>();
        Map<String, BitSet> functions = new TreeMap<>();
        for (AircraftFunction function : unseen.at.aircraft().functions()) {
            if (!function.preflight().isKnown()) {
                functions.put(function.name(), unseen.reach.of(function));
            }
        }
        boolean more = true;
        while (more) {
            String best = "";
            long most = (long) FUNCTION_MINUTES / LEAD_MINUTES;
            for (Map.Entry<String, BitSet> one : functions.entrySet()) {
                long shows = left.stream().filter(one.getValue()::get).count();
                if (shows > most) {
                    most = shows;
                    best = one.getKey();
                }
            }
            more = !best.isEmpty();
            if (more) {
                BitSet shown = functions.getOrDefault(best, new BitSet());
                left.removeIf(shown::get);
                tests.add("see " + best + " work (" + most + " conductors, " + FUNCTION_MINUTES + " min)");
            }
        }
        List<String> leads = left.stream()
                .map(wire -> unseen.at.wiring().wires().get(wire).lead().id())
                .distinct()
                .collect(Collectors.toList());
        if (!leads.isEmpty()) {
            tests.add("ring out " + few(leads) + " with one end pulled (" + LEAD_MINUTES * leads.size() + " min)");
        }
        return tests;
    }
}
