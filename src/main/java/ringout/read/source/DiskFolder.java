package ringout.read.source;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A folder on disk. Only plain files are opened, so that a device or a pipe cannot hold up the reading. */
public final class DiskFolder implements Folder {
    private static final long LARGEST = 1L << 30;

    private final Path base;

    /** The folder at a path. */
    public DiskFolder(Path base) {
        this.base = base.toAbsolutePath().normalize();
    }

    @Override
    public String title() {
        Path name = base.getFileName();
        return name == null ? "aircraft" : name.toString();
    }

    @Override
    public boolean isFolder(String name) {
        return path(name).filter(Files::isDirectory).isPresent();
    }

    @Override
    public List<String> files(String folder) {
        Optional<Path> path = path(folder);
        if (path.isEmpty()) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(path.get())) {
            return entries.filter(Files::isRegularFile)
                    .map(entry -> entry.getFileName().toString())
                    .filter(name -> !name.startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException | java.io.UncheckedIOException e) {
            return List.of();
        }
    }

    @Override
    public Loaded load(String name) {
        Optional<Path> path = path(name);
        if (path.isEmpty()) {
            return new Loaded.Absent("'" + name + "' is not a file name");
        }
        try {
            return load(path.get());
        } catch (IOException | OutOfMemoryError e) {
            return new Loaded.Absent("the file cannot be opened: " + e.getMessage());
        }
    }

    private static Loaded load(Path path) throws IOException {
        if (!Files.exists(path)) {
            return new Loaded.Absent("there is no such file");
        }
        if (!Files.isRegularFile(path)) {
            return new Loaded.Absent("this is not a file");
        }
        return Files.size(path) > LARGEST
                ? new Loaded.Absent("the file is larger than 1 GiB")
                : new Loaded.Bytes(Files.readAllBytes(path));
    }

    private Optional<Path> path(String name) {
        try {
            return Optional.of(base.resolve(name).normalize());
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
