package ringout.trace.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.trace.diagnosis.Belief;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Question;
import ringout.trace.diagnosis.RepairAction;
import ringout.trace.diagnosis.Rows;

/** The part of a problem that looking ahead needs: some of its questions and suspects, numbered densely, and the rules. */
final class Board {
    final Rules rules;
    final double gone;
    final Question[] question;
    final int[] number;
    final Rows[] rows;
    final int[] group;
    final int groups;
    final RepairAction[] action;

    private final Problem problem;
    private final Map<String, Integer> openingNumber = new LinkedHashMap<>();
    private final BitSet[] needs;
    private final double[] openMinutes;

    private Board(Problem problem, Rules rules, List<Integer> questions, Rows[] rows, int[] members, double gone) {
        this.problem = problem;
        this.rules = rules;
        this.gone = gone;
        this.number = questions.stream().mapToInt(Integer::intValue).toArray();
        this.question = questions.stream().map(q -> problem.questions().get(q)).toArray(Question[]::new);
        this.rows = rows;
        this.group = new int[problem.size()];
        List<RepairAction> actions = new ArrayList<>();
        this.groups = number(members, actions);
        this.action = actions.toArray(RepairAction[]::new);
        this.needs = Arrays.stream(question).map(q -> mask(q.openings())).toArray(BitSet[]::new);
        this.openMinutes = openingNumber.keySet().stream()
                .mapToDouble(name -> problem.minutesToOpen(List.of(name), Set.of()))
                .toArray();
    }

    /** All questions that a choice is to be made from, and the suspects looked at. */
    static Board of(Belief belief, Rules rules, List<Integer> questions, int[] members) {
        Rows[] rows = questions.stream().map(belief::rowsOf).toArray(Rows[]::new);
        return new Board(belief.problem(), rules, questions, rows, members, 0);
    }

    /** Fewer questions (by number in the problem) and fewer suspects, dropping those whose share falls below one. */
    Board narrow(List<Integer> fewer, int[] members, double below) {
        Map<Integer, Rows> kept = new LinkedHashMap<>();
        for (int q = 0; q < number.length; q++) {
            kept.put(number[q], rows[q]);
        }
        return new Board(problem, rules, fewer, fewer.stream().map(kept::get).toArray(Rows[]::new), members, below);
    }

    /** Numbers the repair actions of the members from 0; suspects without one share the last group, which has no action. */
    private int number(int[] members, List<RepairAction> actions) {
        Map<Integer, Integer> dense = new LinkedHashMap<>();
        boolean without = false;
        for (int s : members) {
            int repair = problem.repairOf(s);
            without |= repair == Problem.NO_REPAIR;
            if (repair != Problem.NO_REPAIR && dense.putIfAbsent(repair, dense.size()) == null) {
                actions.add(problem.repairs().get(repair));
            }
        }
        for (int s : members) {
            int repair = problem.repairOf(s);
            group[s] = repair == Problem.NO_REPAIR ? dense.size() : dense.getOrDefault(repair, 0);
        }
        return dense.size() + (without ? 1 : 0);
    }

    private BitSet mask(List<String> openings) {
        BitSet mask = new BitSet();
        for (String name : openings) {
            Integer known = openingNumber.get(name);
            int at = known == null ? openingNumber.size() : known;
            openingNumber.put(name, at);
            mask.set(at);
        }
        return mask;
    }

    /** The openings of the board among some names. */
    BitSet opened(Set<String> names) {
        BitSet mask = new BitSet();
        openingNumber.forEach((name, at) -> mask.set(at, names.contains(name)));
        return mask;
    }

    /** What stands open after a question. */
    BitSet openedBy(int q, BitSet opened) {
        if (needs[q].isEmpty()) {
            return opened;
        }
        BitSet more = (BitSet) opened.clone();
        more.or(needs[q]);
        return more;
    }

    /** Minutes of a question, with what has yet to be opened. */
    double minutes(int q, BitSet opened) {
        return question[q].minutes() + unpaid(needs[q], opened);
    }

    private double unpaid(BitSet needed, BitSet opened) {
        double sum = 0;
        for (int at = needed.nextSetBit(0); at >= 0; at = needed.nextSetBit(at + 1)) {
            sum += opened.get(at) ? 0 : openMinutes[at];
        }
        return sum;
    }
}
