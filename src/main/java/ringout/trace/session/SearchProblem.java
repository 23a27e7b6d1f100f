package ringout.trace.session;

import java.util.ArrayList;
import java.util.List;
import ringout.graph.Circuit;
import ringout.graph.order.Covers;
import ringout.trace.candidate.Candidate;
import ringout.trace.diagnosis.Opening;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Question;
import ringout.trace.diagnosis.Suspect;
import ringout.trace.predict.TestCard;

/** Puts candidates, tests and what they show into the table that a search is weighed by. */
final class SearchProblem {
    /** Minutes for a lid whose minutes the list does not tell. Judgement, no source. */
    private static final double USUAL_LID = 10;

    private SearchProblem() {}

    static Problem of(CaseFile file, List<TestCard> cards) {
        Chances chances = Chances.of(file.circuit());
        List<Suspect> suspects = new ArrayList<>();
        for (int s = 0; s < file.suspects().size(); s++) {
            Candidate one = file.suspects().get(s);
            suspects.add(new Suspect(
                    one.title(),
                    file.weights().get(s),
                    repairOf(one),
                    one.repair().minutes(),
                    one.opening().covers()));
        }
        return new Problem(
                suspects,
                cards.stream().map(SearchProblem::question).toList(),
                openings(file.circuit()),
                file.priors().outside(),
                q -> rows(file, cards.get(q), chances));
    }

    /** Name of the repair action that cures a candidate: what is worked on, and what must come off for it. */
    static String repairOf(Candidate candidate) {
        List<String> lids = candidate.opening().covers();
        return candidate.repair().id() + (lids.isEmpty() ? "" : " behind " + String.join(", ", lids));
    }

    private static double[][] rows(CaseFile file, TestCard card, Chances chances) {
        int n = file.suspects().size();
        boolean outside = file.priors().outside() > 0;
        double[][] rows = new double[n + (outside ? 1 : 0)][];
        for (int s = 0; s < n; s++) {
            rows[s] = chances.row(card, file.suspects().get(s));
        }
        if (outside) {
            rows[n] = chances.unknown(card);
        }
        return rows;
    }

    private static Question question(TestCard card) {
        boolean disturbs = !card.disturbs().isEmpty();
        return new Question(
                card.title(),
                card.minutes(),
                disturbs ? 1 : 0,
                0,
                card.opening().covers(),
                card.outcomes(),
                Question.USUAL_ERROR);
    }

    private static List<Opening> openings(Circuit circuit) {
        Covers covers = Covers.of(circuit);
        List<Opening> openings = new ArrayList<>();
        for (int cover = 0; cover < covers.all().size(); cover++) {
            openings.add(new Opening(
                    covers.name(cover), covers.all().get(cover).minutes().or(USUAL_LID)));
        }
        return openings;
    }
}
