package ringout.present.csv;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringout.model.Aircraft;
import ringout.present.json.AircraftJson;
import ringout.read.table.Table;

/**
 * An aircraft as a folder of tables, and aircraft.json for what no table holds: lists inside rows, and the rare value that
 * a cell could not carry unchanged. Read back it is the same aircraft, row for row.
 */
public final class AircraftTables {
    private AircraftTables() {}

    /** File names and their texts, sorted by name. */
    public static Map<String, String> of(Aircraft aircraft) {
        Map<String, String> files = new TreeMap<>();
        Splitter splitter = new Splitter();
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
}
