package ringout.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import ringout.model.shape.Shape;
import ringout.read.bind.Bag;
import ringout.read.bind.Merge;
import ringout.read.intake.Intake;
import ringout.read.json.FrozenMark;
import ringout.read.json.JsonReader;
import ringout.read.source.Folder;
import ringout.read.source.Loaded;
import ringout.read.table.Table;
import ringout.read.table.TableReader;
import ringout.text.Nearest;
import ringout.text.Problem;
import ringout.text.Problems;
import ringout.text.Span;

/** Opens the files of an aircraft or a library and puts what they say together. */
final class Sources {
    /** Name of the file in a folder that holds what no table holds. */
    static final String MAIN_FILE = "aircraft.json";

    private final Folder folder;
    private final Problems problems;
    private final Intake intake;
    private Optional<FrozenMark> frozen = Optional.empty();

    Sources(Folder folder, Problems problems, Intake intake) {
        this.folder = folder;
        this.problems = problems;
        this.intake = intake;
    }

    /** Reads the tables of a folder, then its main file; the tables' rows keep their order. */
    void folder(String inside, Bag aircraft) {
        List<String> files = folder.files(inside);
        boolean any = tables(inside, files, aircraft);
        if (files.contains(MAIN_FILE)) {
            json(inside + MAIN_FILE, aircraft);
        } else if (!any) {
            problems.add(
                    new Span(MAIN_FILE, 0, 0, ""),
                    "there is no such file",
                    "an aircraft is a JSON file, or a folder with tables (units.csv, leads.csv) or " + MAIN_FILE);
        }
    }

    /** Reads the tables of a folder; whether there was any. */
    boolean tables(String inside, List<String> files, Bag aircraft) {
        List<String> known = new ArrayList<>();
        Map<String, List<String>> byTable = new HashMap<>();
        for (String file : files) {
            if (Table.isTableFile(file)) {
                known.add(file);
                Table.ofFile(file)
                        .ifPresentOrElse(
                                table -> byTable.computeIfAbsent(table.name(), name -> new ArrayList<>())
                                        .add(file),
                                () -> unknown(inside + file));
            }
        }
        for (Table table : Table.ALL) {
            byTable.getOrDefault(table.name(), List.of()).forEach(file -> table(inside + file, table, aircraft));
        }
        return !known.isEmpty();
    }

    private void unknown(String file) {
        List<String> names =
                Table.ALL.stream().map(table -> table.name() + ".csv").toList();
        String near = Nearest.hint(file.toLowerCase(Locale.ROOT), names);
        problems.add(
                new Span(file, 0, 0, ""),
                "no table of this name is read",
                near.isEmpty() ? "move it away, or name it " + names.stream().collect(Collectors.joining(", ")) : near);
    }

    /** Reads one table into the aircraft. */
    void table(String file, Table table, Bag aircraft) {
        load(file, why -> absent(file, why))
                .ifPresent(bytes -> TableReader.read(file, bytes, table, aircraft, problems, intake));
    }

    /** Reads a JSON file and merges it. */
    void json(String file, Bag into) {
        load(file).ifPresent(bytes -> {
            frozen = FrozenMark.of(bytes);
            Merge.into(into, JsonReader.read(file, bytes, into.shape(), problems), problems);
        });
    }

    /** What the aircraft's own JSON file says of itself, if it is a frozen revision. */
    Optional<FrozenMark> frozen() {
        return frozen;
    }

    /** Reads a JSON file, telling why it cannot be opened. */
    Optional<Bag> json(String file, Shape<?> shape, Function<String, Problem> ifAbsent) {
        return load(file, ifAbsent).map(bytes -> JsonReader.read(file, bytes, shape, problems));
    }

    private static Problem absent(String file, String why) {
        return Problem.of(new Span(file, 0, 0, ""), why);
    }

    /** The content of a file, telling why it cannot be opened. */
    Optional<byte[]> load(String file) {
        return load(file, why -> absent(file, why));
    }

    private Optional<byte[]> load(String file, Function<String, Problem> ifAbsent) {
        Loaded loaded = folder.load(file);
        if (loaded instanceof Loaded.Bytes bytes) {
            return Optional.of(bytes.content());
        }
        problems.add(ifAbsent.apply(((Loaded.Absent) loaded).why()));
        return Optional.empty();
    }
}
