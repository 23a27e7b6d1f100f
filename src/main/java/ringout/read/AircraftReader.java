package ringout.read;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import ringout.model.Aircraft;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.read.bind.Bag;
import ringout.read.bind.Completeness;
import ringout.read.source.DiskFolder;
import ringout.read.source.Folder;
import ringout.read.table.Table;
import ringout.text.Problems;
import ringout.text.Span;

/** Reads an aircraft from a folder or a file. Bad input never throws: all of it is told at once in the result. */
public final class AircraftReader {
    private static final Shape<Aircraft> AIRCRAFT = Shape.of(Aircraft.class);
    private static final Slot NAME = AIRCRAFT.slot("name").orElseThrow();

    private AircraftReader() {}

    /** Reads a folder, a JSON file, or one table. */
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

    /** Reads a folder: tables, or {@code aircraft.json}, or both together. */
    public static ReadResult read(Folder folder) {
        Problems problems = new Problems();
        Sources sources = new Sources(folder, problems);
        Bag bag = new Bag(AIRCRAFT, Span.NONE);
        sources.folder("", bag);
        return finish(folder, bag, folder.title(), problems);
    }

    /** Reads one file of a folder: JSON, or a table of leads when its name tells no other kind. */
    public static ReadResult read(Folder folder, String file) {
        Problems problems = new Problems();
        Sources sources = new Sources(folder, problems);
        String title = file.substring(Folder.parent(file).length()).replaceFirst("\\.[^.]*$", "");
        Bag bag = new Bag(AIRCRAFT, Span.NONE);
        if (Table.isTableFile(file)) {
            sources.table(file, Table.ofFile(title).orElse(Table.LEADS), bag);
        } else {
            sources.json(file, bag);
        }
        return finish(folder, bag, title, problems);
    }

    private static ReadResult finish(Folder folder, Bag bag, String title, Problems problems) {
        Set<String> shared = new Libraries(folder, problems).addTo(bag);
        Completeness.check(bag, problems);
        if (!bag.has(NAME)) {
            bag.put(NAME, title);
        }
        return new ReadResult((Aircraft) bag.build(), problems.sorted(), shared);
    }
}
