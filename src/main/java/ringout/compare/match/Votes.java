package ringout.compare.match;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import ringout.graph.Wiring;

/**
 * Matches units that a change of their own wiring keeps from being told apart by colour: each conductor that goes from the
 * same contact to the same contact of a matched unit is a vote; the most votes first.
 */
final class Votes {
    private static final double HALF = 0.5;

    private final UnitMatch match;
    private final UnitLinks base;
    private final UnitLinks other;

    /** Two units and the conductors they have in common. */
    private record Pair(int unit, int found, int votes, double share) {}

    Votes(UnitMatch match) {
        this.match = match;
        this.base = new UnitLinks(match.base());
        this.other = new UnitLinks(match.other());
    }

    /**
     * Pairs what is left.
     *
     * @param ties whether a pair is taken too that is no better than another one of the same unit
     */
    void run(boolean ties) {
        Map<Long, List<Integer>> byPlace = new HashMap<>();
        each(
                match.other(),
                other,
                unit -> match.back(unit) < 0,
                (unit, place) ->
                        byPlace.computeIfAbsent(place, key -> new ArrayList<>()).add(unit));
        Map<Long, Integer> votes = new HashMap<>();
        each(
                match.base(),
                base,
                unit -> match.to(unit) < 0,
                (unit, place) -> byPlace.getOrDefault(place, List.of())
                        .forEach(found -> votes.merge((long) unit << 32 | found, 1, Integer::sum)));
        List<Pair> pairs = new ArrayList<>();
        votes.forEach((key, count) -> pairs.add(pair((int) (key >> 32), key.intValue(), count)));
        pairs.sort(Comparator.comparingInt(Pair::votes)
                .reversed()
                .thenComparing(Comparator.comparingDouble(Pair::share).reversed())
                .thenComparingInt(Pair::unit)
                .thenComparingInt(Pair::found));
        pairs.removeIf(pair -> !likely(pair));
        Map<Integer, Integer> best = new HashMap<>();
        pairs.forEach(pair -> count(best, pair.unit(), pair.votes()));
        Map<Integer, Integer> bestThere = new HashMap<>();
        pairs.forEach(pair -> count(bestThere, pair.found(), pair.votes()));
        for (Pair pair : pairs) {
            boolean alone = best.getOrDefault(pair.unit(), 0) == pair.votes()
                    && bestThere.getOrDefault(pair.found(), 0) == pair.votes();
            if (match.to(pair.unit()) < 0 && match.back(pair.found()) < 0 && (ties || alone)) {
                match.pair(pair.unit(), pair.found());
            }
        }
    }

    /** The most votes a unit has, made negative when several pairs have them; pairs come with the most votes first. */
    private static void count(Map<Integer, Integer> best, int unit, int votes) {
        best.merge(unit, votes, (first, again) -> first.equals(again) ? Integer.valueOf(-first) : first);
    }

    private Pair pair(int unit, int found, int votes) {
        int most = Math.max(base.end(unit) - base.first(unit), other.end(found) - other.first(found));
        return new Pair(unit, found, votes, (double) votes / most);
    }

    /** A box of the same type with any connection in common, or of another type with most of them. */
    private boolean likely(Pair pair) {
        boolean sameType =
                UnitMatch.type(match.base(), pair.unit()).equals(UnitMatch.type(match.other(), pair.found()));
        return sameType || pair.share() > HALF;
    }

    private interface Voter {
        void at(int unit, long place);
    }

    /** Visits each conductor from an unmatched unit to a contact of a matched one: contact there, contact here by name. */
    private void each(Wiring wiring, UnitLinks links, IntPredicate open, Voter voter) {
        for (int unit = 0; unit < wiring.directory().count(); unit++) {
            for (int link = links.first(unit); open.test(unit) && link < links.end(unit); link++) {
                int far = links.farPin(link);
                int known = wiring.unitOf(far);
                int inBase = wiring == match.base() ? (match.to(known) < 0 ? -1 : known) : match.back(known);
                if (inBase >= 0) {
                    String own = name(wiring, links.ownPin(link));
                    voter.at(unit, (long) inBase << 32 ^ (name(wiring, far) + "\n" + own).hashCode());
                }
            }
        }
    }

    private static String name(Wiring wiring, int pin) {
        return wiring.plug(pin).name() + "\n" + wiring.pin(pin).number();
    }
}
