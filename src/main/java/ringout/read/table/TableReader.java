package ringout.read.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringout.model.Lead;
import ringout.model.shape.Slot;
import ringout.read.bind.Bag;
import ringout.read.cells.CellText;
import ringout.read.cells.SheetCells;
import ringout.read.intake.Intake;
import ringout.text.Characters;
import ringout.text.Problems;
import ringout.text.Span;

/** Reads one table into an aircraft, telling every cell that cannot be read. */
public final class TableReader {
    private final String file;
    private final Table table;
    private final Heads heads;
    private final Problems problems;
    private final Intake intake;
    private final Set<Integer> left = new HashSet<>();
    private List<String> headCells = List.of();

    private TableReader(String file, Table table, Problems problems, Intake intake) {
        this.file = file;
        this.table = table;
        this.heads = Heads.of(table);
        this.problems = problems;
        this.intake = intake;
    }

    /** Reads the rows of a text file into the aircraft. */
    public static void read(String file, byte[] bytes, Table table, Bag aircraft, Problems problems, Intake intake) {
        Problems telling = new Problems();
        List<Grid.Row> rows =
                Grid.of(file, bytes, Heads.of(table)::knows, telling).rows();
        telling.sorted().forEach(problems::add);
        if (!rows.isEmpty() || telling.isEmpty()) {
            new TableReader(file, table, problems, intake).read(rows, aircraft);
        }
    }

    /** Reads the rows of a worksheet into the aircraft. */
    public static void read(
            String file, SheetCells sheet, Table table, Bag aircraft, Problems problems, Intake intake) {
        new TableReader(file, table, problems, intake).read(Grid.of(sheet).rows(), aircraft);
    }

    private void read(List<Grid.Row> rows, Bag aircraft) {
        if (rows.isEmpty()) {
            problems.add(
                    new Span(file, 0, 0, ""),
                    "the table is empty",
                    "remove the file, or give it a row of column heads");
            return;
        }
        HeadRow head = HeadRow.of(rows, heads);
        headCells = head.row().cells();
        List<Column> columns = columns(head.row());
        if (complete(head.row(), columns)) {
            List<Grid.Row> body = rows.subList(head.last() + 1, rows.size());
            body(new Chaff(file, table, columns, headCells, intake).sift(body), columns, aircraft);
        }
    }

    private List<Column> columns(Grid.Row row) {
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < row.cells().size(); i++) {
            String head = row.cell(i);
            Span at = Span.row(file, row.number()).cell(i + 1, Characters.shown(head, 40));
            Optional<Column> column = head.isEmpty() ? Optional.empty() : heads.column(i, head);
            if (column.isPresent()) {
                columns.add(column.get());
                field(column.get()).ifPresent(name -> intake.column(file, name, at.column(), at.cell()));
            } else if (HeadRow.isLeftOut(head)) {
                intake.assume(at, "this column is left out", "its head says so");
                left.add(i);
            } else if (!head.isEmpty()) {
                problems.add(at, "no column `" + head + "` in a table of " + table.name(), heads.hint(head));
            }
        }
        return columns;
    }

    private static Optional<String> field(Column column) {
        if (column.target() instanceof Column.Target.Own own) {
            return Optional.of(own.slot().name());
        }
        return column.target() instanceof Column.Target.EndPart part
                ? Optional.of(part.slot().name())
                : Optional.empty();
    }

    private boolean complete(Grid.Row row, List<Column> columns) {
        List<String> lacks = lacks(table, columns);
        lacks.forEach(head -> problems.add(
                Span.row(file, row.number()), "no column `" + head + "`", "a table of " + table.name() + " needs it"));
        return lacks.isEmpty();
    }

    /** Heads of columns that a table needs and does not have. */
    static List<String> lacks(Table table, List<Column> columns) {
        List<String> lacks = new ArrayList<>();
        for (int i = 0; i < table.levels().size() - 1; i++) {
            String column = table.levels().get(i).column();
            if (!column.isEmpty() && !has(columns, new Column.Target.Parent(i))) {
                lacks.add(column);
            }
        }
        for (Slot slot : table.shape().slots()) {
            boolean optional = table.shape().isKey(slot) && table.shape().type() == Lead.class;
            if (slot.kind() == Slot.Kind.REQUIRED && !optional && !has(columns, slot)) {
                lacks.add(slot.name());
            }
        }
        return lacks;
    }

    private static boolean has(List<Column> columns, Column.Target target) {
        return columns.stream().anyMatch(column -> column.target().equals(target));
    }

    private static boolean has(List<Column> columns, Slot slot) {
        return has(columns, new Column.Target.Own(slot)) || has(columns, new Column.Target.EndPart(slot, 0));
    }

    private void body(List<Grid.Row> rows, List<Column> columns, Bag aircraft) {
        List<Grid.Row> full = new Above(file, table, columns, intake).resolved(rows);
        Cells cells = new Cells(problems, DecimalStyle.of(numbers(full, columns)));
        RowReader reader = new RowReader(file, table, columns, cells, problems);
        for (Grid.Row row : full) {
            stray(row, columns);
            reader.read(aircraft, row);
        }
    }

    private static List<String> numbers(List<Grid.Row> rows, List<Column> columns) {
        List<String> numbers = new ArrayList<>();
        for (Column column : columns) {
            if (column.isNumber()) {
                rows.stream()
                        .filter(row -> row.kind(column.index()) != CellText.Kind.NUMBER)
                        .forEach(row -> numbers.add(row.cell(column.index())));
            }
        }
        return numbers;
    }

    /** A cell under no head would be lost. */
    private void stray(Grid.Row row, List<Column> columns) {
        for (int i = 0; i < row.cells().size(); i++) {
            int index = i;
            boolean lost = !row.cell(i).isEmpty()
                    && !left.contains(i)
                    && heads(i).isEmpty()
                    && columns.stream().noneMatch(c -> c.index() == index);
            if (lost) {
                problems.add(
                        Span.row(file, row.number()).cell(i + 1, "cell " + (i + 1)),
                        "'" + row.cell(i) + "' stands under no column head",
                        "give the column a head, or call it note");
            }
        }
    }

    private String heads(int index) {
        return index < headCells.size() ? headCells.get(index) : "";
    }
}
