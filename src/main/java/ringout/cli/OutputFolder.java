package ringout.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Files to be written into a folder: gathered first, written when all are there, each as a whole or not at all. */
final class OutputFolder {
    private final Path folder;
    private final Map<String, byte[]> files = new LinkedHashMap<>();

    OutputFolder(Path folder) {
        this.folder = folder;
    }

    OutputFolder with(String name, String text) {
        return with(name, text.getBytes(StandardCharsets.UTF_8));
    }

    OutputFolder with(String name, byte[] bytes) {
        files.put(name, bytes);
        return this;
    }

    /** Names of the files, in the order they were given. */
    List<String> names() {
        return List.copyOf(files.keySet());
    }

    /** Writes them all. */
    void write() {
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                // Not a temporary file of the system: those are for their owner's eyes only.
                Path half = folder.resolve("." + file.getKey() + ".part");
                Files.write(half, file.getValue());
                Files.move(half, folder.resolve(file.getKey()), StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
