package ringout.read.table;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import ringout.model.Lead;
import ringout.model.shape.Slot;
import ringout.read.cells.CellText;
import ringout.read.cells.RowCells;
import ringout.read.cells.SheetCells;
import ringout.text.Problems;
import ringout.text.Span;

/** Tables by what stands in them: a text file with every row of it, and which table a worksheet is. */
public final class Sheets {
    private static final int LOOK_AT = 14;

    /** A table is known by two heads at least, or three where none of them must be there. */
    private static final int FEWEST = 2;

    private Sheets() {}

    /** Every row of a text file, remarks and blank rows too; what cannot be read is told. */
    public static SheetCells ofText(String file, byte[] bytes, Problems problems) {
        return ofText(
                file,
                bytes,
                cell -> Table.ALL.stream().anyMatch(table -> Heads.of(table).knows(cell)),
                problems);
    }

    /**
     * Every row of a text file.
     *
     * @param isHead whether a cell looks like a head, for telling what separates the cells
     */
    public static SheetCells ofText(String file, byte[] bytes, Predicate<String> isHead, Problems problems) {
        String name = file.substring(file.lastIndexOf('/') + 1).replaceFirst("\\.[^.]*$", "");
        TextDecoder.Decoded decoded = TextDecoder.decode(bytes);
        if (decoded instanceof TextDecoder.Decoded.Junk junk) {
            problems.add(new Span(file, 0, 0, ""), junk.why(), junk.hint());
            return new SheetCells(name, false, List.of());
        }
        String text = ((TextDecoder.Decoded.Text) decoded).text();
        char separator = Separator.of(text, isHead);
        Tidy.Result tidy = Tidy.of(text, separator);
        if (tidy.openQuote() > 0) {
            problems.add(
                    Span.row(file, tidy.openQuote()),
                    "a quote opens here and never closes",
                    "close it or leave it away");
        }
        return new SheetCells(name, false, rows(file, tidy, separator, problems));
    }

    private static List<RowCells> rows(String file, Tidy.Result tidy, char separator, Problems problems) {
        List<RowCells> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .commentStrategy(CommentStrategy.NONE)
                .skipEmptyLines(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(tidy.text())) {
            for (CsvRecord line : reader) {
                int number = rows.size() + 1;
                String remark = tidy.remarks().get(number);
                List<String> cells = remark == null ? line.getFields() : List.of(remark);
                rows.add(new RowCells(
                        number, false, cells.stream().map(CellText::of).toList()));
            }
        } catch (CsvParseException | IOException e) {
            problems.add(Span.row(file, rows.size() + 1), "not readable as a table: " + e.getMessage(), "");
        }
        return List.copyOf(rows);
    }

    /**
     * Which table a worksheet is: the one whose name it has when its heads fit, else the one of whose heads it knows most, all
     * that it needs among them; nothing when there is none.
     */
    public static Optional<Table> table(SheetCells sheet) {
        List<Grid.Row> rows = Grid.of(sheet).rows();
        List<Grid.Row> first = rows.subList(0, Math.min(LOOK_AT, rows.size()));
        Optional<Table> named = Table.ofFile(sheet.name()).filter(table -> score(table, first) >= FEWEST);
        return named.isPresent()
                ? named
                : Table.ALL.stream()
                        .filter(table -> score(table, first) >= (needs(table) > 0 ? FEWEST : FEWEST + 1))
                        .max(Comparator.comparingLong((Table table) -> score(table, first))
                                .thenComparing(table -> table.shape().type() == Lead.class));
    }

    /** Known heads of the best row, less those nobody knows; 0 when one is missing that must be there. */
    private static long score(Table table, List<Grid.Row> rows) {
        if (rows.isEmpty()) {
            return 0;
        }
        Heads heads = Heads.of(table);
        Grid.Row head = HeadRow.of(rows, heads).row();
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < head.cells().size(); i++) {
            if (!head.cell(i).isEmpty()) {
                heads.column(i, head.cell(i)).ifPresent(columns::add);
            }
        }
        return TableReader.lacks(table, columns).isEmpty() ? HeadRow.known(head, heads) : 0;
    }

    private static long needs(Table table) {
        return table.shape().slots().stream()
                .filter(slot -> slot.kind() == Slot.Kind.REQUIRED)
                .count();
    }
}
