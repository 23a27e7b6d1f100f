package ringout.present.csv;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import ringout.draw.letter.Lettering;
import ringout.sheet.document.Column;
import ringout.sheet.document.Group;
import ringout.sheet.document.RevisionMark;
import ringout.sheet.document.Row;
import ringout.sheet.document.Table;

/**
 * One table of a document as CSV (RFC 4180, lines ended by \n): a row of heads with their units, then the rows, each with its
 * group and what is said about it in front and the hash of the data behind. A text that a spreadsheet would take for a formula gets an apostrophe in
 * front (as OWASP recommends against CSV injection, from memory).
 */
public final class TableCsv {
    private static final String FORMULA = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

    private TableCsv() {}

    /** {@return the table as text} */
    public static String of(Table table, RevisionMark mark) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            csv.writeRecord(heads(table));
            for (Group group : table.groups()) {
                for (Row row : group.rows()) {
                    List<String> line = new ArrayList<>();
                    if (table.divided()) {
                        line.add(neutral(group.title()));
                        if (table.detailed()) {
                            line.add(neutral(group.details()));
                        }
                    }
                    row.cells().forEach(cell -> line.add(neutral(cell)));
                    line.add(mark.hash());
                    csv.writeRecord(line);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static List<String> heads(Table table) {
        List<String> heads = new ArrayList<>();
        if (table.divided()) {
            heads.add(table.groupHead());
            if (table.detailed()) {
                heads.add("about the " + table.groupHead());
            }
        }
        table.columns().stream().map(Column::headWithUnit).forEach(heads::add);
        heads.add("data");
        return heads;
    }

    /** {@return a text as it may stand in a cell: without marks that cannot be seen, and never a formula} */
    static String neutral(String text) {
        String clean = Lettering.printable(text);
        String start = clean.stripLeading();
        boolean formula = start.length() > 1 && FORMULA.indexOf(start.charAt(0)) >= 0 && !isNumber(start);
        return formula ? "'" + clean : clean;
    }

    private static boolean isNumber(String text) {
        return text.matches("[+-]?[0-9]+(\\.[0-9]+)?");
    }
}
