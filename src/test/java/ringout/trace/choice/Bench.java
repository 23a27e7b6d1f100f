package ringout.trace.choice;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import ringout.trace.choice.Advice.Ask;
import ringout.trace.choice.Advice.GoIn;
import ringout.trace.choice.Advice.NothingFits;
import ringout.trace.choice.Advice.NothingSeparates;
import ringout.trace.choice.Advice.Repair;
import ringout.trace.diagnosis.Observed;
import ringout.trace.diagnosis.Opening;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Question;
import ringout.trace.diagnosis.Reading;
import ringout.trace.diagnosis.RepairShare;
import ringout.trace.diagnosis.Suspect;

/**
 * A supply tree with one hidden fault and a technician who follows the advice, misreading some of the time. Each point shows what the fault
 * makes it show, however often it is read; each reading is wrong by its own chance. A fault that is not in the model makes every point show
 * anything.
 */
final class Bench {
    static final double ERROR = 0.04;
    static final int SEGMENTS = 20;

    private static final int MOST_STEPS = 60;

    private final boolean[][] dead = new boolean[SEGMENTS][SEGMENTS];
    private final double[] weight;
    private final double[] minutes;

    Bench(Random random) {
        for (int s = 0; s < SEGMENTS; s++) {
            int parent = s == 0 ? -1 : Math.max(0, s - 1 - random.nextInt(4));
            for (int fault = 0; fault < SEGMENTS; fault++) {
                dead[fault][s] = fault == s || (parent >= 0 && dead[fault][parent]);
            }
        }
        weight = random.doubles(SEGMENTS).map(x -> Math.pow(10, -1.5 * x)).toArray();
        minutes = random.doubles(SEGMENTS).map(x -> 2 + Math.floor(8 * x)).toArray();
    }

    /** What came of following the advice. */
    record End(String action, double claimed, boolean right, double minutes, Observed seen) {
        boolean isClaim() {
            return !action.isEmpty();
        }
    }

    /** Two segments a repair, every fifth behind one lid; weights times the factors. */
    Problem problem(double[] factor) {
        List<Suspect> suspects = IntStream.range(0, SEGMENTS)
                .mapToObj(s -> new Suspect("open " + s, weight[s] * factor[s], "lead " + s / 2, 6, behind(s)))
                .toList();
        List<Question> questions = IntStream.range(0, SEGMENTS)
                .mapToObj(q ->
                        new Question("volts at " + q, minutes[q], 0, 0, behind(q), List.of("dead", "alive"), ERROR))
                .toList();
        return new Problem(suspects, questions, List.of(new Opening("lid", 10)), Problem.USUAL_UNKNOWN, this::rows);
    }

    private static List<String> behind(int segment) {
        return segment % 5 == 4 ? List.of("lid") : List.of();
    }

    private double[][] rows(int question) {
        double[][] rows = new double[SEGMENTS][];
        for (int s = 0; s < SEGMENTS; s++) {
            rows[s] = dead[s][question] ? new double[] {1 - ERROR, ERROR} : new double[] {ERROR, 1 - ERROR};
        }
        return rows;
    }

    /** A fault by its prior; the last number is the one not in the model. */
    int hide(Problem problem, Random random) {
        double x = random.nextDouble();
        int fault = -1;
        while (x >= 0 && fault < problem.size() - 1) {
            fault++;
            x -= problem.prior(fault);
        }
        return fault;
    }

    /** Follows the advice to its stop; a claim is the action done first. */
    End follow(Adviser adviser, int fault, Random random) {
        Problem problem = adviser.problem();
        Map<Integer, Boolean> shown = new HashMap<>();
        Observed seen = Observed.NOTHING;
        double spent = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            Advice advice = adviser.next(seen);
            if (advice instanceof Ask ask) {
                spent += ask.minutes();
                seen = read(problem, seen, ask.question(), fault, shown, random);
            } else if (advice instanceof GoIn in) {
                spent += in.minutes();
                seen = seen.open(in.openings());
            } else if (advice instanceof Repair repair && repair.repeatFirst().isPresent()) {
                int again = repair.repeatFirst().getAsInt();
                spent += problem.questions().get(again).minutes();
                seen = read(problem, seen, again, fault, shown, random);
            } else if (advice instanceof Repair repair) {
                return claim(repair.right(), fault, spent, seen);
            } else if (advice instanceof NothingSeparates several) {
                return claim(several.inTurn().get(0), fault, spent, seen);
            } else if (advice instanceof NothingFits) {
                return new End("", 0, fault == SEGMENTS, spent, seen);
            }
        }
        throw new IllegalStateException("the advice does not come to an end");
    }

    private Observed read(
            Problem problem, Observed seen, int q, int fault, Map<Integer, Boolean> shown, Random random) {
        boolean shows = shown.computeIfAbsent(q, k -> fault == SEGMENTS ? random.nextBoolean() : dead[fault][k]);
        boolean wrong = random.nextDouble() < ERROR;
        return seen.with(problem, new Reading(q, shows == wrong ? 1 : 0));
    }

    private static End claim(RepairShare first, int fault, double spent, Observed seen) {
        boolean right = fault < SEGMENTS && first.action().suspects().contains(fault);
        return new End(first.action().name(), first.share(), right, spent, seen);
    }
}
