package ringout.trace.field;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.trace.candidate.Candidate;
import ringout.trace.diagnosis.PairTable;
import ringout.trace.predict.FieldTest;
import ringout.trace.predict.Joined;
import ringout.trace.predict.Predictions;
import ringout.trace.predict.TestCard;

/**
 * What two faults of an aircraft show when both are present: the edits of both laid over the graph together, so that one may mask the
 * other. Where both lie inside units, which is no edit of the graph, the one shows that does not leave the test as on the sound aircraft.
 */
public final class FieldPairs implements PairTable {
    /** Two faults of one lead, or at one unit, share their cause this much more often than chance has it. Judgement, no source. */
    private static final double ONE_CAUSE = 10;

    private static final double SAME = 1e-9;

    private final FieldProblem field;
    private final Predictions predictions;
    private final Map<Long, Candidate> joined = new HashMap<>();

    private FieldPairs(FieldProblem field) {
        this.field = field;
        this.predictions = Predictions.of(field.circuit());
    }

    /** The pairs of the candidates of a problem. */
    public static FieldPairs of(FieldProblem field) {
        return new FieldPairs(field);
    }

    @Override
    public double[] row(int question, int one, int other) {
        TestCard card = field.cards().get(question);
        double[] first = row(card, field.candidates().get(one));
        double[] second = row(card, field.candidates().get(other));
        FieldTest test = card.test();
        boolean found = test instanceof FieldTest.Look || test instanceof FieldTest.ReadSettings;
        boolean cured = test instanceof FieldTest.SwapLead
                || test instanceof FieldTest.SwapUnit
                || test instanceof FieldTest.BenchUnit;
        double[] sound = row(card, Joined.SOUND);
        if (cured) {
            // one of two is put right, the other stays: as before
            return sound;
        }
        if (found
                || !Joined.isOneEdit(
                        field.candidates().get(one), field.candidates().get(other))) {
            return either(first, second, sound);
        }
        long key = (long) one * field.candidates().size() + other;
        Candidate both = joined.computeIfAbsent(
                key,
                k -> Joined.of(field.candidates().get(one), field.candidates().get(other)));
        return row(card, both);
    }

    private static double[] either(double[] first, double[] second, double[] sound) {
        if (same(first, sound)) {
            return second;
        }
        if (same(second, sound)) {
            return first;
        }
        double[] mean = new double[first.length];
        Arrays.setAll(mean, o -> (first[o] + second[o]) / 2);
        return mean;
    }

    private static boolean same(double[] one, double[] other) {
        for (int o = 0; o < one.length; o++) {
            if (Math.abs(one[o] - other[o]) > SAME) {
                return false;
            }
        }
        return true;
    }

    private double[] row(TestCard card, Candidate candidate) {
        Map<String, Double> chances = predictions.of(candidate, card.test()).outcomes();
        return card.outcomes().stream()
                .mapToDouble(outcome -> chances.getOrDefault(outcome, 0.0))
                .toArray();
    }

    @Override
    public double together(int one, int other) {
        List<String> rows = new ArrayList<>(field.candidates().get(one).rows());
        boolean apart = Collections.disjoint(rows, field.candidates().get(other).rows());
        return apart ? 1 : ONE_CAUSE;
    }
}
