package ringout.present.xlsx;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import org.dhatim.fastexcel.BorderStyle;
import org.dhatim.fastexcel.PaperSize;
import org.dhatim.fastexcel.Position;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import ringout.draw.letter.Lettering;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Group;
import ringout.sheet.document.RevisionMark;
import ringout.sheet.document.Row;
import ringout.sheet.document.Table;

/**
 * All tables of some documents as one workbook (Office Open XML), a leaf a table, its head on every printed page and the
 * revision mark at the foot. Numbers are numbers, everything else is text: no cell is ever a formula.
 */
public final class TableWorkbook {
    private static final int LONGEST_CELL = 32_767;
    private static final int LONGEST_NAME = 31;
    private static final double WIDEST = 60;
    private static final int SMALL_PRINT = 8;

    private TableWorkbook() {}

    /**
     * {@return the workbook as bytes, equal for equal documents}
     *
     * @param documents with one table at least among them
     * @param program name of the program that writes it
     * @param version its version, two numbers
     */
    public static byte[] of(List<Document> documents, String program, String version) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(bytes, program, version)) {
            for (Document document : documents) {
                for (Table table : document.tables()) {
                    write(book, table, document.mark());
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Timeless.of(bytes.toByteArray());
    }

    private static void write(Workbook book, Table table, RevisionMark mark) {
        String name =
                table.name().substring(0, Math.min(LONGEST_NAME, table.name().length()));
        Worksheet leaf = book.newWorksheet(name);
        int first = !table.divided() ? 0 : table.detailed() ? 2 : 1;
        if (first > 0) {
            leaf.value(0, 0, table.groupHead());
        }
        if (first > 1) {
            leaf.value(0, 1, "about the " + table.groupHead());
        }
        for (int i = 0; i < table.columns().size(); i++) {
            leaf.value(0, first + i, table.columns().get(i).headWithUnit());
        }
        int columns = first + table.columns().size();
        leaf.range(0, 0, 0, columns - 1)
                .style()
                .bold()
                .wrapText(true)
                .borderStyle(BorderStyle.THIN)
                .set();
        int line = 1;
        for (Group group : table.groups()) {
            for (Row row : group.rows()) {
                row(leaf, line, first, table, group, row);
                line++;
            }
        }
        widths(leaf, table, first);
        page(leaf, mark);
    }

    private static void row(Worksheet leaf, int line, int first, Table table, Group group, Row row) {
        if (first > 0) {
            text(leaf, line, 0, group.title());
        }
        if (first > 1) {
            text(leaf, line, 1, group.details());
        }
        for (int i = 0; i < row.cells().size(); i++) {
            String cell = row.cells().get(i);
            boolean number =
                    table.columns().get(i).form() == Column.Form.NUMBER && cell.matches("-?[0-9]+(\\.[0-9]+)?");
            if (number) {
                leaf.value(line, first + i, new BigDecimal(cell));
            } else if (!cell.isEmpty()) {
                text(leaf, line, first + i, cell);
            }
        }
        if (row.kind() != Row.Kind.LINE) {
            leaf.range(line, 0, line, first + row.cells().size() - 1)
                    .style()
                    .bold()
                    .set();
        }
    }

    private static void text(Worksheet leaf, int line, int column, String text) {
        String clean = Lettering.printable(text);
        leaf.value(line, column, clean.substring(0, Math.min(LONGEST_CELL, clean.length())));
    }

    private static void widths(Worksheet leaf, Table table, int first) {
        for (int i = 0; i < table.columns().size(); i++) {
            int column = i;
            int longest = table.rows().stream()
                    .mapToInt(row -> row.cells().get(column).length())
                    .max()
                    .orElse(0);
            int head = table.columns().get(i).head().length();
            leaf.width(first + i, Math.min(WIDEST, Math.max(longest, head) + 2.0));
        }
        if (first > 0) {
            int longest = table.groups().stream()
                    .mapToInt(group -> group.title().length())
                    .max()
                    .orElse(0);
            leaf.width(0, Math.min(WIDEST, longest + 2.0));
        }
    }

    private static void page(Worksheet leaf, RevisionMark mark) {
        leaf.freezePane(0, 1);
        leaf.repeatRows(0);
        leaf.paperSize(PaperSize.A4_PAPER);
        leaf.pageOrientation("landscape");
        leaf.setFitToPage(true);
        leaf.fitToHeight((short) 0);
        // An ampersand would start a code of the page set-up.
        leaf.footer(Lettering.printable(mark.words()).replace("&", "&&"), Position.LEFT, SMALL_PRINT);
        leaf.footer("&P of &N", Position.RIGHT, SMALL_PRINT);
    }
}
