package ringout.present.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.read.intake.Assumption;
import ringout.read.intake.Question;
import ringout.text.Span;

/** What a list leaves open, for a person: first what stops it, then what may stay open, then what was taken as usual. */
public final class QuestionsText {
    private QuestionsText() {}

    /** All of it, each line with its cell. */
    public static String of(List<Question> questions, List<Assumption> assumptions) {
        List<Question> blocking = questions.stream().filter(Question::blocking).toList();
        List<Question> open = questions.stream().filter(q -> !q.blocking()).toList();
        StringBuilder text = new StringBuilder();
        text.append(count(blocking.size(), "question")).append(" to answer before this is an aircraft\n");
        blocking.forEach(question -> question(text, question));
        text.append(count(open.size(), "question"))
                .append(" that may stay open (checks that need the answer cannot tell)\n");
        open.forEach(question -> question(text, question));
        text.append(count(assumptions.size(), "assumption"))
                .append(" taken as usual; mend the list where one is wrong\n");
        assumptions.forEach(taken -> text.append("  ")
                .append(taken.at().words())
                .append(": ")
                .append(taken.what())
                .append(taken.why().isEmpty() ? "" : " (" + taken.why() + ")")
                .append('\n'));
        return text.toString();
    }

    /** One line: how much is open and taken. */
    public static String summary(List<Question> questions, List<Assumption> assumptions) {
        Map<String, Integer> parts = new LinkedHashMap<>();
        parts.put("question", questions.size());
        parts.put("assumption", assumptions.size());
        List<String> words = new ArrayList<>();
        parts.forEach((word, number) -> words.add(count(number, word)));
        return String.join(", ", words);
    }

    private static void question(StringBuilder text, Question question) {
        Span at = question.at();
        text.append("  ").append(at.words()).append(": ").append(question.ask());
        text.append(question.answers().isEmpty() ? "" : " (" + question.answers() + ")")
                .append('\n');
    }

    private static String count(int number, String word) {
        return number + " " + word + (number == 1 ? "" : "s");
    }
}
