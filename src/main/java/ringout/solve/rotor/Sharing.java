package ringout.solve.rotor;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * The best way to share rotors over things of which one may let go (clamps, buses): the one whose worst loss is least bad.
 * All ways are tried, branches that cannot beat the best are left; beyond a number of losses looked at the best so far counts.
 */
public final class Sharing {
    /** No more losses than this are looked at: twelve rotors in any groups stay below. */
    private static final int MOST = 20_000;

    private final ToDoubleFunction<BitSet> value;
    private final Map<BitSet, Double> known = new HashMap<>();
    private List<BitSet> best = List.of();
    private double bestValue = Double.NEGATIVE_INFINITY;

    private Sharing(ToDoubleFunction<BitSet> value) {
        this.value = value;
    }

    /**
     * {@return the groups of the best sharing, one a size}
     *
     * @param rotors all rotors to share
     * @param sizes how many each thing can take, together at least as many as there are rotors
     * @param value what a loss is worth, higher is better
     */
    public static List<BitSet> best(BitSet rotors, List<Integer> sizes, ToDoubleFunction<BitSet> value) {
        Sharing sharing = new Sharing(value);
        List<Integer> largestFirst = new ArrayList<>(sizes);
        largestFirst.sort((a, b) -> b - a);
        sharing.share(rotors, largestFirst, new ArrayList<>(), Double.POSITIVE_INFINITY);
        return sharing.best;
    }

    private void share(BitSet left, List<Integer> sizes, List<BitSet> groups, double worst) {
        if (left.isEmpty()) {
            bestValue = worst;
            best = List.copyOf(groups);
            return;
        }
        int before = -1;
        for (int i = 0; i < sizes.size(); i++) {
            int size = sizes.get(i);
            if (size != before) {
                before = size;
                List<Integer> others = new ArrayList<>(sizes);
                others.remove(i);
                BitSet group = new BitSet();
                int first = left.nextSetBit(0);
                group.set(first);
                fill(left, first + 1, Math.min(size, left.cardinality()) - 1, group, others, groups, worst);
            }
        }
    }

    /** Fills a group up with every choice of what is left, then shares out the rest. */
    private void fill(
            BitSet left, int from, int more, BitSet group, List<Integer> sizes, List<BitSet> groups, double worst) {
        if (more > 0) {
            for (int next = left.nextSetBit(from); next >= 0; next = left.nextSetBit(next + 1)) {
                group.set(next);
                fill(left, next + 1, more - 1, group, sizes, groups, worst);
                group.clear(next);
            }
            return;
        }
        double with = Math.min(worst, value(group));
        if (with <= bestValue) {
            return;
        }
        BitSet rest = (BitSet) left.clone();
        rest.andNot(group);
        int capacity = sizes.stream().mapToInt(Integer::intValue).sum();
        if (rest.cardinality() <= capacity) {
            groups.add((BitSet) group.clone());
            share(rest, sizes, groups, with);
            groups.remove(groups.size() - 1);
        }
    }

    private double value(BitSet group) {
        Double seen = known.get(group);
        if (seen == null) {
            if (known.size() >= MOST) {
                return Double.NEGATIVE_INFINITY;
            }
            seen = value.applyAsDouble(group);
            known.put((BitSet) group.clone(), seen);
        }
        return seen;
    }
}
