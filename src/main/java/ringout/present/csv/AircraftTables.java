package ringout.present.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import ringout.model.Aircraft;
import ringout.model.shape.Scalars;
import ringout.present.json.AircraftJson;
import ringout.read.cells.CellText;
import ringout.read.cells.RowCells;
import ringout.read.cells.SheetCells;
import ringout.read.table.Table;

/**
 * An aircraft as a folder of tables, and aircraft.json for what no table holds: lists inside rows, and the rare value that
 * a cell could not carry unchanged. Read back it is the same aircraft, row for row.
 */
public final class AircraftTables {
    private static final int MOST = 30_000;

    private AircraftTables() {}

    /** File names and their texts, sorted by name. */
    public static Map<String, String> of(Aircraft aircraft) {
        return of(aircraft, Set.of());
    }

    /** The same without the tables of these names: what the aircraft has of them goes to aircraft.json. */
    public static Map<String, String> of(Aircraft aircraft, Set<String> covered) {
        Map<String, String> files = new TreeMap<>();
        Splitter splitter = new Splitter(covered);
        Aircraft rest = splitter.rest(aircraft);
        for (Table table : Table.ALL) {
            List<SheetRow> rows = splitter.rows(table);
            if (!rows.isEmpty()) {
                files.put(table.name() + ".csv", SheetText.of(table, rows));
            }
        }
        files.put("aircraft.json", AircraftJson.of(rest));
        return files;
    }

    /**
     * The same as worksheets, what no table holds on one of its own as text.
     *
     * @param kept worksheets of the user's own, written as they are in place of the tables they are
     * @param covered names of these tables
     */
    public static List<SheetCells> sheets(Aircraft aircraft, List<SheetCells> kept, Set<String> covered) {
        List<SheetCells> sheets = new ArrayList<>(kept);
        Splitter splitter = new Splitter(covered);
        Aircraft rest = splitter.rest(aircraft);
        for (Table table : Table.ALL) {
            List<SheetRow> rows = splitter.rows(table);
            if (!rows.isEmpty()) {
                sheets.add(sheet(table.name(), SheetText.lines(table, rows)));
            }
        }
        List<List<String>> text =
                AircraftJson.of(rest).lines().map(AircraftTables::pieces).toList();
        sheets.add(sheet("aircraft.json", text));
        return List.copyOf(sheets);
    }

    /** A line in as many cells as it needs: a cell of a workbook holds 32,767 letters. */
    private static List<String> pieces(String line) {
        List<String> pieces = new ArrayList<>();
        for (int i = 0; i < line.length(); i += MOST) {
            pieces.add(line.substring(i, Math.min(line.length(), i + MOST)));
        }
        return pieces;
    }

    /** A number that a workbook gives back in the same digits is held as one, so that it can be summed. */
    private static CellText cell(String text) {
        boolean number = text.matches("-?\\d{1,12}(\\.\\d{1,9})?")
                && Scalars.number(Double.parseDouble(text)).equals(text);
        return number ? new CellText(text, CellText.Kind.NUMBER) : CellText.of(text);
    }

    private static SheetCells sheet(String name, List<List<String>> lines) {
        List<RowCells> rows = new ArrayList<>();
        for (List<String> line : lines) {
            rows.add(new RowCells(
                    rows.size() + 1,
                    false,
                    line.stream().map(AircraftTables::cell).toList()));
        }
        return new SheetCells(name, false, List.copyOf(rows));
    }
}
