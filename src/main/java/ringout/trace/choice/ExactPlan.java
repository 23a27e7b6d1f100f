package ringout.trace.choice;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import ringout.trace.diagnosis.Belief;
import ringout.trace.diagnosis.Observed;
import ringout.trace.diagnosis.Problem;

/**
 * Expected minutes of the best plan there is, by dynamic programme over every position that can be reached, and of the plans by rule beside
 * it. For small problems only: certain outcomes up to about 16 suspects (2^16 positions at most), uncertain ones up to about 8 questions.
 * Every plan stops by the same rules and pays the repairs it would do in vain.
 *
 * @see Lookahead
 */
public final class ExactPlan {
    private static final int MOST_SUSPECTS = 20;
    private static final int MOST_QUESTIONS = 10;

    private final Position start;
    private final boolean certain;
    private final Lookahead ahead;
    private final Map<Key, Double> known = new HashMap<>();

    /** Suspects left where outcomes are certain, else what was read. */
    private record Key(BitSet members, BitSet opened, long read) {}

    /** Prepares a problem; refuses one that is too large to solve. */
    public ExactPlan(Problem problem, Rules rules) {
        List<Integer> all =
                IntStream.range(0, problem.questions().size()).boxed().toList();
        Belief belief = Belief.of(problem, Observed.NOTHING);
        this.start = new Adviser.Outlook(belief, rules, all).narrow(Effort.FULL);
        this.certain = Lookahead.isCertain(start.board);
        this.ahead = new Lookahead(Effort.FULL, start.board);
        if (certain ? problem.size() > MOST_SUSPECTS : all.size() > MOST_QUESTIONS) {
            throw new IllegalArgumentException(
                    problem.size() + " suspects and " + all.size() + " questions are too many for an exact plan");
        }
    }

    /** Expected minutes of the best plan. */
    public double optimum() {
        return best(start, 0);
    }

    /** Expected minutes of the plan by rule at a level: 0 by information per minute, 1 by rollout, 2 by rollout of rollouts. */
    public double byLevel(int level) {
        return ahead.cost(level, start, 1);
    }

    private double best(Position here, long read) {
        BitSet members = new BitSet();
        for (int i = 0; certain && i < here.member.length; i++) {
            members.set(here.member[i]);
        }
        Key key = new Key(members, here.opened, certain ? 0 : read);
        Double before = known.get(key);
        if (before != null) {
            return before;
        }
        List<Option> options = here.options();
        double least = options.isEmpty() ? here.waste() : Double.POSITIVE_INFINITY;
        for (Option option : options) {
            least = Math.min(least, after(here, option, read, least));
        }
        known.put(key, least);
        return least;
    }

    private double after(Position here, Option option, long read, double least) {
        int q = option.question();
        int outcomes = here.board.rows[q].outcomes();
        double minutes = option.minutes();
        for (int o = 0; o < outcomes && minutes < least; o++) {
            double chance = here.chance(q, o);
            if (chance > 0) {
                minutes += chance * best(here.after(q, o), read + (o + 1) * place(here.board, q));
            }
        }
        return minutes;
    }

    /** The place value of a question in the number that stands for all that was read; zero digit: not read. */
    private static long place(Board board, int question) {
        long place = 1;
        for (int q = 0; q < question; q++) {
            place *= board.rows[q].outcomes() + 1;
        }
        return place;
    }
}
