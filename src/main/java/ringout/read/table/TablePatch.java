package ringout.read.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.model.shape.FieldUnit;
import ringout.model.shape.Slot;
import ringout.text.Problems;

/**
 * Changes rows of a table where they stand, so that everything else of the file stays as its owner wrote it: order, heads,
 * comments, blank lines, separator. It gives up where a row means several records or a field has no column; whoever uses
 * the result reads it back and compares.
 */
public final class TablePatch {
    private final Table table;
    private final TableCells form;
    private final List<RowText> lines;
    private final List<Column> columns;
    private final Map<Integer, Grid.Row> rows = new HashMap<>();
    private final List<Grid.Row> order;
    private final int headRow;
    private boolean possible = true;

    private TablePatch(Table table, List<RowText> lines, List<Grid.Row> order, int head, List<Column> columns) {
        this.table = table;
        this.form = TableCells.of(table);
        this.lines = lines;
        this.order = order;
        this.headRow = head;
        this.columns = columns;
        order.forEach(row -> rows.put(row.number(), row));
    }

    /**
     * One record that is to change.
     *
     * @param row number of its row
     * @param before as it is
     * @param after as it is to be; nothing when the row is to go
     */
    public record Change(int row, Object before, Optional<Object> after) {}

    /**
     * The text of a file after changes.
     *
     * @param bytes the file
     * @param table kind of table
     * @param changes rows to change or take out
     * @param added records to put at the end
     * @return the new text, or nothing where the change has no simple place in this file
     */
    public static Optional<String> of(byte[] bytes, Table table, List<Change> changes, List<Object> added) {
        if (!(TextDecoder.decode(bytes) instanceof TextDecoder.Decoded.Text text)) {
            return Optional.empty();
        }
        Heads heads = Heads.of(table);
        char separator = Separator.of(text.text(), heads::knows);
        List<RowText> lines = RowText.all(text.text(), separator);
        Problems problems = new Problems();
        List<Grid.Row> rows =
                Grid.of(table.name(), bytes, heads::knows, problems).rows();
        Optional<Grid.Row> head = rows.stream()
                .filter(row -> row.cells().stream().filter(heads::knows).count() >= 2)
                .findFirst();
        if (head.isEmpty() || !problems.isEmpty() || rows.stream().anyMatch(row -> row.number() > lines.size())) {
            return Optional.empty();
        }
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < head.get().cells().size(); i++) {
            heads.column(i, head.get().cell(i)).ifPresent(columns::add);
        }
        TablePatch patch = new TablePatch(table, lines, rows, rows.indexOf(head.get()), columns);
        changes.forEach(patch::change);
        added.forEach(patch::add);
        return patch.possible ? Optional.of(RowText.joined(patch.lines)) : Optional.empty();
    }

    private void change(Change change) {
        Optional<Grid.Row> row = Optional.ofNullable(rows.get(change.row()));
        if (row.isEmpty()) {
            possible = false;
        } else if (change.after().isEmpty()) {
            remove(row.get());
        } else {
            cells(row.get(), change.before(), change.after().get());
        }
    }

    private void remove(Grid.Row row) {
        boolean repeated =
                below(row).stream().anyMatch(next -> next.cells().stream().anyMatch(Ditto::is));
        possible &= !repeated;
        lines.get(row.number() - 1).drop();
    }

    private Optional<Grid.Row> below(Grid.Row row) {
        int at = order.indexOf(row) + 1;
        return at < order.size() ? Optional.of(order.get(at)) : Optional.empty();
    }

    private void cells(Grid.Row row, Object before, Object after) {
        List<String> old = texts(before);
        List<String> now = texts(after);
        for (int i = 0; i < Math.min(old.size(), now.size()); i++) {
            if (!old.get(i).equals(now.get(i))) {
                cell(row, form.target(i), now.get(i), old.get(i));
            }
        }
        possible &= !old.isEmpty() && !now.isEmpty();
    }

    private List<String> texts(Object record) {
        return form.row(record).map(TableCells.Row::texts).orElse(List.of());
    }

    private void cell(Grid.Row row, Column.Target target, String text, String old) {
        Optional<Column> column =
                columns.stream().filter(c -> c.target().equals(target)).findFirst();
        if (column.isEmpty()) {
            possible = false;
            return;
        }
        int index = column.get().index();
        below(row)
                .filter(next -> Ditto.is(next.cell(index)))
                .ifPresent(next -> lines.get(next.number() - 1).set(index, measured(column.get(), old)));
        lines.get(row.number() - 1).set(index, measured(column.get(), text));
    }

    /** Under a head that names a unit of measure a number carries its own. */
    private static String measured(Column column, String text) {
        if (column.unit().isEmpty() || text.isEmpty() || !text.matches("[0-9.]+")) {
            return text;
        }
        Slot slot = column.target() instanceof Column.Target.Own own ? own.slot() : null;
        return slot == null ? text : text + " " + FieldUnit.of(slot.name()).symbol();
    }

    private void add(Object record) {
        List<String> texts = texts(record);
        possible &= !texts.isEmpty() && table.levels().size() == 1;
        RowText line = RowText.blank(lines.get(order.get(headRow).number() - 1));
        for (int i = 0; i < texts.size(); i++) {
            String text = texts.get(i);
            Column.Target target = form.target(i);
            Optional<Column> column =
                    columns.stream().filter(c -> c.target().equals(target)).findFirst();
            possible &= text.isEmpty() || column.isPresent();
            column.ifPresent(found -> line.set(found.index(), measured(found, text)));
        }
        lines.add(line);
    }
}
