package ringout.read;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import ringout.read.cells.RowCells;
import ringout.read.cells.SheetCells;
import ringout.read.cells.Workbooks;
import ringout.read.intake.Answers;
import ringout.read.source.Folder;
import ringout.read.source.Loaded;
import ringout.read.table.Sheets;
import ringout.text.Problem;
import ringout.text.Problems;
import ringout.text.Span;

/** Reads the list of questions that comes back with answers in it, as CSV or as a workbook. Rows without one are left. */
public final class AnswersReader {
    private static final Set<String> HEADS =
            Set.of("file", "sheet", "row", "cell", "about", "question", "may be", "answer");

    private AnswersReader() {}

    /**
     * What was read.
     *
     * @param answers the answers
     * @param problems what is wrong with the file
     */
    public record Result(Answers answers, List<Problem> problems) {}

    /** Reads a file of answers. */
    public static Result read(Folder folder, String file) {
        Problems problems = new Problems();
        Span at = new Span(file, 0, 0, "");
        Loaded loaded = folder.load(file);
        if (!(loaded instanceof Loaded.Bytes bytes)) {
            problems.add(at, ((Loaded.Absent) loaded).why(), "");
            return new Result(Answers.NONE, problems.sorted());
        }
        List<SheetCells> sheets = Workbooks.isWorkbook(file)
                ? Workbooks.read(file, bytes.content(), problems)
                : List.of(Sheets.ofText(file, bytes.content(), cell -> HEADS.contains(fold(cell)), problems));
        Answers answers = Answers.NONE;
        for (SheetCells sheet : sheets) {
            answers = sheet(sheet, answers);
        }
        if (answers.count() == 0 && problems.isEmpty()) {
            problems.add(at, "no answer stands in this file", "fill in the column `answer` of the list of questions");
        }
        return new Result(answers, problems.sorted());
    }

    private static String fold(String cell) {
        return cell.strip().toLowerCase(Locale.ROOT);
    }

    private static Answers sheet(SheetCells sheet, Answers before) {
        Answers answers = before;
        Map<String, Integer> columns = new HashMap<>();
        for (RowCells row : sheet.rows()) {
            List<String> texts = row.texts();
            if (columns.isEmpty()) {
                for (int i = 0; i < texts.size(); i++) {
                    columns.put(fold(texts.get(i)), i);
                }
                if (!columns.containsKey("answer") || !columns.containsKey("cell")) {
                    columns.clear();
                }
            } else {
                String answer = cell(texts, columns, "answer");
                String about = cell(texts, columns, "about");
                String address = cell(texts, columns, "cell");
                if (!answer.isEmpty() && !about.isEmpty()) {
                    answers = answers.withSubject(about, answer);
                } else if (!answer.isEmpty() && !address.isEmpty()) {
                    answers = answers.withCell(cell(texts, columns, "sheet"), address, answer);
                }
            }
        }
        return answers;
    }

    private static String cell(List<String> texts, Map<String, Integer> columns, String head) {
        int index = columns.getOrDefault(head, texts.size());
        return index < texts.size() ? texts.get(index).strip() : "";
    }
}
