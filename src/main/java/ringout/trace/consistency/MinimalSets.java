package ringout.trace.consistency;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** Smallest sets of faults that explain, and smallest sets of parts that cannot all be sound. */
public final class MinimalSets {
    private static final Comparator<BitSet> ORDER =
            Comparator.comparingInt(BitSet::cardinality).thenComparing(set -> set.toString());

    private MinimalSets() {}

    /**
     * The minimal diagnoses: sets of at most so many faulty parts that agree with what was seen, none within another. More faults never agree
     * worse, since a faulty part may do anything.
     */
    public static List<BitSet> diagnoses(int parts, int most, Predicate<BitSet> consistent) {
        List<BitSet> found = new ArrayList<>();
        List<BitSet> layer = List.of(new BitSet());
        for (int size = 0; size <= Math.min(most, parts); size++) {
            List<BitSet> open = new ArrayList<>();
            for (BitSet set : layer) {
                if (found.stream().noneMatch(smaller -> holds(set, smaller))) {
                    (consistent.test(set) ? found : open).add(set);
                }
            }
            layer = larger(open, parts);
        }
        return found;
    }

    /** Each set with one more part above its last, so that none comes twice. */
    private static List<BitSet> larger(List<BitSet> sets, int parts) {
        List<BitSet> more = new ArrayList<>();
        for (BitSet set : sets) {
            for (int part = set.length(); part < parts; part++) {
                BitSet one = (BitSet) set.clone();
                one.set(part);
                more.add(one);
            }
        }
        return more;
    }

    /**
     * The minimal sets that meet every one of some sets. Minimal diagnoses are the minimal hitting sets of the minimal conflicts (Reiter 1987) and
     * the other way round, so either gives the other.
     */
    public static List<BitSet> hitting(List<BitSet> sets) {
        List<BitSet> hits = List.of(new BitSet());
        for (BitSet set : sets) {
            List<BitSet> next = new ArrayList<>();
            for (BitSet hit : hits) {
                if (hit.intersects(set)) {
                    next.add(hit);
                } else {
                    set.stream().forEach(part -> {
                        BitSet more = (BitSet) hit.clone();
                        more.set(part);
                        next.add(more);
                    });
                }
            }
            hits = minimal(next);
        }
        return hits;
    }

    private static List<BitSet> minimal(List<BitSet> sets) {
        List<BitSet> kept = new ArrayList<>();
        for (BitSet set : sets.stream().distinct().sorted(ORDER).toList()) {
            if (kept.stream().noneMatch(smaller -> holds(set, smaller))) {
                kept.add(set);
            }
        }
        return kept;
    }

    private static boolean holds(BitSet set, BitSet smaller) {
        BitSet missing = (BitSet) smaller.clone();
        missing.andNot(set);
        return missing.isEmpty();
    }
}
