package ringout.present.csv;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.model.Aircraft;
import ringout.model.shape.Identity;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.read.table.Table;
import ringout.read.table.TableCells;

/**
 * Takes out of an aircraft what tables hold, and keeps the rest. A list goes to its table as a whole or not at all, so
 * that its order is kept; what hangs on its records but fits in no cell stays behind under their names.
 */
final class Splitter {
    private static final Map<String, Table> BY_PATH =
            Table.ALL.stream().collect(Collectors.toMap(Splitter::path, table -> table));

    private final Map<Table, List<SheetRow>> rows = new HashMap<>();
    private final Map<Table, TableCells> cells = new HashMap<>();

    private final Set<String> covered;

    /** Leaves the tables of these names alone. */
    Splitter(Set<String> covered) {
        this.covered = covered;
    }

    private static String path(Table table) {
        return table.levels().stream().map(level -> "/" + level.slot().name()).collect(Collectors.joining());
    }

    /** The rows taken out for a table. */
    List<SheetRow> rows(Table table) {
        return rows.getOrDefault(table, List.of());
    }

    /** Takes out the rows of all tables; what is left. */
    Aircraft rest(Aircraft aircraft) {
        return (Aircraft) rest(Shape.of(Aircraft.class), aircraft, "", List.of());
    }

    private <R> Object rest(Shape<R> shape, Object record, String path, List<String> keys) {
        R rest = shape.type().cast(record);
        for (Slot slot : shape.slots()) {
            String inner = path + "/" + slot.name();
            if (slot.kind() == Slot.Kind.RECORD) {
                Object left = rest(Shape.of(slot.type()), slot.get(rest), inner, keys);
                rest = shape.with(rest, slot.name(), left);
            } else if (slot.kind() == Slot.Kind.RECORDS && taken(inner).isPresent()) {
                List<?> left =
                        list(taken(inner).orElseThrow(), Shape.of(slot.type()), (List<?>) slot.get(rest), inner, keys);
                rest = shape.with(rest, slot.name(), left);
            }
        }
        return Objects.requireNonNull(rest);
    }

    private Optional<Table> taken(String path) {
        return Optional.ofNullable(BY_PATH.get(path)).filter(table -> !covered.contains(table.name()));
    }

    private List<?> list(Table table, Shape<?> shape, List<?> list, String path, List<String> keys) {
        TableCells form = cells.computeIfAbsent(table, TableCells::of);
        List<TableCells.Row> made = new ArrayList<>();
        for (Object record : list) {
            Optional<TableCells.Row> row = form.row(record);
            if (row.filter(found -> isWhole(form, shape, found, keys)).isEmpty()) {
                return list;
            }
            made.add(row.orElseThrow());
        }
        List<Object> rests = new ArrayList<>();
        for (TableCells.Row row : made) {
            rows.computeIfAbsent(table, t -> new ArrayList<>()).add(new SheetRow(keys, row.texts()));
            String key = Identity.key(shape, row.rest());
            boolean named = TableCells.isName(key);
            rests.add(named ? rest(shape, row.rest(), path, plus(keys, key)) : row.rest());
        }
        return left(form, shape, rests);
    }

    /** A record without a name cannot meet its rest again; a row without any text is no row. */
    private static boolean isWhole(TableCells form, Shape<?> shape, TableCells.Row row, List<String> keys) {
        boolean said = !keys.isEmpty() || row.texts().stream().anyMatch(text -> !text.isEmpty());
        return said && (shape.key().isPresent() || form.isUsedUp(row.rest()));
    }

    /**
     * The records of which something is left. Records of equal name meet in their order, so the ones before must stay too,
     * by name only.
     */
    private static List<Object> left(TableCells form, Shape<?> shape, List<Object> rests) {
        List<Object> left = new ArrayList<>();
        Set<String> needed = new HashSet<>();
        List<Object> backwards = new ArrayList<>(rests);
        Collections.reverse(backwards);
        for (Object rest : backwards) {
            String key = Identity.fold(shape, Identity.key(shape, rest));
            if (!form.isUsedUp(rest)) {
                needed.add(key);
                left.add(rest);
            } else if (needed.contains(key)) {
                left.add(rest);
            }
        }
        Collections.reverse(left);
        return Collections.unmodifiableList(left);
    }

    private static List<String> plus(List<String> keys, String key) {
        List<String> more = new ArrayList<>(keys);
        more.add(key);
        return List.copyOf(more);
    }
}
