package ringout.compare.match;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import ringout.model.Lead;

/** Leads left over that are one and the same re-made: most of their conductors in common, or one end and the make. */
final class LikelyCables {
    private final CableMatch match;

    private record Pair(int cable, int found, int shared, int ends) {}

    LikelyCables(CableMatch match) {
        this.match = match;
    }

    void run() {
        Map<Long, List<Integer>> atEnd = new HashMap<>();
        for (int found = 0; found < match.other().size(); found++) {
            if (match.back(found) < 0) {
                for (long end : match.endsThere(found)) {
                    atEnd.computeIfAbsent(end, key -> new ArrayList<>()).add(found);
                }
            }
        }
        List<Pair> pairs = new ArrayList<>();
        for (int cable = 0; cable < match.base().size() && !atEnd.isEmpty(); cable++) {
            if (match.to(cable) < 0) {
                Set<Integer> near = new TreeSet<>();
                match.ends(cable).forEach(end -> near.addAll(atEnd.getOrDefault(end, List.of())));
                for (int found : near) {
                    pair(cable, found, pairs);
                }
            }
        }
        pairs.sort(Comparator.comparingInt(Pair::shared)
                .thenComparingInt(Pair::ends)
                .reversed()
                .thenComparingInt(Pair::cable)
                .thenComparingInt(Pair::found));
        for (Pair pair : pairs) {
            if (match.to(pair.cable()) < 0 && match.back(pair.found()) < 0) {
                match.pair(pair.cable(), pair.found());
            }
        }
    }

    private void pair(int cable, int found, List<Pair> pairs) {
        int shared = match.shared(cable, found);
        Set<Long> ends = new HashSet<>(match.ends(cable));
        int all = ends.size();
        ends.retainAll(match.endsThere(found));
        int wires = Math.max(
                match.base().get(cable).wires().size(),
                match.other().get(found).wires().size());
        boolean madeAlike =
                alike(match.base().get(cable).row(), match.other().get(found).row());
        if (2 * shared > wires || (2 * ends.size() >= all && madeAlike)) {
            pairs.add(new Pair(cable, found, shared, ends.size()));
        }
    }

    /** Same purpose, size and length, and these are known. */
    private static boolean alike(Lead lead, Lead found) {
        return lead.kind().known().equals(found.kind().known())
                && lead.awg().known().equals(found.awg().known())
                && lead.lengthMm().isKnown()
                && lead.lengthMm().known().equals(found.lengthMm().known());
    }
}
