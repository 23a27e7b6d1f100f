package ringout.read.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.text.Problem;
import ringout.text.Span;

/** Collects what reading a list asks and takes as usual; nothing is taken without being listed here. */
public final class Intake {
    private final Answers answers;
    private final List<Question> questions = new ArrayList<>();
    private final List<Assumption> assumptions = new ArrayList<>();
    private final Map<String, Span> columns = new HashMap<>();

    /** A collector that knows the answers given so far. */
    public Intake(Answers answers) {
        this.answers = answers;
    }

    /** Answers given so far. */
    public Answers answers() {
        return answers;
    }

    /** Asks. */
    public void ask(Question question) {
        questions.add(question);
    }

    /** Asks what a cell should say that cannot be read as it is. */
    public void block(Problem problem) {
        questions.add(new Question(problem.at(), "", problem.message(), problem.hint(), true));
    }

    /** Says which column of a file holds a field, so that a question can name the cell. */
    public void column(String file, String field, int number, String head) {
        columns.putIfAbsent(file + "\n" + field, new Span(file, 0, number, head));
    }

    /** The cell of a field in a row; the row where no column holds it. */
    public Span cell(Span row, String field) {
        Span column = columns.get(row.file() + "\n" + field);
        return column == null ? row : row.cell(column.column(), column.cell());
    }

    /** Lists what was taken as usual. */
    public void assume(Span at, String what, String why) {
        assumptions.add(new Assumption(at, what, why));
    }

    /** All questions in the order of the list. */
    public List<Question> questions() {
        return questions.stream()
                .sorted(Comparator.comparing(Question::at).thenComparing(Question::about))
                .distinct()
                .toList();
    }

    /** All assumptions in the order of the list. */
    public List<Assumption> assumptions() {
        return assumptions.stream()
                .sorted(Comparator.comparing(Assumption::at).thenComparing(Assumption::what))
                .distinct()
                .toList();
    }
}
