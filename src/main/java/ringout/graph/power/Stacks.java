package ringout.graph.power;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Sources on top of each other: packs in series are one stack, and what a stack feeds returns to the minus of its lowest
 * source.
 */
final class Stacks {
    private static final int ASKING = -2;
    private static final int UNASKED = -1;

    private final Ties ties;
    private final List<PowerSource> sources;
    private final Map<Integer, List<PowerSource>> byPlus = new HashMap<>();
    private final int[] bottom;

    Stacks(Ties ties, List<PowerSource> sources, BitSet on) {
        this.ties = ties;
        this.sources = sources;
        bottom = new int[sources.size()];
        Arrays.fill(bottom, UNASKED);
        for (PowerSource source : sources) {
            if (on.get(source.index())) {
                byPlus.computeIfAbsent(ties.of(source.plus()), key -> new ArrayList<>())
                        .add(source);
            }
        }
    }

    /** The working sources that lift a tie. */
    List<PowerSource> lifting(int tie) {
        return byPlus.getOrDefault(tie, List.of());
    }

    /** The lowest source of the stack a source is on; of a ring of packs, the last one before it closes. */
    PowerSource bottom(PowerSource source) {
        int known = bottom[source.index()];
        if (known >= 0) {
            return sources.get(known);
        }
        int lowest = source.index();
        List<Integer> way = new ArrayList<>();
        while (bottom[lowest] == UNASKED) {
            way.add(lowest);
            bottom[lowest] = ASKING;
            int below = below(sources.get(lowest));
            if (below < 0 || bottom[below] == ASKING) {
                bottom[lowest] = lowest;
            } else {
                lowest = below;
            }
        }
        int found = bottom[lowest];
        way.forEach(s -> bottom[s] = found);
        return sources.get(found);
    }

    private int below(PowerSource source) {
        List<PowerSource> lower = source.minus() < 0 ? List.of() : lifting(ties.of(source.minus()));
        return lower.isEmpty() ? -1 : lower.get(0).index();
    }

    /** Whether power starts here: a source that stands on no other and needs no input. */
    boolean isBottom(PowerSource source) {
        return (source.inputs().isEmpty() || source.part() < 0)
                && bottom(source).index() == source.index();
    }
}
