package ringout.read.intake;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import ringout.text.Span;

/** The answers of the owner of a list, by the cell or by what they are about. */
public final class Answers {
    /** No answers. */
    public static final Answers NONE = new Answers(Map.of(), Map.of());

    private final Map<String, String> cells;
    private final Map<String, String> subjects;

    private Answers(Map<String, String> cells, Map<String, String> subjects) {
        this.cells = cells;
        this.subjects = subjects;
    }

    /** These and one more for a cell: what it should say. */
    public Answers withCell(String sheet, String address, String answer) {
        Map<String, String> more = new HashMap<>(cells);
        more.put(key(sheet, address), answer);
        return new Answers(more, subjects);
    }

    /** These and one more about a plug or a unit. */
    public Answers withSubject(String about, String answer) {
        Map<String, String> more = new HashMap<>(subjects);
        more.put(about.strip().toLowerCase(Locale.ROOT), answer);
        return new Answers(cells, more);
    }

    /** What a cell should say. */
    public Optional<String> cell(String sheet, int row, int column) {
        return cells.isEmpty()
                ? Optional.empty()
                : Optional.ofNullable(cells.get(key(sheet, Span.letters(column) + row)));
    }

    /** What is said about a plug or a unit. */
    public Optional<String> subject(String about) {
        return Optional.ofNullable(subjects.get(about.strip().toLowerCase(Locale.ROOT)));
    }

    /** How many answers there are. */
    public int count() {
        return cells.size() + subjects.size();
    }

    private static String key(String sheet, String address) {
        return sheet.strip().toLowerCase(Locale.ROOT) + "\n" + address.strip().toUpperCase(Locale.ROOT);
    }
}
