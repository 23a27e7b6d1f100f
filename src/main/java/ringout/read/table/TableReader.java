package ringout.read.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.model.Lead;
import ringout.model.shape.Slot;
import ringout.read.bind.Bag;
import ringout.text.Characters;
import ringout.text.Problems;
import ringout.text.Span;

/** Reads one table into an aircraft, telling every cell that cannot be read. */
public final class TableReader {
    private static final int TITLE_ROWS = 8;

    private final String file;
    private final Table table;
    private final Heads heads;
    private final Problems problems;
    private List<String> headCells = List.of();

    private TableReader(String file, Table table, Problems problems) {
        this.file = file;
        this.table = table;
        this.heads = Heads.of(table);
        this.problems = problems;
    }

    /** Reads the rows of a file into the aircraft. */
    public static void read(String file, byte[] bytes, Table table, Bag aircraft, Problems problems) {
        new TableReader(file, table, problems).read(bytes, aircraft);
    }

    private void read(byte[] bytes, Bag aircraft) {
        Problems telling = new Problems();
        List<Grid.Row> rows = Grid.of(file, bytes, heads::knows, telling).rows();
        telling.sorted().forEach(problems::add);
        if (rows.isEmpty()) {
            if (telling.isEmpty()) {
                problems.add(
                        new Span(file, 0, 0, ""),
                        "the table is empty",
                        "remove the file, or give it a row of column heads");
            }
            return;
        }
        int top = headRow(rows);
        headCells = rows.get(top).cells();
        List<Column> columns = columns(rows.get(top));
        if (complete(rows.get(top), columns)) {
            body(rows.subList(top + 1, rows.size()), columns, aircraft);
        }
    }

    /** The row of heads: the first, unless it knows less than two heads and a row below knows more (a title above). */
    private int headRow(List<Grid.Row> rows) {
        int best = 0;
        long most = Math.max(1, known(rows.get(0)));
        for (int i = 1; i < Math.min(TITLE_ROWS, rows.size()) && most < 2; i++) {
            long known = known(rows.get(i));
            if (known > most) {
                most = known;
                best = i;
            }
        }
        return best;
    }

    private long known(Grid.Row row) {
        return row.cells().stream().filter(heads::knows).count();
    }

    private List<Column> columns(Grid.Row row) {
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < row.cells().size(); i++) {
            String head = row.cell(i);
            Optional<Column> column = head.isEmpty() ? Optional.empty() : heads.column(i, head);
            if (column.isPresent()) {
                columns.add(column.get());
            } else if (!head.isEmpty()) {
                problems.add(
                        Span.row(file, row.number()).cell(i + 1, Characters.shown(head, 40)),
                        "no column `" + head + "` in a table of " + table.name(),
                        heads.hint(head));
            }
        }
        return columns;
    }

    private boolean complete(Grid.Row row, List<Column> columns) {
        boolean complete = true;
        for (int i = 0; i < table.levels().size() - 1; i++) {
            String column = table.levels().get(i).column();
            if (!column.isEmpty() && !has(columns, new Column.Target.Parent(i))) {
                complete = missing(row, column);
            }
        }
        for (Slot slot : table.shape().slots()) {
            boolean optional = table.shape().isKey(slot) && table.shape().type() == Lead.class;
            if (slot.kind() == Slot.Kind.REQUIRED && !optional && !has(columns, slot)) {
                complete = missing(row, slot.name());
            }
        }
        return complete;
    }

    private boolean missing(Grid.Row row, String head) {
        problems.add(
                Span.row(file, row.number()), "no column `" + head + "`", "a table of " + table.name() + " needs it");
        return false;
    }

    private static boolean has(List<Column> columns, Column.Target target) {
        return columns.stream().anyMatch(column -> column.target().equals(target));
    }

    private static boolean has(List<Column> columns, Slot slot) {
        return has(columns, new Column.Target.Own(slot)) || has(columns, new Column.Target.EndPart(slot, 0));
    }

    private void body(List<Grid.Row> rows, List<Column> columns, Bag aircraft) {
        List<Grid.Row> full = resolved(rows, columns);
        Cells cells = new Cells(problems, DecimalStyle.of(numbers(full, columns)));
        RowReader reader = new RowReader(file, table, columns, cells, problems);
        for (Grid.Row row : full) {
            stray(row, columns);
            reader.read(aircraft, row);
        }
    }

    /** Rows with their ditto marks replaced; an empty cell for what a row belongs to means the same as above. */
    private static List<Grid.Row> resolved(List<Grid.Row> rows, List<Column> columns) {
        List<Grid.Row> full = new ArrayList<>();
        List<String> above = List.of();
        for (Grid.Row row : rows) {
            List<String> cells = Ditto.resolve(row.cells(), above);
            for (Column column : columns) {
                int i = column.index();
                boolean merged = column.target() instanceof Column.Target.Parent && i < cells.size();
                if (merged && cells.get(i).isEmpty() && i < above.size()) {
                    cells.set(i, above.get(i));
                }
            }
            full.add(new Grid.Row(row.number(), cells));
            above = cells;
        }
        return full;
    }

    private static List<String> numbers(List<Grid.Row> rows, List<Column> columns) {
        List<String> numbers = new ArrayList<>();
        for (Column column : columns) {
            if (column.isNumber()) {
                rows.forEach(row -> numbers.add(row.cell(column.index())));
            }
        }
        return numbers;
    }

    /** A cell under no head would be lost. */
    private void stray(Grid.Row row, List<Column> columns) {
        for (int i = 0; i < row.cells().size(); i++) {
            int index = i;
            boolean lost = !row.cell(i).isEmpty()
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
