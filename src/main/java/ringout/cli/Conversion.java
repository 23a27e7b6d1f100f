package ringout.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ringout.model.Aircraft;
import ringout.model.UnitType;
import ringout.model.shape.Shape;
import ringout.present.csv.AircraftTables;
import ringout.present.json.AircraftJson;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.source.MemoryFolder;
import ringout.read.table.Table;
import ringout.text.Problem;
import ringout.text.Span;

/**
 * Turns tables into JSON and back. Nothing is written when something could not be read as meant, when it would overwrite
 * unasked, or when what would be written did not read back as the same aircraft.
 */
public final class Conversion {
    private static final Shape<Aircraft> AIRCRAFT = Shape.of(Aircraft.class);

    private Conversion() {}

    /**
     * How to convert.
     *
     * @param overwrite may replace what stands at the target
     * @param selfContained takes the unit types of libraries into the result instead of naming the libraries
     */
    public record Options(boolean overwrite, boolean selfContained) {}

    /** The outcome. */
    public sealed interface Outcome {
        /**
         * All is written.
         *
         * @param files the files, in order
         */
        record Written(List<Path> files) implements Outcome {}

        /**
         * Nothing is written.
         *
         * @param problems why
         */
        record Refused(List<Problem> problems) implements Outcome {}
    }

    /**
     * Converts an aircraft: to one JSON file when the target's name ends in .json, else to a folder of tables.
     *
     * @param from folder or file to read
     * @param to file or folder to write
     */
    public static Outcome convert(Path from, Path to, Options options) {
        ReadResult read = AircraftReader.read(from);
        return read.ok() ? write(read, read.aircraft(), from, to, options) : new Outcome.Refused(read.problems());
    }

    /**
     * Writes an aircraft that was read and perhaps mended. Of a folder of tables that goes to a folder only the cells that
     * differ are changed where that is possible.
     */
    static Outcome write(ReadResult read, Aircraft now, Path from, Path to, Options options) {
        boolean json = to.toString().toLowerCase(Locale.ROOT).endsWith(".json");
        Path target = to.toAbsolutePath().normalize();
        try {
            if (!options.overwrite() && taken(target)) {
                return refused(
                        to, "there is something already", "say that it may be overwritten, or name another place");
            }
            if (Files.exists(target) && Files.isDirectory(target) == json) {
                return refused(to, json ? "this is a folder" : "this is a file", "name another place");
            }
            Aircraft result = options.selfContained()
                    ? AIRCRAFT.with(now, "library", List.of())
                    : shared(read, Libraries.rebased(now, home(from), json ? parent(target) : target));
            boolean inPlace =
                    !now.equals(read.aircraft()) && !json && Files.isDirectory(from) && !options.selfContained();
            Optional<Map<String, String>> patched =
                    inPlace ? MendedList.of(from, shared(read, read.aircraft()), result) : Optional.empty();
            Map<String, String> files = patched.filter(texts -> lossless(result, texts, title(from)))
                    .orElseGet(() -> whole(result, json, target));
            return new Outcome.Written(Publisher.write(files, json ? parent(target) : target, !json));
        } catch (IOException e) {
            return refused(to, "cannot be written: " + e.getMessage(), "");
        }
    }

    private static Outcome refused(Path to, String why, String hint) {
        return new Outcome.Refused(List.of(new Problem(new Span(to.toString(), 0, 0, ""), why, hint)));
    }

    private static boolean taken(Path target) throws IOException {
        if (!Files.isDirectory(target)) {
            return Files.exists(target);
        }
        try (var entries = Files.list(target)) {
            return entries.findAny().isPresent();
        }
    }

    private static String title(Path folder) {
        Path name = folder.toAbsolutePath().normalize().getFileName();
        return name == null ? "" : name.toString();
    }

    private static Path home(Path from) {
        Path whole = from.toAbsolutePath().normalize();
        return Files.isDirectory(whole) ? whole : parent(whole);
    }

    private static Path parent(Path path) {
        Path parent = path.getParent();
        return parent == null ? path : parent;
    }

    /** The aircraft without the types that its libraries give. */
    private static Aircraft shared(ReadResult read, Aircraft rebased) {
        List<UnitType> own = rebased.types().stream()
                .filter(type -> !read.libraryTypes().contains(type.name()))
                .toList();
        return AIRCRAFT.with(rebased, "types", own);
    }

    private static Map<String, String> whole(Aircraft aircraft, boolean json, Path target) {
        Map<String, String> files = json
                ? Map.of(String.valueOf(target.getFileName()), AircraftJson.of(aircraft))
                : AircraftTables.of(aircraft);
        if (!lossless(aircraft, files, "")) {
            throw new IllegalStateException("what would be written is another aircraft; nothing was written");
        }
        return files;
    }

    /** Whether what would be written reads back as the same aircraft; if not it is not written. */
    private static boolean lossless(Aircraft aircraft, Map<String, String> files, String title) {
        Aircraft alone = AIRCRAFT.with(aircraft, "library", List.of());
        Map<String, String> texts = new TreeMap<>(files);
        MemoryFolder folder = MemoryFolder.named(title);
        for (Map.Entry<String, String> file : texts.entrySet()) {
            folder = folder.with(file.getKey(), file.getValue());
        }
        boolean table = texts.keySet().stream().anyMatch(Table::isTableFile);
        String only = texts.keySet().iterator().next();
        ReadResult again = table ? AircraftReader.read(folder) : AircraftReader.read(folder, only);
        Aircraft back = AIRCRAFT.with(again.aircraft(), "library", List.of());
        return AircraftJson.of(alone).equals(AircraftJson.of(back));
    }
}
