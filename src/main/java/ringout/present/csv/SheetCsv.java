package ringout.present.csv;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import ringout.read.cells.RowCells;
import ringout.read.cells.SheetCells;

/** The cells of a table as text, row by row in their places: remarks and blank rows too. */
public final class SheetCsv {
    private SheetCsv() {}

    /** The text, comma separated, lines ending in \n. */
    public static String of(SheetCells sheet) {
        StringBuilder text = new StringBuilder();
        int next = 1;
        for (RowCells row : sheet.rows()) {
            for (; next < row.number(); next++) {
                text.append('\n');
            }
            text.append(row.isComment() ? remark(row) : line(row.texts()));
            next++;
        }
        return text.toString();
    }

    /** A remark starts its line, unquoted, or it would be a cell. */
    private static String remark(RowCells row) {
        return String.join(" ", row.texts()).strip().replaceAll("[\\r\\n]+", " ") + "\n";
    }

    private static String line(List<String> cells) {
        int filled = cells.size();
        while (filled > 0 && cells.get(filled - 1).isEmpty()) {
            filled--;
        }
        StringWriter line = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(line)) {
            if (filled > 0) {
                csv.writeRecord(cells.subList(0, filled));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return filled == 0 ? "\n" : line.toString();
    }
}
