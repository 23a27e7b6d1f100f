package ringout.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import ringout.model.Aircraft;
import ringout.model.shape.Shape;
import ringout.present.csv.AircraftTables;
import ringout.present.csv.SheetCsv;
import ringout.present.json.AircraftJson;
import ringout.present.xlsx.XlsxWriter;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.cells.SheetCells;
import ringout.read.cells.Workbooks;
import ringout.read.source.MemoryFolder;
import ringout.read.table.Sheets;
import ringout.read.table.Table;
import ringout.text.Problems;

/** What an aircraft can be written as. The user's own tables are kept cell for cell where the form has room for them. */
enum Target {
    /** One JSON file. */
    JSON,
    /** One workbook, a worksheet for each table. */
    WORKBOOK,
    /** One table. */
    TABLE,
    /** A folder of tables. */
    FOLDER;

    private static final Shape<Aircraft> AIRCRAFT = Shape.of(Aircraft.class);

    /** The form a name asks for. */
    static Target of(Path to) {
        String lower = to.toString().toLowerCase(Locale.ROOT);
        if (lower.endsWith(".json")) {
            return JSON;
        }
        if (lower.endsWith(".xlsx")) {
            return WORKBOOK;
        }
        return lower.endsWith(".csv") ? TABLE : FOLDER;
    }

    /** Whether it is one file. */
    boolean isFile() {
        return this != FOLDER;
    }

    /**
     * The files to write; nothing where this form has no room for the aircraft.
     *
     * @param own the user's tables
     * @param name name of the file, where it is one
     */
    Optional<Map<String, byte[]>> files(Aircraft aircraft, List<SheetCells> own, String name) {
        return switch (this) {
            case JSON -> Optional.of(lossless(aircraft, text(name, AircraftJson.of(aircraft))));
            case WORKBOOK -> Optional.of(workbook(aircraft, own, name));
            case TABLE ->
                own.size() == 1
                        ? Optional.of(text(name, SheetCsv.of(own.get(0))))
                                .filter(file -> isLossless(aircraft, file, ""))
                        : Optional.empty();
            case FOLDER -> Optional.of(folder(aircraft, own));
        };
    }

    /** Names of the user's tables whose heads are not among those written; none for JSON, which has no heads. */
    List<String> plain(List<SheetCells> own, Map<String, byte[]> files) {
        if (this == JSON) {
            return List.of();
        }
        Set<String> heads = new LinkedHashSet<>();
        files.forEach((name, bytes) -> written(name, bytes).forEach(sheet -> heads.add(head(sheet))));
        return own.stream()
                .filter(sheet -> Sheets.table(sheet).isPresent() && !heads.contains(head(sheet)))
                .map(SheetCells::name)
                .toList();
    }

    private static List<SheetCells> written(String name, byte[] bytes) {
        Problems problems = new Problems();
        if (Workbooks.isWorkbook(name)) {
            return Workbooks.read(name, bytes, problems);
        }
        return Table.isTableFile(name) ? List.of(Sheets.ofText(name, bytes, problems)) : List.of();
    }

    /** The first row that holds anything. */
    private static String head(SheetCells sheet) {
        return sheet.rows().stream()
                .filter(row -> !row.isBlank())
                .findFirst()
                .map(row -> String.join("\t", row.texts()).strip())
                .orElse("");
    }

    private static Map<String, byte[]> text(String name, String text) {
        return Map.of(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private static Map<String, byte[]> workbook(Aircraft aircraft, List<SheetCells> own, String name) {
        KeptList kept = KeptList.of(own, aircraft);
        List<SheetCells> first = new ArrayList<>();
        for (SheetCells sheet : own) {
            boolean table = Sheets.table(sheet).isPresent();
            if (kept.sheets().containsValue(sheet) || !table) {
                first.add(sheet);
            }
        }
        Map<String, byte[]> file =
                Map.of(name, XlsxWriter.of(distinct(AircraftTables.sheets(kept.rest(), first, kept.covered()))));
        return isLossless(aircraft, file, "")
                ? file
                : lossless(aircraft, Map.of(name, XlsxWriter.of(AircraftTables.sheets(aircraft, List.of(), Set.of()))));
    }

    /** Worksheets of a workbook have different names of at most 31 letters, told apart without regard to case. */
    private static List<SheetCells> distinct(List<SheetCells> sheets) {
        Set<String> taken = new LinkedHashSet<>();
        List<SheetCells> distinct = new ArrayList<>();
        for (SheetCells sheet : sheets) {
            String plain = sheet.name().replaceAll("[\\\\/?*\\[\\]:]", " ");
            String name = plain.substring(0, Math.min(31, plain.length()));
            for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
                name = plain.substring(0, Math.min(27, plain.length())) + " " + i;
            }
            distinct.add(new SheetCells(name, sheet.hidden(), sheet.rows()));
        }
        return distinct;
    }

    /** A folder takes the list of one file as it is; a folder of tables that goes to a folder is written in plain heads. */
    private static Map<String, byte[]> folder(Aircraft aircraft, List<SheetCells> own) {
        KeptList kept = KeptList.of(own, aircraft);
        if (!kept.covered().isEmpty()) {
            Map<String, String> texts = new TreeMap<>(AircraftTables.of(kept.rest(), kept.covered()));
            kept.sheets().forEach((file, sheet) -> texts.put(file, SheetCsv.of(sheet)));
            Map<String, byte[]> files = Conversion.bytes(texts);
            if (isLossless(aircraft, files, "")) {
                return files;
            }
        }
        return lossless(aircraft, Conversion.bytes(AircraftTables.of(aircraft)));
    }

    private static Map<String, byte[]> lossless(Aircraft aircraft, Map<String, byte[]> files) {
        if (!isLossless(aircraft, files, "")) {
            throw new IllegalStateException("what would be written is another aircraft; nothing was written");
        }
        return files;
    }

    /** Whether what would be written reads back as the same aircraft; if not it is not written. */
    static boolean isLossless(Aircraft aircraft, Map<String, byte[]> files, String title) {
        Aircraft alone = AIRCRAFT.with(aircraft, "library", List.of());
        MemoryFolder folder = MemoryFolder.named(title);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            folder = folder.with(file.getKey(), file.getValue());
        }
        String only = files.keySet().iterator().next();
        boolean one = files.size() == 1 && !only.equals("aircraft.json");
        ReadResult again = one ? AircraftReader.read(folder, only) : AircraftReader.read(folder);
        Aircraft back = AIRCRAFT.with(again.aircraft(), "library", List.of());
        Aircraft called = Table.isTableFile(only) && one ? AIRCRAFT.with(back, "name", alone.name()) : back;
        return AircraftJson.of(alone).equals(AircraftJson.of(called));
    }
}
