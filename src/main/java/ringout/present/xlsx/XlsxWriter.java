package ringout.present.xlsx;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import org.dhatim.fastexcel.VisibilityState;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import ringout.read.cells.CellText;
import ringout.read.cells.RowCells;
import ringout.read.cells.SheetCells;

/** Writes tables as a workbook: the cells as they are, each in its place. Same tables, same bytes. */
public final class XlsxWriter {
    private XlsxWriter() {}

    /** The bytes of a workbook; sheet names are to be different and at most 31 letters long. */
    public static byte[] of(List<SheetCells> sheets) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(bytes, "ringout", "1.0")) {
            for (SheetCells sheet : sheets) {
                Worksheet worksheet = book.newWorksheet(sheet.name());
                if (sheet.hidden()) {
                    worksheet.setVisibilityState(VisibilityState.HIDDEN);
                }
                sheet.rows().forEach(row -> row(worksheet, row));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Timeless.of(bytes.toByteArray());
    }

    private static void row(Worksheet sheet, RowCells row) {
        int r = row.number() - 1;
        for (int c = 0; c < row.cells().size(); c++) {
            CellText cell = row.cells().get(c);
            if (cell.kind() == CellText.Kind.NUMBER) {
                sheet.value(r, c, Double.parseDouble(cell.text()));
            } else if (cell.kind() == CellText.Kind.DAY && cell.text().length() == 10) {
                sheet.value(r, c, LocalDate.parse(cell.text()));
                sheet.style(r, c).format("yyyy-mm-dd").set();
            } else if (!cell.text().isEmpty()) {
                sheet.value(r, c, cell.text());
            }
        }
        if (row.hidden()) {
            sheet.hideRow(r);
        }
    }
}
