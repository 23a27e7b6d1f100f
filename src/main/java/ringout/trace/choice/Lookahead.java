package ringout.trace.choice;

import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Expected minutes from a position on, and the test that makes them few: a rollout. Level 0 takes the most information per minute; level n
 * tries the best tests and reckons each by going on with level n - 1, so it is never worse than that one (Bertsekas, Tsitsiklis and Wu
 * 1997, rollout algorithms for combinatorial optimization, from memory). Estimating what follows by its entropy instead is a known trap: it is
 * worse than level 0 alone.
 */
final class Lookahead {
    private static final double EQUAL = 1e-9;

    private final Effort effort;
    private final boolean exactSets;
    private final Map<Key, Double> known = new HashMap<>();

    /** What a cost depends on when outcomes are certain. */
    private record Key(int level, BitSet members, BitSet opened) {}

    /** A test with the minutes expected from it to the end. */
    record Reckoned(Option option, double minutes) {}

    Lookahead(Effort effort, Board board) {
        this.effort = effort;
        this.exactSets = effort.floor() == 0 && isCertain(board);
    }

    /** Whether every suspect fixes every outcome. */
    static boolean isCertain(Board board) {
        for (int q = 0; q < board.rows.length; q++) {
            for (int s = 0; s < board.rows[q].suspects(); s++) {
                for (int o = 0; o < board.rows[q].outcomes(); o++) {
                    double p = board.rows[q].likelihood(s, o);
                    if (board.rows[q].isFree(s) || (p > 0 && p < 1)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /** Expected minutes from here by the policy of a level, with what repairs in vain cost at the end. */
    double cost(int level, Position here, double reach) {
        if (!exactSets) {
            return reckon(level, here, reach);
        }
        BitSet members = new BitSet();
        for (int s : here.member) {
            members.set(s);
        }
        Key key = new Key(level, members, here.opened);
        Double before = known.get(key);
        if (before != null) {
            return before;
        }
        double cost = reckon(level, here, reach);
        known.put(key, cost);
        return cost;
    }

    private double reckon(int level, Position here, double reach) {
        List<Option> options = here.options();
        if (options.isEmpty()) {
            return here.waste();
        }
        if (reach < effort.floor()) {
            return here.waste() + here.bitsLeft() / options.get(0).rate();
        }
        Option pick = choose(level, here, options, reach).option();
        return after(level, here, pick, reach);
    }

    /** The test to make, among options sorted by rate; one that costs nothing is always made. */
    Reckoned choose(int level, Position here, List<Option> options, double reach) {
        if (options.get(0).minutes() <= EQUAL) {
            return new Reckoned(options.get(0), Double.NaN);
        }
        double slack = here.board.rules.nearTie();
        if (level == 0) {
            Option best = options.get(0);
            Option pick = options.stream()
                    .filter(option -> option.rate() >= best.rate() * (1 - slack))
                    .min(Comparator.comparingDouble(Option::disturbance))
                    .orElse(best);
            return new Reckoned(pick, Double.NaN);
        }
        List<Reckoned> tried = options.stream()
                .limit(effort.tests())
                .map(option -> new Reckoned(option, after(level - 1, here, option, reach)))
                .toList();
        Reckoned best = tried.get(0);
        for (Reckoned one : tried) {
            best = one.minutes() < best.minutes() - EQUAL ? one : best;
        }
        double limit = best.minutes() + slack * best.option().minutes();
        Reckoned least = best;
        for (Reckoned one : tried) {
            boolean calmer = one.option().disturbance() < least.option().disturbance() - EQUAL;
            least = calmer && one.minutes() <= limit ? one : least;
        }
        return least;
    }

    /** Expected minutes when a test is made here and the policy of a level followed after it. */
    double after(int level, Position here, Option option, double reach) {
        double minutes = option.minutes();
        int q = option.question();
        for (int o = 0; o < here.board.rows[q].outcomes(); o++) {
            double chance = here.chance(q, o);
            if (chance > 0) {
                minutes += chance * cost(level, here.after(q, o), reach * chance);
            }
        }
        return minutes;
    }
}
