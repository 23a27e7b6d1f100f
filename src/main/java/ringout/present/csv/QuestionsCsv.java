package ringout.present.csv;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import ringout.read.intake.Question;

/** The list of questions as a table with an empty last column, to be filled in and given back. */
public final class QuestionsCsv {
    private QuestionsCsv() {}

    /** The table, the most pressing rows not sorted out: the order is that of the list. */
    public static String of(List<Question> questions) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            csv.writeRecord("file", "sheet", "row", "cell", "about", "question", "may be", "answer");
            for (Question question : questions) {
                csv.writeRecord(
                        question.at().workbook(),
                        question.at().sheet(),
                        question.at().line() == 0
                                ? ""
                                : Integer.toString(question.at().line()),
                        question.at().address(),
                        question.about(),
                        question.ask(),
                        question.answers(),
                        "");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
