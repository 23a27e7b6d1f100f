package ringout.trace.choice;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import ringout.trace.choice.Advice.Ask;
import ringout.trace.choice.Advice.Branch;
import ringout.trace.choice.Advice.NothingFits;
import ringout.trace.choice.Advice.NothingSeparates;
import ringout.trace.diagnosis.Belief;
import ringout.trace.diagnosis.Explanation;
import ringout.trace.diagnosis.Observed;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Reading;
import ringout.trace.diagnosis.RepairShare;

/**
 * Advises the next step of a search. Fixed once made; each advice depends on its arguments alone.
 *
 * @param problem suspects, tests and chances
 * @param rules when to stop
 * @param effort how far to look ahead
 */
public record Adviser(Problem problem, Rules rules, Effort effort) {
    private static final int NEAREST = 5;

    /** A suspect with no more share than this moves no advice, and a search has hundreds of them. */
    private static final double NEGLIGIBLE = 1e-6;

    /** By the usual rules with the effort for an aircraft. */
    public static Adviser of(Problem problem) {
        return new Adviser(problem, Rules.USUAL, Effort.FIELD);
    }

    /** Tests not made yet that tell something, most bits a minute first; time grows with suspects times tests times outcomes. */
    public List<Option> ranking(Observed observed) {
        Belief belief = Belief.of(problem, observed);
        return new Outlook(belief, rules, questions(observed, false)).useful();
    }

    /** What to do next. */
    public Advice next(Observed observed) {
        Belief belief = Belief.of(problem, observed);
        if (belief.isContradicted() || belief.unknown() > rules.likelyShare()) {
            return misfit(belief);
        }
        Outlook fresh = new Outlook(belief, rules, questions(observed, false));
        List<RepairShare> shares = belief.repairs();
        Stops stops = new Stops(rules, belief, shares, fresh.useful());
        Optional<Advice> end = stops.repair();
        if (end.isPresent()) {
            return end.get();
        }
        if (fresh.useful().isEmpty()) {
            Optional<Advice> again = repeat(belief);
            return again.or(stops::goIn).orElseGet(() -> inTurn(shares));
        }
        return stops.goIn().orElseGet(() -> ask(belief, fresh));
    }

    private Advice ask(Belief belief, Outlook outlook) {
        Effort effort = this.effort.in(outlook.suspects(), outlook.useful().size());
        Position start = outlook.narrow(effort);
        List<Option> options = start.options();
        if (options.isEmpty()) {
            return asked(belief, outlook.useful().get(0), Optional.empty(), false);
        }
        Lookahead ahead = new Lookahead(effort, start.board);
        int level = effort.level();
        Lookahead.Reckoned pick = ahead.choose(level, start, options, 1);
        double minutes = ahead.after(Math.max(0, level - 1), start, pick.option(), 1);
        int question = start.board.number[pick.option().question()];
        Option option = outlook.useful().stream()
                .filter(one -> one.question() == question)
                .findFirst()
                .orElse(pick.option().numbered(question));
        return asked(belief, option, Optional.of(minutes), false);
    }

    private Advice asked(Belief belief, Option option, Optional<Double> toTheEnd, boolean again) {
        int q = option.question();
        List<Branch> branches = new ArrayList<>();
        var rows = belief.rowsOf(q);
        for (int o = 0; o < rows.outcomes(); o++) {
            double chance = 0;
            for (int s = 0; s < problem.size(); s++) {
                chance += belief.share(s) * rows.chance(s, o);
            }
            if (chance > 0) {
                Observed then = belief.observed().with(problem, new Reading(q, o));
                branches.add(
                        new Branch(o, chance, Belief.of(problem, then).repairs().get(0)));
            }
        }
        return new Ask(q, option.bits(), option.minutes(), toTheEnd, again, branches);
    }

    /** The most telling second reading of a point read once. */
    private Optional<Advice> repeat(Belief belief) {
        List<Option> again = new Outlook(belief, rules, questions(belief.observed(), true)).useful();
        return again.stream().findFirst().map(option -> asked(belief, option, Optional.empty(), true));
    }

    /** When nothing fits, a misreading is likelier than a wrong list: read again what the nearest suspect leaves unexplained. */
    private Advice misfit(Belief belief) {
        List<Reading> readings = belief.observed().readings();
        List<Explanation> nearest = IntStream.range(0, problem.suspects().size())
                .filter(s -> problem.prior(s) > 0)
                .mapToObj(s -> Explanation.of(problem, readings, s))
                .sorted(Comparator.comparingInt(
                                (Explanation one) -> one.unexplained().size())
                        .thenComparingDouble(one -> -belief.share(one.suspect()))
                        .thenComparingDouble(one -> -problem.prior(one.suspect())))
                .limit(NEAREST)
                .toList();
        if (!belief.isContradicted() && !nearest.isEmpty()) {
            List<Integer> doubted = nearest.get(0).unexplained().stream()
                    .map(one -> one.reading().question())
                    .filter(q -> belief.observed().outcomesOf(q).size() == 1)
                    .toList();
            List<Option> again = new Outlook(belief, rules, doubted).confirming();
            if (!again.isEmpty()) {
                return asked(belief, again.get(0), Optional.empty(), true);
            }
        }
        return new NothingFits(belief.isContradicted() ? 1 : belief.unknown(), nearest);
    }

    private static Advice inTurn(List<RepairShare> shares) {
        return new NothingSeparates(shares.stream()
                .filter(one -> one.share() > 0)
                .sorted(Comparator.comparingDouble(one -> one.action().minutes() / one.share()))
                .toList());
    }

    /** Questions never read, or those read exactly once. */
    private List<Integer> questions(Observed observed, boolean once) {
        return IntStream.range(0, problem.questions().size())
                .filter(q -> observed.outcomesOf(q).size() == (once ? 1 : 0))
                .boxed()
                .toList();
    }

    /** The tests to choose from, seen from a belief. */
    static final class Outlook {
        private final Belief belief;
        private final Position start;
        private final List<Option> useful;

        Outlook(Belief belief, Rules rules, List<Integer> questions) {
            this.belief = belief;
            List<Integer> seen = belief.ranked().stream()
                    .filter(s -> belief.share(s) > NEGLIGIBLE)
                    .toList();
            int[] members = seen.stream().mapToInt(Integer::intValue).toArray();
            this.start = position(belief, Board.of(belief, rules, questions, members), seen);
            List<Option> telling = start.useful();
            this.useful = asInProblem(telling.isEmpty() ? start.helping() : telling);
        }

        /** Tests that tell of something not in the model too, by rate, numbered as in the problem. */
        List<Option> confirming() {
            return asInProblem(start.confirming());
        }

        private List<Option> asInProblem(List<Option> options) {
            return options.stream()
                    .map(option -> option.numbered(start.board.number[option.question()]))
                    .toList();
        }

        /** Useful tests by rate, numbered as in the problem. */
        List<Option> useful() {
            return useful;
        }

        /** Number of suspects left. */
        int suspects() {
            return start.member.length;
        }

        /** The likeliest suspects and the best tests only. */
        Position narrow(Effort effort) {
            List<Integer> kept = new ArrayList<>();
            double sum = 0;
            for (int s : belief.ranked()) {
                if (kept.size() < effort.most() && (sum < effort.mass() || effort.mass() == 1)) {
                    kept.add(s);
                    sum += belief.share(s);
                }
            }
            List<Integer> questions = effort.known() >= start.board.number.length
                    ? IntStream.of(start.board.number).boxed().toList()
                    : useful.stream()
                            .limit(effort.known())
                            .map(Option::question)
                            .toList();
            int[] members = kept.stream().mapToInt(Integer::intValue).toArray();
            return position(belief, start.board.narrow(questions, members, effort.gone()), kept);
        }

        private static Position position(Belief belief, Board board, List<Integer> suspects) {
            int[] member = suspects.stream()
                    .filter(s -> belief.share(s) > 0)
                    .sorted()
                    .mapToInt(Integer::intValue)
                    .toArray();
            double[] mass = new double[member.length];
            double sum = 0;
            for (int i = 0; i < member.length; i++) {
                mass[i] = belief.share(member[i]);
                sum += mass[i];
            }
            for (int i = 0; i < member.length; i++) {
                mass[i] /= sum;
            }
            BitSet opened = board.opened(belief.observed().opened());
            return new Position(board, member, mass, new BitSet(), opened);
        }
    }
}
