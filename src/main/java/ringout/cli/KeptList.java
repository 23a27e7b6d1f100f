package ringout.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringout.model.Aircraft;
import ringout.model.shape.Given;
import ringout.model.shape.Identity;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.present.csv.SheetCsv;
import ringout.present.json.AircraftJson;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.cells.SheetCells;
import ringout.read.source.MemoryFolder;
import ringout.read.table.Sheets;
import ringout.read.table.Table;
import ringout.text.Problems;

/**
 * The tables of the user that go out as they came in, cell for cell: those that still say what the aircraft says. What the
 * aircraft has beyond them goes beside them.
 *
 * @param sheets the worksheets kept, by the name of their file in a folder of tables; those that are no table last
 * @param rest the aircraft, of the lists covered only what their cells do not say
 * @param covered names of the tables covered
 */
record KeptList(Map<String, SheetCells> sheets, Aircraft rest, Set<String> covered) {
    /** The tables of what was read: of a workbook, of one text file, or of a folder of them. */
    static List<SheetCells> sheets(ReadResult read, Path from) throws IOException {
        if (!read.sheets().isEmpty() || !Files.isDirectory(from)) {
            return read.sheets().stream()
                    .filter(sheet -> !sheet.name().equals("aircraft.json"))
                    .toList();
        }
        List<SheetCells> sheets = new ArrayList<>();
        try (var entries = Files.list(from)) {
            for (Path file : entries.filter(Files::isRegularFile).sorted().toList()) {
                String name = String.valueOf(file.getFileName());
                if (Table.isTableFile(name) && !name.startsWith(".")) {
                    sheets.add(Sheets.ofText(name, Files.readAllBytes(file), new Problems()));
                }
            }
        }
        return sheets;
    }

    /** What of the tables can be kept for an aircraft. */
    static KeptList of(List<SheetCells> sheets, Aircraft aircraft) {
        Map<String, SheetCells> kept = named(sheets);
        Set<String> covered = new LinkedHashSet<>();
        MemoryFolder folder = MemoryFolder.named("kept");
        for (Map.Entry<String, SheetCells> entry : kept.entrySet()) {
            folder = folder.with(entry.getKey(), SheetCsv.of(entry.getValue()));
        }
        Aircraft said = AircraftReader.read(folder).aircraft();
        Aircraft rest = aircraft;
        for (Table table : Table.ALL) {
            boolean there = kept.keySet().stream().anyMatch(name -> isOf(name, table));
            Optional<Aircraft> less = there ? without(table, said, rest) : Optional.empty();
            if (less.isPresent()) {
                rest = less.get();
                covered.add(table.name());
            } else {
                kept.keySet().removeIf(name -> isOf(name, table));
            }
        }
        return new KeptList(kept, rest, covered);
    }

    private static boolean isOf(String file, Table table) {
        return Table.ofFile(file).filter(table::equals).isPresent();
    }

    private static Map<String, SheetCells> named(List<SheetCells> sheets) {
        Map<Table, List<SheetCells>> byTable = new LinkedHashMap<>();
        for (SheetCells sheet : sheets) {
            Sheets.table(sheet)
                    .filter(KeptList::isFlat)
                    .ifPresent(table -> byTable.computeIfAbsent(table, t -> new ArrayList<>())
                            .add(sheet));
        }
        Map<String, SheetCells> named = new LinkedHashMap<>();
        byTable.forEach((table, same) -> {
            for (int i = 0; i < same.size(); i++) {
                String before = same.size() == 1 ? "" : String.format(Locale.ROOT, "%02d_", i + 1);
                named.put(before + table.name() + ".csv", same.get(i));
            }
        });
        return named;
    }

    /** Whether the rows of a table are a list of the aircraft itself or of its record. */
    private static boolean isFlat(Table table) {
        List<Table.Level> levels = table.levels();
        return levels.get(levels.size() - 1).slot().kind() == Slot.Kind.RECORDS
                && levels.subList(0, levels.size() - 1).stream()
                        .allMatch(level -> level.slot().kind() == Slot.Kind.RECORD);
    }

    /** The aircraft without what the table says; nothing where the table says something else. */
    private static Optional<Aircraft> without(Table table, Aircraft said, Aircraft aircraft) {
        List<?> cells = list(table, said);
        List<?> now = list(table, aircraft);
        if (cells.size() != now.size()) {
            return Optional.empty();
        }
        Shape<?> shape = table.shape();
        List<Object> left = new ArrayList<>();
        boolean any = false;
        for (int i = 0; i < now.size(); i++) {
            Optional<Object> more = beyond(shape, cells.get(i), now.get(i));
            if (more.isEmpty()) {
                return Optional.empty();
            }
            left.add(more.get());
            any |= Given.beyondKey(shape, more.get());
        }
        boolean meets = shape.key().isPresent() || !any;
        return meets ? Optional.of((Aircraft) with(aircraft, table, 0, any ? left : List.of())) : Optional.empty();
    }

    private static List<?> list(Table table, Aircraft aircraft) {
        Object at = aircraft;
        for (Table.Level level : table.levels()) {
            at = level.slot().get(at);
        }
        return (List<?>) at;
    }

    private static Object with(Object record, Table table, int level, List<Object> list) {
        Slot slot = table.levels().get(level).slot();
        boolean last = level == table.levels().size() - 1;
        Object value = last ? list : with(slot.get(record), table, level + 1, list);
        return put(Shape.of(record.getClass()), record, slot, value);
    }

    private static <R> Object put(Shape<R> shape, Object record, Slot slot, Object value) {
        return java.util.Objects.requireNonNull(shape.with(shape.type().cast(record), slot.name(), value));
    }

    /** What a record says beyond its cells, under its name; nothing where they say something else. */
    private static Optional<Object> beyond(Shape<?> shape, Object cells, Object now) {
        if (!Identity.key(shape, cells).equals(Identity.key(shape, now))) {
            return Optional.empty();
        }
        Object left = now;
        for (Slot slot : shape.slots()) {
            Object here = slot.get(cells);
            if (slot.kind() == Slot.Kind.SPAN || shape.isKey(slot) || !Given.is(slot, here)) {
                continue;
            }
            if (!text(shape, slot, here).equals(text(shape, slot, slot.get(now)))) {
                return Optional.empty();
            }
            left = put(shape, left, slot, Shape.absent(slot));
        }
        return Optional.of(left);
    }

    private static String text(Shape<?> shape, Slot slot, Object value) {
        return AircraftJson.line(put(shape, shape.empty(), slot, value));
    }
}
