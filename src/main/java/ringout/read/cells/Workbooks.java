package ringout.read.cells;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;
import org.jspecify.annotations.Nullable;
import ringout.text.Problems;
import ringout.text.Span;

/** Opens workbooks of Office Open XML (ECMA-376, .xlsx). */
public final class Workbooks {
    private static final ReadingOptions OPTIONS = new ReadingOptions(true, true);

    private Workbooks() {}

    /** Whether a file is a workbook by its ending. */
    public static boolean isWorkbook(String file) {
        return file.toLowerCase(Locale.ROOT).endsWith(".xlsx");
    }

    /** All worksheets in their order; what cannot be opened is told. */
    public static List<SheetCells> read(String file, byte[] bytes, Problems problems) {
        List<SheetCells> sheets = new ArrayList<>();
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(bytes), OPTIONS);
                Stream<Sheet> all = book.getSheets()) {
            for (Sheet sheet : all.toList()) {
                sheets.add(sheet(sheet, book.isDate1904()));
            }
        } catch (IOException | RuntimeException e) {
            problems.add(
                    new Span(file, 0, 0, ""),
                    "this workbook cannot be opened: " + e.getMessage(),
                    "open it in a spreadsheet program and save it as .xlsx without a password, or save each sheet as CSV");
        }
        return sheets;
    }

    private static SheetCells sheet(Sheet sheet, boolean since1904) throws IOException {
        List<RowCells> rows = new ArrayList<>();
        try (Stream<Row> all = sheet.openStream()) {
            all.forEach(row -> rows.add(row(row, since1904)));
        }
        return new SheetCells(sheet.getName(), sheet.getVisibility() != SheetVisibility.VISIBLE, List.copyOf(rows));
    }

    private static RowCells row(Row row, boolean since1904) {
        List<CellText> cells = new ArrayList<>();
        for (int i = 0; i < row.getCellCount(); i++) {
            @Nullable Cell cell = row.getCell(i);
            cells.add(cell == null ? CellText.EMPTY : CellForms.of(cell, since1904));
        }
        return new RowCells(row.getRowNum(), row.isHidden(), List.copyOf(cells));
    }
}
