package ringout.present.csv;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import ringout.read.table.Table;
import ringout.read.table.TableCells;

/** The text of one table: a row of heads, then the rows; only columns in which some row says something. */
final class SheetText {
    private SheetText() {}

    static String of(Table table, List<SheetRow> rows) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            for (List<String> line : lines(table, rows)) {
                csv.writeRecord(line);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** The heads, then the rows. */
    static List<List<String>> lines(Table table, List<SheetRow> rows) {
        TableCells cells = TableCells.of(table);
        List<String> heads = cells.heads();
        int[] used = IntStream.range(0, heads.size())
                .filter(i -> cells.isNeeded(i)
                        || rows.stream().anyMatch(row -> !row.texts().get(i).isEmpty()))
                .toArray();
        List<List<String>> lines = new ArrayList<>();
        List<String> first = keyHeads(table);
        IntStream.of(used).forEach(i -> first.add(heads.get(i)));
        lines.add(first);
        for (SheetRow row : rows) {
            List<String> line = new ArrayList<>(row.keys());
            IntStream.of(used).forEach(i -> line.add(row.texts().get(i)));
            lines.add(line);
        }
        return lines;
    }

    private static List<String> keyHeads(Table table) {
        List<String> heads = new ArrayList<>();
        for (Table.Level level : table.levels()) {
            if (!level.column().isEmpty()) {
                heads.add(level.column());
            }
        }
        return heads;
    }
}
