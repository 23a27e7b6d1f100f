package ringout.present.xlsx;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.dhatim.fastexcel.VisibilityState;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import ringout.read.cells.CellText;
import ringout.read.cells.RowCells;
import ringout.read.cells.SheetCells;

/** Writes tables as a workbook: the cells as they are, each in its place. Same tables, same bytes. */
public final class XlsxWriter {
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);
    private static final String CORE = "docProps/core.xml";

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
        return timeless(bytes.toByteArray());
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

    /** The same workbook without the time it was written at, so that the same tables make the same bytes. */
    private static byte[] timeless(byte[] workbook) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipFile in = ZipFile.builder().setByteArray(workbook).get();
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipArchiveEntry entry : Collections.list(in.getEntries())) {
                byte[] content = in.getInputStream(entry).readAllBytes();
                ZipEntry same = new ZipEntry(entry.getName());
                same.setTimeLocal(NO_TIME);
                out.putNextEntry(same);
                out.write(entry.getName().equals(CORE) ? withoutTime(content) : content);
                out.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static byte[] withoutTime(byte[] core) {
        return new String(core, StandardCharsets.UTF_8)
                .replaceAll("<dcterms:created[^>]*>[^<]*</dcterms:created>", "")
                .getBytes(StandardCharsets.UTF_8);
    }
}
