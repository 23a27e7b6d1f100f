package ringout.present.xlsx;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.RevisionMark;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;

/** Tables of documents as a workbook, read back. */
class TableWorkbookTest {
    private static final RevisionMark MARK = new RevisionMark("X & Y", "", "", "", "as flown", "1a2b3c4d");

    private static byte[] book() {
        Table table = Table.named("cut-list", Column.text("conductor"), Column.number("length", "mm"))
                .by("zone")
                .group("hub")
                .row("=cmd|' /C calc'!A0", "450")
                .row("N".repeat(40_000), "?")
                .table();
        Document document = new Document(
                "k", "T", MARK, 1, 1, Document.Form.PORTRAIT, "", List.of(new Section("", List.of(table))));
        return TableWorkbook.of(List.of(document), "ringout", "1.0");
    }

    @Test
    void numbersAreNumbersAndNothingIsAFormula() throws IOException {
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(book()))) {
            assertEquals("cut-list", book.getFirstSheet().getName());
            List<Row> rows = book.getFirstSheet().read();
            assertEquals("length [mm]", rows.get(0).getCell(2).getText());
            Row first = rows.get(1);
            assertEquals(CellType.STRING, first.getCell(1).getType());
            assertEquals("=cmd|' /C calc'!A0", first.getCell(1).getText());
            assertEquals(CellType.NUMBER, first.getCell(2).getType());
            assertEquals(450, first.getCell(2).asNumber().intValue());
            assertEquals(32_767, rows.get(2).getCell(1).getText().length());
            assertEquals(CellType.STRING, rows.get(2).getCell(2).getType());
        }
    }

    @Test
    void equalTablesGiveEqualBytes() throws InterruptedException {
        byte[] first = book();
        Thread.sleep(5);
        assertArrayEquals(first, book());
    }
}
