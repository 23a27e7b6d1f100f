package ringout.read.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ringout.model.Aircraft;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;

/**
 * A kind of table: which list of the aircraft its rows are.
 *
 * @param name name of the file, without its ending
 * @param levels from the aircraft inwards; the last is the list of the rows
 */
public record Table(String name, List<Level> levels) {
    /**
     * One step from the aircraft inwards.
     *
     * @param slot list of records, or a single record
     * @param column head of the column that says which record; empty for a single record and for the rows themselves
     */
    public record Level(Slot slot, String column) {}

    /** All tables, each after the ones whose records it adds to. */
    public static final List<Table> ALL = List.of(
            table("types", "types"),
            table("plugs", "types:type/plugs"),
            table("pins", "types:type/plugs:plug/pins"),
            table("rails", "types:type/rails"),
            table("parts", "types:type/parts"),
            table("loads", "types:type/loads"),
            table("ports", "types:type/ports"),
            table("serials", "types:type/serials"),
            table("devices", "types:type/devices"),
            table("units", "units"),
            table("outputs", "units:unit/outputs"),
            table("leads", "leads"),
            table("joints", "joints"),
            table("buses", "buses"),
            table("messages", "messages"),
            table("rotors", "airframe/rotors"),
            table("covers", "airframe/covers"),
            table("zones", "airframe/zones"),
            table("as-read", "units:unit/asRead"),
            table("found", "record/found"),
            table("baseline", "record/baseline"),
            table("steps", "record/steps"),
            table("tests", "record/tests"),
            table("readings", "record/readings"),
            table("instruments", "record/instruments"),
            table("ticks", "record/ticks"),
            table("signatures", "record/signatures"),
            table("signers", "record/signers"),
            table("photos", "record/photos"),
            table("notes", "record/notes"),
            table("changes", "record/changes"),
            table("torques", "record/torques"),
            table("bom", "record/bom"),
            table("waivers", "waivers"));

    /** The from-to list. */
    public static final Table LEADS = ALL.stream()
            .filter(table -> table.name().equals("leads"))
            .findFirst()
            .orElseThrow();

    private static Table table(String name, String path) {
        List<Level> levels = new ArrayList<>();
        Shape<?> shape = Shape.of(Aircraft.class);
        for (String step : path.split("/")) {
            int colon = step.indexOf(':');
            String field = colon < 0 ? step : step.substring(0, colon);
            Slot slot = shape.slot(field).orElseThrow();
            levels.add(new Level(slot, colon < 0 ? "" : step.substring(colon + 1)));
            shape = Shape.of(slot.type());
        }
        return new Table(name, List.copyOf(levels));
    }

    /** The shape of a row. */
    public Shape<?> shape() {
        return Shape.of(levels.get(levels.size() - 1).slot().type());
    }

    /** Whether the rows are unit types or parts of them, as a library holds. */
    public boolean ofTypes() {
        return levels.get(0).slot().name().equals("types");
    }

    /** The table a file is, by its name: {@code leads.csv}, {@code LW6_wires.tsv}. */
    public static Optional<Table> ofFile(String file) {
        String base = file.replaceFirst("\\.[^.]*$", "");
        String last = base.replaceFirst("^.*[\\s_-]", "");
        Optional<Table> whole = named(base);
        return whole.isPresent() ? whole : named(last);
    }

    private static Optional<Table> named(String word) {
        String name = Synonyms.file(word.toLowerCase(Locale.ROOT));
        return ALL.stream().filter(table -> table.name().equals(name)).findFirst();
    }

    /** Whether a file looks like a table by its ending. */
    public static boolean isTableFile(String file) {
        String lower = file.toLowerCase(Locale.ROOT);
        return lower.endsWith(".csv") || lower.endsWith(".tsv");
    }
}
