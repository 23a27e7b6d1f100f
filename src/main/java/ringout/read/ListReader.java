package ringout.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import ringout.model.Aircraft;
import ringout.model.shape.Shape;
import ringout.read.bind.Bag;
import ringout.read.bind.Merge;
import ringout.read.cells.CellText;
import ringout.read.cells.RowCells;
import ringout.read.cells.SheetCells;
import ringout.read.cells.Workbooks;
import ringout.read.intake.Intake;
import ringout.read.json.JsonReader;
import ringout.read.table.Sheets;
import ringout.read.table.Table;
import ringout.read.table.TableReader;
import ringout.text.Problems;
import ringout.text.Span;

/** Reads a workbook, or one table as a text file, as a whole aircraft: each worksheet is the table its heads make it. */
final class ListReader {
    private final String file;
    private final Problems problems;
    private final Intake intake;

    ListReader(String file, Problems problems, Intake intake) {
        this.file = file;
        this.problems = problems;
        this.intake = intake;
    }

    /** A worksheet with the table it is. */
    private record Known(String place, SheetCells sheet, Table table) {}

    /** All tables of the file, as their owner sees them. */
    List<SheetCells> sheets(byte[] bytes) {
        List<SheetCells> sheets = Workbooks.isWorkbook(file)
                ? Workbooks.read(file, bytes, problems)
                : List.of(Sheets.ofText(file, bytes, problems));
        return sheets.stream().map(this::answered).toList();
    }

    /** The cells that were asked about say what was answered. */
    private SheetCells answered(SheetCells sheet) {
        String name = Workbooks.isWorkbook(file) ? sheet.name() : "";
        List<RowCells> rows = new ArrayList<>();
        for (RowCells row : sheet.rows()) {
            List<CellText> cells = new ArrayList<>(row.cells());
            for (int i = 0; i < cells.size(); i++) {
                int at = i;
                intake.answers()
                        .cell(name, row.number(), i + 1)
                        .ifPresent(answer -> cells.set(at, CellText.of(answer)));
            }
            rows.add(new RowCells(row.number(), row.hidden(), List.copyOf(cells)));
        }
        return new SheetCells(sheet.name(), sheet.hidden(), List.copyOf(rows));
    }

    /** Reads the tables into the aircraft, each after the ones whose records it adds to. */
    void read(List<SheetCells> sheets, Bag aircraft) {
        List<Known> known = new ArrayList<>();
        for (SheetCells sheet : sheets) {
            String place = place(sheet);
            if (!sheet.name().equals(Sources.MAIN_FILE)) {
                table(place, sheet).ifPresent(table -> known.add(new Known(place, sheet, table)));
            }
        }
        for (Table table : Table.ALL) {
            known.stream()
                    .filter(one -> one.table().equals(table))
                    .forEach(one -> TableReader.read(one.place(), one.sheet(), table, aircraft, problems, intake));
        }
        for (SheetCells sheet : sheets) {
            if (sheet.name().equals(Sources.MAIN_FILE)) {
                rest(place(sheet), sheet, aircraft);
            }
        }
        if (known.isEmpty() && problems.isEmpty()) {
            problems.add(
                    new Span(file, 0, 0, ""),
                    "no row of column heads is known here",
                    "a from-to list needs at least the heads from and to, below any title");
        }
    }

    private String place(SheetCells sheet) {
        return Workbooks.isWorkbook(file) ? Span.sheet(file, sheet.name()) : file;
    }

    private Optional<Table> table(String place, SheetCells sheet) {
        if (sheet.rows().stream().allMatch(RowCells::isBlank)) {
            return Optional.empty();
        }
        Optional<Table> table = Sheets.table(sheet);
        if (!Workbooks.isWorkbook(file)) {
            return table.or(() -> Table.ofFile(sheet.name())).or(() -> Optional.of(Table.LEADS));
        }
        Span at = new Span(place, 0, 0, "");
        if (table.isEmpty()) {
            intake.assume(at, "this worksheet is not read", "no row of its column heads makes it a table");
        } else if (sheet.hidden()) {
            intake.assume(at, "this worksheet is hidden, and read like the others", "");
        }
        return table;
    }

    /** What no table holds stands on a worksheet of its own, as text. */
    private void rest(String place, SheetCells sheet, Bag aircraft) {
        String json =
                sheet.rows().stream().map(row -> String.join("", row.texts())).collect(Collectors.joining("\n"));
        byte[] bytes = json.getBytes(java.nio.charset.StandardCharsets.UTF_8);
        Merge.into(aircraft, JsonReader.read(place, bytes, Shape.of(Aircraft.class), problems), problems);
    }
}
