package ringout.compare.find;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.compare.match.Match;
import ringout.graph.Wire;

/**
 * The conductors of one lead in both aircraft: which are the same, which are gone, which are new.
 *
 * @param same conductors of the base with those of the other aircraft between the same contacts
 * @param gone conductors only the base has
 * @param added conductors only the other aircraft has
 * @param reversed whether the row is written from the other end
 */
record Ways(Map<Wire, Wire> same, List<Wire> gone, List<Wire> added, boolean reversed) {
    static Ways of(Match match, Match.Pair pair) {
        Map<Long, List<Wire>> there = new HashMap<>();
        for (Wire wire : pair.other().wires()) {
            there.computeIfAbsent(
                            key(match.pinBack(wire.fromPin()), match.pinBack(wire.toPin())), key -> new ArrayList<>(1))
                    .add(wire);
        }
        Map<Wire, Wire> same = new LinkedHashMap<>();
        List<Wire> gone = new ArrayList<>();
        for (Wire wire : pair.base().wires()) {
            List<Wire> twins = there.getOrDefault(key(wire.fromPin(), wire.toPin()), List.of());
            if (twins.isEmpty()) {
                gone.add(wire);
            } else {
                same.put(wire, twins.remove(0));
            }
        }
        List<Wire> added = new ArrayList<>();
        pair.other().wires().stream().filter(wire -> !same.containsValue(wire)).forEach(added::add);
        return new Ways(same, gone, added, reversed(match, pair));
    }

    private static long key(int a, int b) {
        return a < 0 || b < 0 ? -1 : (long) Math.min(a, b) << 32 | Math.max(a, b);
    }

    private static boolean reversed(Match match, Match.Pair pair) {
        if (pair.base().wires().isEmpty() || pair.other().wires().isEmpty()) {
            return false;
        }
        Wire a = pair.base().wires().get(0);
        Wire b = pair.other().wires().get(0);
        long from = plug(match, a.fromPin());
        long to = plug(match, a.toPin());
        long fromThere = plug(match, match.pinBack(b.fromPin()));
        long toThere = plug(match, match.pinBack(b.toPin()));
        return (from == toThere || to == fromThere) && from != fromThere && to != toThere;
    }

    private static long plug(Match match, int pin) {
        return pin < 0
                ? -1
                : (long) match.base().unitOf(pin) << 32 | match.base().plugIndex(pin);
    }

    /** Conductors that are one and the same wherever they end now: for what they are made of. */
    Map<Wire, Wire> wires() {
        Map<Wire, Wire> all = new LinkedHashMap<>(same);
        for (int i = 0; i < Math.min(gone.size(), added.size()); i++) {
            all.put(gone.get(i), added.get(i));
        }
        return all;
    }
}
