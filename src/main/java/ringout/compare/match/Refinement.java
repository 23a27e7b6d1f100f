package ringout.compare.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntPredicate;
import ringout.graph.Wiring;

/**
 * Colour refinement (Weisfeiler and Lehman 1968) of the units not yet matched, seeded with those that are. In each round a
 * unit takes a colour from its own and from those at the far ends of its conductors, contact by contact; colours that one
 * unit on each side has are a match. Each round is linear in the conductors of the unmatched.
 */
final class Refinement {
    private static final int ROUNDS = 64;
    private static final long SEED = 0x9E3779B97F4A7C15L;

    private final UnitMatch match;
    private final Side base;
    private final Side other;

    Refinement(UnitMatch match) {
        this.match = match;
        this.base = new Side(match.base());
        this.other = new Side(match.other());
        for (int unit = 0; unit < base.colour.length; unit++) {
            base.colour[unit] = match.to(unit) >= 0 ? mixed(unit + 1L) : text(UnitMatch.type(match.base(), unit));
        }
        for (int unit = 0; unit < other.colour.length; unit++) {
            int known = match.back(unit);
            other.colour[unit] = known >= 0 ? mixed(known + 1L) : text(UnitMatch.type(match.other(), unit));
        }
    }

    Refinement run() {
        int kinds = 0;
        for (int round = 0; round < ROUNDS; round++) {
            base.refine(unit -> match.to(unit) < 0);
            other.refine(unit -> match.back(unit) < 0);
            boolean paired = pairUnique();
            int now = base.kinds(unit -> match.to(unit) < 0);
            if (!paired && now <= kinds) {
                break;
            }
            kinds = now;
        }
        return this;
    }

    /** The unmatched units of the base that share their colour, in the order of the rows, each with those of the other side. */
    Map<List<Integer>, List<Integer>> classes() {
        Map<Long, List<Integer>> here = grouped(base, unit -> match.to(unit) < 0);
        Map<Long, List<Integer>> there = grouped(other, unit -> match.back(unit) < 0);
        Map<List<Integer>, List<Integer>> classes = new LinkedHashMap<>();
        here.forEach((colour, units) -> {
            if (there.containsKey(colour)) {
                classes.put(units, there.getOrDefault(colour, List.of()));
            }
        });
        return classes;
    }

    private static Map<Long, List<Integer>> grouped(Side side, IntPredicate open) {
        Map<Long, List<Integer>> units = new LinkedHashMap<>();
        for (int unit = 0; unit < side.colour.length; unit++) {
            if (open.test(unit)) {
                units.computeIfAbsent(side.colour[unit], key -> new ArrayList<>())
                        .add(unit);
            }
        }
        return units;
    }

    private boolean pairUnique() {
        Map<Long, Integer> there = unique(other, unit -> match.back(unit) < 0);
        Map<Long, Integer> here = unique(base, unit -> match.to(unit) < 0);
        boolean any = false;
        for (Map.Entry<Long, Integer> entry : here.entrySet()) {
            Integer found = there.get(entry.getKey());
            if (found != null && found >= 0 && entry.getValue() >= 0) {
                match.pair(entry.getValue(), found);
                base.colour[entry.getValue()] = mixed(entry.getValue() + 1L);
                other.colour[found] = base.colour[entry.getValue()];
                any = true;
            }
        }
        return any;
    }

    /** The unit of each colour; -1 where several have it. A unit without any conductor tells nothing and is left out. */
    private static Map<Long, Integer> unique(Side side, IntPredicate open) {
        Map<Long, Integer> units = new LinkedHashMap<>();
        for (int unit = 0; unit < side.colour.length; unit++) {
            if (open.test(unit) && side.links.end(unit) > side.links.first(unit)) {
                units.merge(side.colour[unit], unit, (first, again) -> -1);
            }
        }
        return units;
    }

    /** One aircraft with its colours. */
    private static final class Side {
        private final Wiring wiring;
        private final UnitLinks links;
        private final long[] place;
        private final long[] colour;

        Side(Wiring wiring) {
            this.wiring = wiring;
            this.links = new UnitLinks(wiring);
            this.colour = new long[wiring.directory().count()];
            this.place = new long[wiring.pinCount()];
            Map<String, Long> known = new HashMap<>();
            for (int pin = 0; pin < place.length; pin++) {
                String name = wiring.plug(pin).name() + "\n" + wiring.pin(pin).number();
                place[pin] = known.computeIfAbsent(name, Refinement::text);
            }
        }

        void refine(IntPredicate open) {
            long[] next = colour.clone();
            for (int unit = 0; unit < next.length; unit++) {
                if (open.test(unit)) {
                    next[unit] = mixed(colour[unit] * 31 + around(unit));
                }
            }
            System.arraycopy(next, 0, colour, 0, next.length);
        }

        /** A sum, so that the order of the rows does not count. */
        private long around(int unit) {
            long sum = 0;
            for (int link = links.first(unit); link < links.end(unit); link++) {
                int far = links.farPin(link);
                sum += mixed(place[links.ownPin(link)] + 3 * mixed(place[far] + 5 * colour[wiring.unitOf(far)]));
            }
            return sum;
        }

        int kinds(IntPredicate open) {
            Set<Long> kinds = new HashSet<>();
            for (int unit = 0; unit < colour.length; unit++) {
                if (open.test(unit)) {
                    kinds.add(colour[unit]);
                }
            }
            return kinds.size();
        }
    }

    private static long text(String words) {
        return mixed(Arrays.hashCode(words.toCharArray()) * 0x100000001B3L + words.length());
    }

    /** Spreads the bits of a number (finaliser of SplitMix64, Steele, Lea and Flood 2014). */
    private static long mixed(long value) {
        long z = value + SEED;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
