package ringout.trace.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.graph.order.Covers;
import ringout.model.Cover;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Candidates;
import ringout.trace.diagnosis.Opening;
import ringout.trace.diagnosis.OutcomeTable;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Question;
import ringout.trace.diagnosis.Suspect;
import ringout.trace.predict.Predictions;
import ringout.trace.predict.TestCard;
import ringout.trace.predict.TestDeck;

/**
 * The single faults of a circuit and the tests that can be made on it, as suspects and questions. Chances come from the
 * predictions, one question at a time, when it first matters.
 *
 * @param problem what is given to the adviser
 * @param candidates the suspects, by number
 * @param cards the questions, by number
 */
public record FieldProblem(Problem problem, List<Candidate> candidates, List<TestCard> cards) {
    /** To prove one disturbed lead, plug or unit again. Judgement, no source. */
    private static final double REPROOF_MINUTES = 0.5;

    /** Keeps its own copies. */
    public FieldProblem {
        candidates = List.copyOf(candidates);
        cards = List.copyOf(cards);
    }

    /** The problem of all candidates and all tests of a circuit. */
    public static FieldProblem of(Circuit circuit) {
        return of(circuit, Candidates.of(circuit));
    }

    /** The problem of candidates with weights as given and all tests of a circuit. */
    public static FieldProblem of(Circuit circuit, Candidates candidates) {
        List<Candidate> suspects = candidates.all();
        List<TestCard> cards = TestDeck.of(circuit);
        Problem problem = new Problem(
                suspects.stream().map(FieldProblem::suspect).toList(),
                cards.stream().map(FieldProblem::question).toList(),
                openings(circuit),
                candidates.priors().outside(),
                table(circuit, suspects, cards));
        return new FieldProblem(problem, suspects, cards);
    }

    private static Suspect suspect(Candidate candidate) {
        return new Suspect(
                candidate.title(),
                candidate.weight(),
                candidate.repair().action(),
                candidate.repair().minutes(),
                candidate.opening().covers());
    }

    private static Question question(TestCard card) {
        return new Question(
                card.title(),
                card.minutes(),
                REPROOF_MINUTES * card.disturbs().size(),
                0,
                card.opening().covers(),
                card.outcomes(),
                Question.USUAL_ERROR);
    }

    /** Every lid with its own minutes; one whose minutes are not told counts as none, which the card says. */
    private static List<Opening> openings(Circuit circuit) {
        List<Opening> openings = new ArrayList<>();
        for (Cover cover : Covers.of(circuit).all()) {
            openings.add(new Opening(cover.name(), cover.minutes().or(0.0)));
        }
        return openings;
    }

    private static OutcomeTable table(Circuit circuit, List<Candidate> suspects, List<TestCard> cards) {
        Predictions predictions = Predictions.of(circuit);
        return question -> {
            TestCard card = cards.get(question);
            double[][] rows = new double[suspects.size()][];
            for (int s = 0; s < rows.length; s++) {
                Map<String, Double> chances =
                        predictions.of(suspects.get(s), card.test()).outcomes();
                rows[s] = card.outcomes().stream()
                        .mapToDouble(outcome -> chances.getOrDefault(outcome, 0.0))
                        .toArray();
            }
            return rows;
        };
    }

    /** The number of a question by the identity of its card; -1 when there is none. */
    public int question(String id) {
        for (int q = 0; q < cards.size(); q++) {
            if (cards.get(q).id().equals(id)) {
                return q;
            }
        }
        return -1;
    }
}
