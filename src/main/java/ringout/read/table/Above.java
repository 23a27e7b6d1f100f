package ringout.read.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.model.End;
import ringout.model.Lead;
import ringout.model.shape.Slot;
import ringout.read.cells.CellText;
import ringout.read.intake.Intake;

/** Cells that mean what stands above them: ditto marks, and the empty cells below a merged one. */
final class Above {
    private final String file;
    private final Table table;
    private final List<Column> columns;
    private final Intake intake;

    Above(String file, Table table, List<Column> columns, Intake intake) {
        this.file = file;
        this.table = table;
        this.columns = columns;
        this.intake = intake;
    }

    /** Rows with these cells filled in. */
    List<Grid.Row> resolved(List<Grid.Row> rows) {
        List<Grid.Row> full = new ArrayList<>();
        Grid.Row above = new Grid.Row(0, List.of());
        for (Grid.Row row : rows) {
            List<String> cells = Ditto.resolve(row.cells(), above.cells());
            for (Column column : columns) {
                if (column.target() instanceof Column.Target.Parent) {
                    fill(cells, column, above);
                }
            }
            if (table.shape().type() == Lead.class) {
                lead(row, cells, above);
            }
            above = new Grid.Row(row.number(), cells, kinds(row, cells, above), row.hidden());
            full.add(above);
        }
        return full;
    }

    private static List<CellText.Kind> kinds(Grid.Row row, List<String> cells, Grid.Row above) {
        List<CellText.Kind> kinds = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            boolean own = cells.get(i).equals(row.cell(i));
            kinds.add(own ? row.kind(i) : above.kind(i));
        }
        return kinds;
    }

    private static boolean fill(List<String> cells, Column column, Grid.Row above) {
        int i = column.index();
        if (i < cells.size() && cells.get(i).isEmpty() && !above.cell(i).isEmpty()) {
            cells.set(i, above.cell(i));
            return true;
        }
        return false;
    }

    /** A wire of the lead above: its unit and plug are left empty, or its number is, between the same two plugs. */
    private void lead(Grid.Row row, List<String> cells, Grid.Row above) {
        for (Column column : columns) {
            boolean place =
                    column.target() instanceof Column.Target.EndPart part && part.part() < 2 && pin(part.slot(), cells);
            if (place && fill(cells, column, above)) {
                intake.assume(
                        column.cell(file, row.number()),
                        "empty, taken as " + above.cell(column.index()) + " like the row above",
                        "a pin is given without it");
            }
        }
        key().filter(key -> isSamePair(cells, above))
                .filter(key -> fill(cells, key, above))
                .ifPresent(key -> intake.assume(
                        key.cell(file, row.number()),
                        "empty, taken as a wire of " + above.cell(key.index()) + " above",
                        "it runs between the same two plugs"));
    }

    private Optional<Column> key() {
        return columns.stream()
                .filter(column -> column.target() instanceof Column.Target.Own own
                        && table.shape().isKey(own.slot()))
                .findFirst();
    }

    private boolean pin(Slot slot, List<String> cells) {
        return columns.stream()
                .anyMatch(column -> column.target().equals(new Column.Target.EndPart(slot, 2))
                        && column.index() < cells.size()
                        && !cells.get(column.index()).isEmpty());
    }

    private boolean isSamePair(List<String> cells, Grid.Row above) {
        boolean same = true;
        int seen = 0;
        for (Column column : columns) {
            int i = column.index();
            String here = i < cells.size() ? cells.get(i) : "";
            if (column.target() instanceof Column.Target.EndPart part && part.part() < 2) {
                same &= !here.isEmpty() && here.equals(above.cell(i)) && pin(part.slot(), cells);
                seen++;
            } else if (column.target() instanceof Column.Target.Own own
                    && own.slot().type() == End.class) {
                same &= !plug(here).isEmpty() && plug(here).equals(plug(above.cell(i)));
                seen++;
            }
        }
        return same && seen >= 2;
    }

    /** The plug of an end that names a pin too; empty when it names none. */
    private static String plug(String end) {
        String[] parts = end.split("[-.:/]");
        return parts.length < 3 ? "" : end.substring(0, end.length() - parts[parts.length - 1].length() - 1);
    }
}
