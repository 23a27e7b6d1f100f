package ringout.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ringout.model.Aircraft;
import ringout.model.UnitType;
import ringout.model.shape.Shape;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.cells.SheetCells;
import ringout.read.intake.Answers;
import ringout.text.Problem;
import ringout.text.Span;

/**
 * Turns tables, workbooks and JSON into one another. Nothing is written when something could not be read as meant, when it
 * would overwrite unasked, or when what would be written did not read back as the same aircraft.
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
         * @param plain tables of the user that went out in plain heads, because their cells could not say all of it
         */
        record Written(List<Path> files, List<String> plain) implements Outcome {}

        /**
         * Nothing is written.
         *
         * @param problems why
         */
        record Refused(List<Problem> problems) implements Outcome {}
    }

    /**
     * Converts an aircraft: to one JSON file, workbook or table when the target's name ends in .json, .xlsx or .csv, else to a
     * folder of tables.
     *
     * @param from folder or file to read
     * @param to file or folder to write
     */
    public static Outcome convert(Path from, Path to, Options options) {
        return convert(from, to, options, Answers.NONE);
    }

    /** The same, with answers to what was asked about a list. */
    public static Outcome convert(Path from, Path to, Options options, Answers answers) {
        ReadResult read = AircraftReader.read(from, answers);
        return read.ok() ? write(read, read.aircraft(), from, to, options) : new Outcome.Refused(read.problems());
    }

    /**
     * Writes an aircraft that was read and perhaps mended. Of a folder of tables that goes to a folder only the cells that
     * differ are changed where that is possible.
     */
    static Outcome write(ReadResult read, Aircraft now, Path from, Path to, Options options) {
        Target form = Target.of(to);
        Path target = to.toAbsolutePath().normalize();
        try {
            if (!options.overwrite() && taken(target)) {
                return refused(
                        to, "there is something already", "say that it may be overwritten, or name another place");
            }
            if (Files.exists(target) && Files.isDirectory(target) == form.isFile()) {
                return refused(to, form.isFile() ? "this is a folder" : "this is a file", "name another place");
            }
            Path home = form.isFile() ? parent(target) : target;
            Aircraft result = options.selfContained()
                    ? AIRCRAFT.with(now, "library", List.of())
                    : shared(read, Libraries.rebased(now, home(from), home));
            Optional<Map<String, byte[]>> files = patched(read, now, result, from, form, options);
            List<SheetCells> own = KeptList.sheets(read, from);
            List<String> plain = List.of();
            if (files.isEmpty()) {
                files = form.files(result, own, String.valueOf(target.getFileName()));
                plain = files.map(out -> form.plain(own, out)).orElse(List.of());
            }
            return files.isEmpty()
                    ? refused(to, "one table does not hold all of this aircraft", "name a folder, .xlsx or .json")
                    : new Outcome.Written(Publisher.writeBytes(files.get(), home, !form.isFile()), plain);
        } catch (IOException e) {
            return refused(to, "cannot be written: " + e.getMessage(), "");
        }
    }

    private static Optional<Map<String, byte[]>> patched(
            ReadResult read, Aircraft now, Aircraft result, Path from, Target form, Options options)
            throws IOException {
        boolean inPlace = !now.equals(read.aircraft())
                && form == Target.FOLDER
                && Files.isDirectory(from)
                && !options.selfContained();
        Optional<Map<String, String>> texts =
                inPlace ? MendedList.of(from, shared(read, read.aircraft()), result) : Optional.empty();
        return texts.map(Conversion::bytes).filter(files -> Target.isLossless(result, files, title(from)));
    }

    static Map<String, byte[]> bytes(Map<String, String> texts) {
        Map<String, byte[]> files = new TreeMap<>();
        texts.forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
        return files;
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
}
