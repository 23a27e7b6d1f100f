package ringout.read.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import ringout.model.End;
import ringout.model.shape.Slot;
import ringout.read.intake.Intake;
import ringout.text.Characters;
import ringout.text.Span;

/**
 * Rows between the rows of a table that are none: sub-headings, heads repeated on a new page, totals at the end. What is
 * passed over is listed, and so is a hidden row, which is read like the others.
 */
final class Chaff {
    private static final Set<String> TOTALS = Set.of(
            "total",
            "totals",
            "sum",
            "summe",
            "gesamt",
            "gesamtl\u00e4nge",
            "total length",
            "somme",
            "totaux",
            "longueur totale",
            "\u03a3");

    /** No word for a total is longer. */
    private static final int LONGEST = 40;

    private final String file;
    private final Table table;
    private final List<Column> columns;
    private final List<String> heads;
    private final Intake intake;

    Chaff(String file, Table table, List<Column> columns, List<String> heads, Intake intake) {
        this.file = file;
        this.table = table;
        this.columns = columns;
        this.heads = heads;
        this.intake = intake;
    }

    /** The rows that are rows of the table. */
    List<Grid.Row> sift(List<Grid.Row> rows) {
        List<Grid.Row> kept = new ArrayList<>();
        for (Grid.Row row : rows) {
            String what = what(row);
            if (what.isEmpty()) {
                kept.add(row);
                if (row.hidden()) {
                    intake.assume(Span.row(file, row.number()), "this row is hidden, and read like the others", "");
                }
            } else if (!what.equals("heads")) {
                intake.assume(
                        Span.row(file, row.number())
                                .cell(row.filled().get(0) + 1, head(row.filled().get(0))),
                        "'" + row.cell(row.filled().get(0)) + "' taken for a " + what + ", not for a row",
                        "no more stands in the row than a " + what + " has");
            }
        }
        return kept;
    }

    private String head(int index) {
        return index < heads.size() ? Characters.shown(heads.get(index), LONGEST) : "";
    }

    private String what(Grid.Row row) {
        List<Integer> filled = row.filled();
        if (filled.stream().allMatch(i -> i < heads.size() && row.cell(i).equals(heads.get(i)))) {
            return filled.size() > 1 ? "heads" : "";
        }
        boolean ends = columns.stream()
                .filter(this::names)
                .map(Column::index)
                .anyMatch(i -> !row.cell(i).isEmpty() && !TOTALS.contains(word(row.cell(i))));
        boolean total = filled.stream().anyMatch(i -> TOTALS.contains(word(row.cell(i))));
        if (!ends && total) {
            return "total";
        }
        return filled.size() == 1 && needsMore() && !isIdentity(filled.get(0), row) ? "sub-heading" : "";
    }

    private static String word(String cell) {
        int end = cell.indexOf(':') < 0 ? cell.indexOf('=') : cell.indexOf(':');
        return cell.length() > LONGEST
                ? ""
                : cell.substring(0, end < 0 ? cell.length() : end).strip().toLowerCase(Locale.ROOT);
    }

    /** What a lead or a unit cannot do without, but for its name. */
    private boolean names(Column column) {
        return column.target() instanceof Column.Target.EndPart
                || (column.target() instanceof Column.Target.Own own
                        && own.slot().kind() == Slot.Kind.REQUIRED
                        && (own.slot().type() == End.class || !table.shape().isKey(own.slot())));
    }

    private boolean needsMore() {
        return table.shape().slots().stream()
                        .filter(slot -> slot.kind() == Slot.Kind.REQUIRED)
                        .count()
                > 1;
    }

    /** Whether the only cell of a row is the name of a lead or a unit, whose other cells are then missing. */
    private boolean isIdentity(int index, Grid.Row row) {
        String cell = row.cell(index);
        boolean key = columns.stream()
                .anyMatch(column -> column.index() == index
                        && column.target() instanceof Column.Target.Own own
                        && table.shape().isKey(own.slot()));
        boolean named = columns.stream().anyMatch(column -> column.index() == index && names(column));
        return named || (key && cell.indexOf(' ') < 0 && cell.chars().anyMatch(Character::isDigit));
    }
}
