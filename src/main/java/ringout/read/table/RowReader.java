package ringout.read.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import ringout.model.End;
import ringout.model.shape.Identity;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.read.bind.Bag;
import ringout.read.cells.CellText;
import ringout.text.Problems;
import ringout.text.Ranges;
import ringout.text.Span;

/** Puts the rows of one table into the aircraft. */
final class RowReader {
    private final String file;
    private final Table table;
    private final List<Column> columns;
    private final Cells cells;
    private final Problems problems;
    private final Map<Bag, Map<String, Bag>> children = new HashMap<>();

    RowReader(String file, Table table, List<Column> columns, Cells cells, Problems problems) {
        this.file = file;
        this.table = table;
        this.columns = columns;
        this.cells = cells;
        this.problems = problems;
    }

    /** Adds one row, ditto marks already replaced; a range makes several records. */
    void read(Bag aircraft, Grid.Row row) {
        int count = count(row);
        for (int i = 0; i < count; i++) {
            List<String> texts = texts(row, i, count);
            Bag parent = parent(aircraft, texts, row.number());
            if (parent != null) {
                Bag bag = added(parent, Span.row(file, row.number()));
                for (Column column : columns) {
                    cell(
                            bag,
                            column,
                            texts.get(column.index()),
                            row.kind(column.index()),
                            column.cell(file, row.number()));
                }
                ends(bag, texts);
            }
        }
    }

    /** The record of a row: one more of a list, or the only one of what the row belongs to. */
    private Bag added(Bag parent, Span at) {
        Slot last = table.levels().get(table.levels().size() - 1).slot();
        if (last.kind() == Slot.Kind.RECORD) {
            return parent.child(last);
        }
        Bag bag = new Bag(table.shape(), at);
        parent.children(last).add(bag);
        return bag;
    }

    /** How many records a row makes: ranges in its ends, its key and the records it belongs to must go in step. */
    private int count(Grid.Row row) {
        int count = 1;
        for (Column column : columns) {
            String text = row.cell(column.index());
            if (names(column) && Ranges.is(text)) {
                int steps = Ranges.count(text);
                if (steps == 0 || (count > 1 && steps != 1 && steps != count)) {
                    problems.add(
                            column.cell(file, row.number()),
                            "'" + text + "' does not go in step with the row",
                            "ranges of one row must be equally long, " + Ranges.MOST + " at most");
                    return 0;
                }
                count = Math.max(count, steps);
            }
        }
        return count;
    }

    private boolean names(Column column) {
        return column.target() instanceof Column.Target.Parent
                || column.target() instanceof Column.Target.EndPart
                || (column.target() instanceof Column.Target.Own own
                        && (own.slot().type() == End.class || table.shape().isKey(own.slot())));
    }

    private List<String> texts(Grid.Row row, int step, int count) {
        List<String> texts = new ArrayList<>(row.cells());
        columns.forEach(column -> {
            while (texts.size() <= column.index()) {
                texts.add("");
            }
        });
        if (count > 1) {
            texts.replaceAll(text -> Ranges.count(text) == count ? Ranges.step(text, step) : text);
        }
        return texts;
    }

    private @Nullable Bag parent(Bag aircraft, List<String> texts, int row) {
        Bag bag = aircraft;
        for (int i = 0; i < table.levels().size() - 1; i++) {
            Table.Level level = table.levels().get(i);
            if (level.slot().kind() == Slot.Kind.RECORD) {
                bag = bag.child(level.slot());
                continue;
            }
            int at = i;
            Column column = columns.stream()
                    .filter(c -> c.target().equals(new Column.Target.Parent(at)))
                    .findFirst()
                    .orElseThrow();
            String key = texts.get(column.index());
            if (key.isEmpty()) {
                problems.add(
                        column.cell(file, row), "the cell is empty", "say which " + level.column() + " the row is of");
                return null;
            }
            bag = child(bag, level.slot(), key, row);
        }
        return bag;
    }

    private Bag child(Bag parent, Slot list, String key, int row) {
        Shape<?> shape = Shape.of(list.type());
        Map<String, Bag> known = children.computeIfAbsent(parent, bag -> {
            Map<String, Bag> byKey = new LinkedHashMap<>();
            bag.children(list).forEach(c -> byKey.putIfAbsent(Identity.fold(shape, c.key()), c));
            return byKey;
        });
        return known.computeIfAbsent(Identity.fold(shape, key), folded -> {
            Bag made = new Bag(shape, Span.row(file, row));
            made.put(shape.key().orElseThrow(), key);
            parent.children(list).add(made);
            return made;
        });
    }

    private void cell(Bag bag, Column column, String text, CellText.Kind kind, Span at) {
        if (text.isEmpty()) {
            return;
        }
        Optional<String> spoilt = Damage.of(column, text, kind);
        if (spoilt.isPresent()) {
            problems.add(at, spoilt.get(), "write what was meant, and format the cell as text");
            if (column.target() instanceof Column.Target.Own own) {
                bag.spoil(own.slot());
            }
        } else if (Ditto.is(text)) {
            problems.add(at, "a ditto mark with nothing above it", "write the value");
            if (column.target() instanceof Column.Target.Own own) {
                bag.spoil(own.slot());
            }
        } else if (column.target() instanceof Column.Target.Own own) {
            put(
                    bag,
                    Cells.meant(column, own.slot(), text, bag.shape().slots()),
                    number(column, text, kind),
                    column.unit(),
                    at);
        } else if (column.target() instanceof Column.Target.Inner inner) {
            put(bag.child(inner.outer()), inner.slot(), number(column, text, kind), column.unit(), at);
        } else if (column.target() instanceof Column.Target.PerPort port) {
            ports(bag, port, text, column.unit(), at);
        }
    }

    /** A number of a spreadsheet has its value whatever the marks of the table are: written so that no mark is needed. */
    private static String number(Column column, String text, CellText.Kind kind) {
        return kind == CellText.Kind.NUMBER && column.isNumber() && text.indexOf('.') >= 0
                ? text.replace(".", "") + "E-" + (text.length() - 1 - text.indexOf('.'))
                : text;
    }

    private void put(Bag bag, Slot slot, String text, String unit, Span at) {
        Object value = cells.value(slot, text, unit, at);
        if (value == null) {
            bag.spoil(slot);
            return;
        }
        Object before = bag.get(slot).orElse(value);
        if (before.equals(value)) {
            bag.put(slot, value);
        } else if (slot.name().equals("note")) {
            bag.put(slot, Notes.join(before, value));
        } else {
            problems.add(
                    at, "another column of this row gives `" + slot.name() + "` another value", "keep one of them");
        }
    }

    private void ports(Bag bag, Column.Target.PerPort target, String text, String unit, Span at) {
        List<PortCell> settings = PortCell.of(text);
        if (settings.isEmpty()) {
            problems.add(at, "'" + text + "' is not a setting for each port", "write PORT=value PORT=value");
        }
        for (PortCell setting : settings) {
            put(port(bag, target.list(), setting.port()), target.slot(), setting.value(), unit, at);
        }
    }

    private Bag port(Bag unit, Slot list, String name) {
        Shape<?> shape = Shape.of(list.type());
        for (Bag port : unit.children(list)) {
            if (Identity.fold(shape, port.key()).equals(Identity.fold(shape, name))) {
                return port;
            }
        }
        Bag made = new Bag(shape, unit.at());
        made.put(shape.key().orElseThrow(), name);
        unit.children(list).add(made);
        return made;
    }

    /** Ends whose unit, plug and pin have columns of their own. */
    private void ends(Bag bag, List<String> texts) {
        for (Column column : columns) {
            if (column.target() instanceof Column.Target.EndPart part
                    && !texts.get(column.index()).isEmpty()) {
                String before = bag.get(part.slot()).map(Object::toString).orElse("");
                String more = texts.get(column.index());
                bag.put(part.slot(), new End(before.isEmpty() ? more : before + "-" + more));
            }
        }
    }
}
