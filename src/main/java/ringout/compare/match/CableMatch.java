package ringout.compare.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.graph.Wire;
import ringout.graph.Wiring;

/**
 * Which lead of one aircraft is which of another. First those that join the same contacts, of these first those of the same
 * name; then those of the same name; then those that have an end in common and are made alike.
 */
final class CableMatch {
    private final PinMatch pins;
    private final int span;
    private final List<Cable> base;
    private final List<Cable> other;
    private final List<long[]> ways = new ArrayList<>();
    private final List<long[]> waysThere = new ArrayList<>();
    private final int[] to;
    private final int[] back;

    CableMatch(Wiring from, Wiring against, List<Cable> cables, List<Cable> otherCables, PinMatch pins) {
        this.pins = pins;
        this.span = from.pinCount() + against.pinCount() + 1;
        this.base = cables;
        this.other = otherCables;
        base.forEach(cable -> ways.add(ways(cable, true)));
        other.forEach(cable -> waysThere.add(ways(cable, false)));
        to = new int[base.size()];
        back = new int[other.size()];
        Arrays.fill(to, -1);
        Arrays.fill(back, -1);
        byName(true);
        byWays();
        byName(false);
        new LikelyCables(this).run();
    }

    /** The conductors of a lead as sorted numbers, each by its two contacts in whatever direction. */
    private long[] ways(Cable cable, boolean here) {
        long[] all = new long[cable.wires().size()];
        for (int i = 0; i < all.length; i++) {
            Wire wire = cable.wires().get(i);
            long a = here ? wire.fromPin() : number(wire.fromPin());
            long b = here ? wire.toPin() : number(wire.toPin());
            all[i] = Math.min(a, b) * span + Math.max(a, b);
        }
        Arrays.sort(all);
        return all;
    }

    /** A contact of the other aircraft by its number in the base; one that the base does not have by a number of its own. */
    private long number(int pin) {
        int known = pins.back(pin);
        return known >= 0 ? known : (long) span - 1 - pin;
    }

    private void byName(boolean sameWays) {
        Map<String, List<Integer>> named = new HashMap<>(2 * other.size());
        for (int cable = 0; cable < other.size(); cable++) {
            if (back[cable] < 0) {
                named.computeIfAbsent(Cables.fold(other.get(cable).id()), key -> new ArrayList<>(1))
                        .add(cable);
            }
        }
        for (int cable = 0; cable < base.size(); cable++) {
            String id = Cables.fold(base.get(cable).id());
            for (int found : to[cable] < 0 && !id.isEmpty() ? named.getOrDefault(id, List.of()) : List.<Integer>of()) {
                if (to[cable] < 0
                        && back[found] < 0
                        && (!sameWays || Arrays.equals(ways.get(cable), waysThere.get(found)))) {
                    pair(cable, found);
                }
            }
        }
    }

    private void byWays() {
        Map<List<Long>, List<Integer>> joined = new LinkedHashMap<>();
        for (int cable = 0; cable < other.size(); cable++) {
            if (back[cable] < 0 && waysThere.get(cable).length > 0) {
                joined.computeIfAbsent(boxed(waysThere.get(cable)), key -> new ArrayList<>(1))
                        .add(cable);
            }
        }
        for (int cable = 0; cable < base.size(); cable++) {
            List<Integer> found = to[cable] < 0 && ways.get(cable).length > 0
                    ? joined.getOrDefault(boxed(ways.get(cable)), List.of())
                    : List.of();
            if (!found.isEmpty()) {
                pair(cable, found.remove(0));
            }
        }
    }

    private static List<Long> boxed(long[] values) {
        return Arrays.stream(values).boxed().toList();
    }

    void pair(int cable, int found) {
        to[cable] = found;
        back[found] = cable;
    }

    List<Cable> base() {
        return base;
    }

    List<Cable> other() {
        return other;
    }

    int to(int cable) {
        return to[cable];
    }

    int back(int cable) {
        return back[cable];
    }

    /** How many conductors two leads share. */
    int shared(int cable, int found) {
        Set<Long> here = new HashSet<>(boxed(ways.get(cable)));
        return (int) Arrays.stream(waysThere.get(found)).filter(here::contains).count();
    }

    /** The contacts a lead of the base ends at. */
    Set<Long> ends(int cable) {
        Set<Long> ends = new HashSet<>();
        base.get(cable).wires().forEach(wire -> ends.addAll(List.of((long) wire.fromPin(), (long) wire.toPin())));
        return ends;
    }

    /** The contacts a lead of the other aircraft ends at, by their numbers in the base. */
    Set<Long> endsThere(int cable) {
        Set<Long> ends = new HashSet<>();
        other.get(cable).wires().forEach(wire -> ends.addAll(List.of(number(wire.fromPin()), number(wire.toPin()))));
        return ends;
    }

    boolean joinsSame(int cable) {
        return to[cable] >= 0 && Arrays.equals(ways.get(cable), waysThere.get(to[cable]));
    }
}
