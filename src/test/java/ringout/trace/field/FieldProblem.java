package ringout.trace.field;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.graph.order.Covers;
import ringout.model.Cover;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Candidates;
import ringout.trace.candidate.FaultKind;
import ringout.trace.candidate.Repair;
import ringout.trace.diagnosis.Opening;
import ringout.trace.diagnosis.OutcomeTable;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Question;
import ringout.trace.diagnosis.Suspect;
import ringout.trace.predict.FieldTest;
import ringout.trace.predict.Predictions;
import ringout.trace.predict.TestCard;
import ringout.trace.predict.TestDeck;

/**
 * The single faults of a circuit and the tests that can be made on it, as suspects and questions. Chances come from the
 * predictions, one question at a time, when it first matters.
 *
 * @param circuit the aircraft in one state
 * @param problem what is given to the adviser
 * @param candidates the suspects, by number
 * @param cards the questions, by number
 */
public record FieldProblem(Circuit circuit, Problem problem, List<Candidate> candidates, List<TestCard> cards) {
    /** To prove one disturbed lead, plug or unit again. Judgement, no source. */
    private static final double REPROOF_MINUTES = 0.5;

    /** With something not in the model a module shows anything at all this often, else what it shows with faults in general. Judgement. */
    private static final double ANYTHING_OF_A_MODULE = 0.02;

    /** The same for a test: it is made near the fault, so more often. Judgement, no source. */
    private static final double ANYTHING_OF_A_TEST = 0.2;

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
        Map<String, Repair> actions = actions(suspects);
        Problem problem = new Problem(
                suspects.stream().map(one -> suspect(one, actions)).toList(),
                cards.stream().map(FieldProblem::question).toList(),
                openings(circuit),
                candidates.priors().outside(),
                table(circuit, candidates, cards));
        return new FieldProblem(circuit, problem, suspects, cards);
    }

    /**
     * One action for all that is cured by work on the same thing: the most thorough that any of them asks for. Who cleans the contacts of a plug
     * seats it too; putting it into the right socket is another order.
     */
    private static Map<String, Repair> actions(List<Candidate> suspects) {
        Map<String, Repair> actions = new HashMap<>();
        for (Candidate one : suspects) {
            actions.merge(work(one), one.repair(), (a, b) -> b.minutes() > a.minutes() ? b : a);
        }
        return actions;
    }

    private static String work(Candidate one) {
        boolean contacts = one.kind() == FaultKind.NOT_SEATED
                || one.kind() == FaultKind.POOR_CONTACT
                || one.kind() == FaultKind.RETURN_THIN;
        return contacts ? one.repair().id() : one.repair().action();
    }

    private static Suspect suspect(Candidate candidate, Map<String, Repair> actions) {
        Repair repair = actions.getOrDefault(work(candidate), candidate.repair());
        return new Suspect(
                candidate.title(),
                candidate.weight(),
                repair.action(),
                repair.minutes(),
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

    private static OutcomeTable table(Circuit circuit, Candidates candidates, List<TestCard> cards) {
        Predictions predictions = Predictions.of(circuit);
        List<Candidate> suspects = candidates.all();
        boolean outside = candidates.priors().outside() > 0;
        return question -> {
            TestCard card = cards.get(question);
            double[][] rows = new double[suspects.size() + (outside ? 1 : 0)][];
            for (int s = 0; s < suspects.size(); s++) {
                Map<String, Double> chances =
                        predictions.of(suspects.get(s), card.test()).outcomes();
                rows[s] = card.outcomes().stream()
                        .mapToDouble(outcome -> chances.getOrDefault(outcome, 0.0))
                        .toArray();
            }
            if (outside) {
                rows[suspects.size()] = unknown(card, rows, suspects);
            }
            return rows;
        };
    }

    /**
     * What something not in the model shows: what faults show at this test in general, by their weights, since most of the aircraft is sound with
     * it too, and for a part anything.
     */
    private static double[] unknown(TestCard card, double[][] rows, List<Candidate> suspects) {
        boolean module = card.test() instanceof FieldTest.Answers || card.test() instanceof FieldTest.Light;
        double anything = module ? ANYTHING_OF_A_MODULE : ANYTHING_OF_A_TEST;
        double[] mean = new double[card.outcomes().size()];
        double all = suspects.stream().mapToDouble(Candidate::weight).sum();
        for (int o = 0; o < mean.length; o++) {
            for (int s = 0; s < suspects.size(); s++) {
                mean[o] += suspects.get(s).weight() / all * rows[s][o];
            }
            mean[o] = (1 - anything) * mean[o] + anything / mean.length;
        }
        return mean;
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
