package ringout.read.table;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import ringout.read.cells.CellText;
import ringout.read.cells.RowCells;
import ringout.read.cells.SheetCells;
import ringout.text.Characters;
import ringout.text.Problem;
import ringout.text.Problems;
import ringout.text.Span;

/**
 * The rows of a table that hold anything, with the number the user's spreadsheet shows for them.
 *
 * @param rows rows in order
 */
record Grid(List<Row> rows) {
    /**
     * One row.
     *
     * @param number 1-based number, blank rows and comments counted
     * @param cells cells without blanks around them
     * @param kinds how a spreadsheet holds them; none for a text file
     * @param hidden whether its owner has hidden it
     */
    record Row(int number, List<String> cells, List<CellText.Kind> kinds, boolean hidden) {
        /** A row of a text file. */
        Row(int number, List<String> cells) {
            this(number, cells, List.of(), false);
        }

        /** The same row with other texts. */
        Row with(List<String> texts) {
            return new Row(number, texts, kinds, hidden);
        }

        /** How a cell is held. */
        CellText.Kind kind(int index) {
            return index < kinds.size() ? kinds.get(index) : CellText.Kind.TEXT;
        }

        /** Positions of the cells that hold anything. */
        List<Integer> filled() {
            return IntStream.range(0, cells.size())
                    .filter(i -> !cells.get(i).isEmpty())
                    .boxed()
                    .toList();
        }

        /** The text of a cell; empty when the row is shorter. */
        String cell(int index) {
            return index < cells.size() ? cells.get(index) : "";
        }
    }

    /** Reads the rows of a file; what cannot be read is told. */
    static Grid of(String file, byte[] bytes, Predicate<String> isHead, Problems problems) {
        TextDecoder.Decoded decoded = TextDecoder.decode(bytes);
        if (decoded instanceof TextDecoder.Decoded.Junk junk) {
            problems.add(new Problem(new Span(file, 0, 0, ""), junk.why(), junk.hint()));
            return new Grid(List.of());
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
        return new Grid(rows(file, tidy.text(), separator, problems));
    }

    /** The rows of a worksheet that hold anything but remarks. */
    static Grid of(SheetCells cells) {
        List<Row> rows = new ArrayList<>();
        for (RowCells row : cells.rows()) {
            if (!row.isBlank() && !row.isComment() && !isHint(row)) {
                List<String> texts = new ArrayList<>();
                List<CellText.Kind> kinds = new ArrayList<>();
                for (CellText cell : row.cells()) {
                    texts.add(Characters.strip(cell.text()));
                    kinds.add(cell.kind());
                }
                rows.add(new Row(row.number(), texts, kinds, row.hidden()));
            }
        }
        return new Grid(rows);
    }

    private static boolean isHint(RowCells row) {
        return excelHint(row.number(), row.texts());
    }

    private static List<Row> rows(String file, String text, char separator, Problems problems) {
        List<Row> rows = new ArrayList<>();
        int number = 0;
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .commentStrategy(CommentStrategy.NONE)
                .skipEmptyLines(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(text)) {
            for (CsvRecord line : reader) {
                number++;
                List<String> cells =
                        line.getFields().stream().map(Characters::strip).toList();
                if (cells.stream().anyMatch(cell -> !cell.isEmpty()) && !excelHint(number, cells)) {
                    rows.add(new Row(number, cells));
                }
            }
        } catch (CsvParseException | java.io.IOException e) {
            problems.add(Span.row(file, number + 1), "not readable as a table: " + e.getMessage(), "");
        }
        return rows;
    }

    /** The line {@code sep=;} that some spreadsheets put first. */
    private static boolean excelHint(int number, List<String> cells) {
        return number == 1 && cells.get(0).toLowerCase(java.util.Locale.ROOT).startsWith("sep=");
    }
}
