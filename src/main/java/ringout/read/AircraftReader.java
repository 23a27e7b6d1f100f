package ringout.read;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringout.model.Aircraft;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.read.bind.Bag;
import ringout.read.bind.Completeness;
import ringout.read.json.JsonReader;
import ringout.read.source.DiskFolder;
import ringout.read.source.Folder;
import ringout.read.source.Loaded;
import ringout.text.Problem;
import ringout.text.Problems;
import ringout.text.Span;

/** Reads an aircraft from a folder or a file. Bad input never throws: all of it is told at once in the result. */
public final class AircraftReader {
    /** Name of the file in a folder that holds what no table holds. */
    public static final String MAIN_FILE = "aircraft.json";

    private static final Shape<Aircraft> AIRCRAFT = Shape.of(Aircraft.class);

    private final Folder folder;
    private final Problems problems = new Problems();

    private AircraftReader(Folder folder) {
        this.folder = folder;
    }

    /** Reads a folder or a JSON file. */
    public static ReadResult read(Path path) {
        if (Files.isDirectory(path)) {
            return read(new DiskFolder(path));
        }
        Path whole = path.toAbsolutePath().normalize();
        Path parent = whole.getParent();
        Path name = whole.getFileName();
        return parent == null || name == null
                ? read(new DiskFolder(whole))
                : read(new DiskFolder(parent), name.toString());
    }

    /** Reads a folder: {@link #MAIN_FILE}, or tables, or both. */
    public static ReadResult read(Folder folder) {
        AircraftReader reader = new AircraftReader(folder);
        List<String> files = folder.files("");
        if (!files.contains(MAIN_FILE)) {
            reader.problems.add(
                    new Span(MAIN_FILE, 0, 0, ""),
                    "there is no such file",
                    "an aircraft is a folder with tables or " + MAIN_FILE);
        }
        return reader.finish(reader.json(MAIN_FILE).orElseGet(() -> new Bag(AIRCRAFT, Span.NONE)), folder.title());
    }

    /** Reads one JSON file of a folder. */
    public static ReadResult read(Folder folder, String file) {
        AircraftReader reader = new AircraftReader(folder);
        String title = file.substring(Folder.parent(file).length()).replaceFirst("\\.[^.]*$", "");
        Bag bag = reader.json(file).orElseGet(() -> new Bag(AIRCRAFT, Span.NONE));
        return reader.finish(bag, title);
    }

    private Optional<Bag> json(String file) {
        Loaded loaded = folder.load(file);
        if (loaded instanceof Loaded.Bytes bytes) {
            return Optional.of(JsonReader.read(file, bytes.content(), AIRCRAFT, problems));
        }
        problems.add(Problem.of(new Span(file, 0, 0, ""), ((Loaded.Absent) loaded).why()));
        return Optional.empty();
    }

    private ReadResult finish(Bag bag, String title) {
        Set<String> shared = new Libraries(folder, problems).addTo(bag);
        Completeness.check(bag, problems);
        Slot name = AIRCRAFT.slot("name").orElseThrow();
        if (!bag.has(name)) {
            bag.put(name, title);
        }
        return new ReadResult((Aircraft) bag.build(), problems.sorted(), shared);
    }
}
