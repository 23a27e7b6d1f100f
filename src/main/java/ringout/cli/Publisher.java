package ringout.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import ringout.read.table.Table;

/** Writes files so that each is there whole or not at all: under another name first, then moved into place. */
final class Publisher {
    private Publisher() {}

    /**
     * Writes all files of a folder.
     *
     * @param sweep whether tables of an earlier conversion that are not written again must go, or they would be read too
     */
    static List<Path> write(Map<String, String> files, Path folder, boolean sweep) throws IOException {
        return writeBytes(Conversion.bytes(files), folder, sweep);
    }

    /** The same for files of any kind. */
    static List<Path> writeBytes(Map<String, byte[]> files, Path folder, boolean sweep) throws IOException {
        Files.createDirectories(folder);
        Map<Path, Path> ready = new TreeMap<>();
        try {
            for (Map.Entry<String, byte[]> file : new TreeMap<>(files).entrySet()) {
                // Not a temporary file of the system: those are for their owner's eyes only.
                Path part = folder.resolve("." + file.getKey() + ".part");
                ready.put(folder.resolve(file.getKey()), part);
                Files.write(part, file.getValue());
            }
            if (sweep) {
                sweep(files, folder);
            }
            for (Map.Entry<Path, Path> file : ready.entrySet()) {
                Files.move(
                        file.getValue(),
                        file.getKey(),
                        StandardCopyOption.REPLACE_EXISTING,
                        StandardCopyOption.ATOMIC_MOVE);
            }
        } finally {
            for (Path part : ready.values()) {
                Files.deleteIfExists(part);
            }
        }
        return new ArrayList<>(ready.keySet());
    }

    private static void sweep(Map<String, byte[]> files, Path folder) throws IOException {
        List<Path> old = new ArrayList<>();
        try (Stream<Path> entries = Files.list(folder)) {
            entries.filter(Files::isRegularFile)
                    .filter(path -> isStale(String.valueOf(path.getFileName()), files))
                    .forEach(old::add);
        }
        for (Path path : old) {
            Files.delete(path);
        }
    }

    private static boolean isStale(String name, Map<String, byte[]> files) {
        return Table.isTableFile(name) && Table.ofFile(name).isPresent() && !files.containsKey(name);
    }
}
