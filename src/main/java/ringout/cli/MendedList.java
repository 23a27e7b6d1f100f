package ringout.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import ringout.model.Aircraft;
import ringout.model.Lead;
import ringout.model.Step;
import ringout.model.Unit;
import ringout.model.shape.Identity;
import ringout.model.shape.Shape;
import ringout.read.json.JsonPatch;
import ringout.read.table.Table;
import ringout.read.table.TablePatch;
import ringout.text.Span;

/**
 * The user's own files with a repair made in them: only the cells that change are touched. Nothing is returned where that
 * cannot be done; the caller compares what the files now say with the mended list.
 */
final class MendedList {
    private final Path folder;
    private final Map<String, String> files = new TreeMap<>();

    private MendedList(Path folder) {
        this.folder = folder;
    }

    /** File names and texts as they stand in a folder of tables. */
    static Map<String, String> texts(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> entries = Files.list(folder)) {
            for (Path file : entries.filter(Files::isRegularFile).sorted().toList()) {
                String name = String.valueOf(file.getFileName());
                if (Table.isTableFile(name) || name.equals("aircraft.json")) {
                    texts.put(name, new String(Files.readAllBytes(file), java.nio.charset.StandardCharsets.UTF_8));
                }
            }
        }
        return texts;
    }

    /**
     * File names and new texts.
     *
     * @param folder the user's folder of tables
     * @param before the aircraft read from it
     * @param after the mended one, its libraries named from where the files go
     */
    static Optional<Map<String, String>> of(Path folder, Aircraft before, Aircraft after) throws IOException {
        MendedList list = new MendedList(folder);
        list.files.putAll(texts(folder));
        boolean done = list.rows(Lead.class, before.leads(), after.leads(), "leads")
                && list.rows(Unit.class, before.units(), after.units(), "units")
                && list.words(List.of("library"), before.library(), after.library())
                && list.words(
                        List.of("airframe", "plugOrder"),
                        before.airframe().plugOrder(),
                        after.airframe().plugOrder())
                && list.steps(before.record().steps(), after.record().steps());
        return done ? Optional.of(list.files) : Optional.empty();
    }

    private boolean words(List<String> fields, List<String> now, List<String> then) {
        if (now.equals(then)) {
            return true;
        }
        Optional<String> text =
                Optional.ofNullable(files.get("aircraft.json")).flatMap(json -> JsonPatch.words(json, fields, then));
        text.ifPresent(json -> files.put("aircraft.json", json));
        return text.isPresent();
    }

    /** Objects and values of the plan's steps; a step more or less is not written in place. */
    private boolean steps(List<Step> now, List<Step> then) {
        for (int i = 0; i < Math.min(now.size(), then.size()); i++) {
            List<String> step = List.of("record", "steps", String.valueOf(i));
            String said = then.get(i).says().or("");
            if (!words(
                            joined(step, "objects"),
                            now.get(i).objects(),
                            then.get(i).objects())
                    || (!said.equals(now.get(i).says().or("")) && !word(joined(step, "says"), said))) {
                return false;
            }
        }
        return now.size() == then.size();
    }

    private static List<String> joined(List<String> fields, String last) {
        List<String> all = new ArrayList<>(fields);
        all.add(last);
        return List.copyOf(all);
    }

    private boolean word(List<String> fields, String then) {
        Optional<String> text =
                Optional.ofNullable(files.get("aircraft.json")).flatMap(json -> JsonPatch.word(json, fields, then));
        text.ifPresent(json -> files.put("aircraft.json", json));
        return text.isPresent();
    }

    private <R> boolean rows(Class<R> type, List<R> now, List<R> then, String tableName) throws IOException {
        Shape<R> shape = Shape.of(type);
        Map<String, R> mended = new LinkedHashMap<>();
        then.forEach(record -> mended.put(Identity.key(shape, record), record));
        Map<String, List<TablePatch.Change>> changes = new TreeMap<>();
        for (R record : now) {
            Optional<R> other = Optional.ofNullable(mended.remove(Identity.key(shape, record)));
            if (other.isEmpty() || !other.get().equals(record)) {
                Span at = (Span) shape.slot("at").orElseThrow().get(record);
                changes.computeIfAbsent(at.file(), file -> new ArrayList<>())
                        .add(new TablePatch.Change(at.line(), record, other.map(Object.class::cast)));
            }
        }
        if (!mended.isEmpty()) {
            changes.computeIfAbsent(tableName + ".csv", file -> new ArrayList<>());
        }
        for (Map.Entry<String, List<TablePatch.Change>> entry : changes.entrySet()) {
            boolean last = entry.getKey().equals(tableName + ".csv");
            if (!patched(entry.getKey(), entry.getValue(), last ? List.copyOf(mended.values()) : List.of())) {
                return false;
            }
        }
        return true;
    }

    private boolean patched(String file, List<TablePatch.Change> changes, List<Object> added) throws IOException {
        Optional<Table> table = files.containsKey(file) ? Table.ofFile(file) : Optional.empty();
        if (table.isEmpty()) {
            return false;
        }
        Optional<String> text = TablePatch.of(Files.readAllBytes(folder.resolve(file)), table.get(), changes, added);
        text.ifPresent(changed -> files.put(file, changed));
        return text.isPresent();
    }
}
