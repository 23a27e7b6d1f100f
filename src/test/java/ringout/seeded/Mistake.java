package ringout.seeded;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import ringout.finding.Severity;
import ringout.model.Aircraft;
import ringout.model.edit.Edited;
import ringout.model.edit.Edits;
import ringout.read.edit.EditReader;

/**
 * One change of a clean sample and what must come of it. The file holds the edits, one a line, below a head of
 * {@code # key: value} lines:
 *
 * <pre>
 * # mistake: (or decoy:) what was done, in words
 * # headline: codes, one of which must be the first headline; absent when nothing may be found
 * # severity: severities, one of which the headline has
 * # words: words | that the headline | shows; "this or that" where either will do
 * # explains: codes that may stand folded under the headline
 * # others: codes that may stand as a further headline of S1 to S3; none when absent
 * # never: codes that may not be found at all
 * </pre>
 *
 * @param name name of the file, without its ending
 * @param sample folder of the sample it changes
 * @param head the head by key
 * @param text the whole file
 */
record Mistake(String name, String sample, Map<String, String> head, String text) {
    static final Path FOLDER = Path.of("src", "test", "resources", "seeded");

    static List<Mistake> all() {
        return Stream.of("linewarden", "dewmaker")
                .flatMap(sample -> of(sample).stream())
                .toList();
    }

    private static List<Mistake> of(String sample) {
        try (Stream<Path> files = Files.list(FOLDER.resolve(sample))) {
            return files.filter(file -> file.toString().endsWith(".edit"))
                    .sorted()
                    .map(file -> of(sample, file))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Mistake of(String sample, Path file) {
        try {
            String text = Files.readString(file, StandardCharsets.UTF_8);
            Map<String, String> head = new TreeMap<>();
            text.lines().takeWhile(line -> line.startsWith("# ")).forEach(line -> {
                int colon = line.indexOf(": ");
                head.put(line.substring(2, colon), line.substring(colon + 2));
            });
            String name = file.getFileName().toString().replace(".edit", "");
            return new Mistake(name, sample, Map.copyOf(head), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    EditReader.Result edits() {
        return EditReader.read(name + ".edit", text);
    }

    Edited in(Aircraft clean) {
        return Edits.apply(clean, edits().edits());
    }

    /** The codes under a key, in the order written. */
    List<String> codes(String key) {
        String value = head.getOrDefault(key, "");
        return value.isBlank() ? List.of() : List.of(value.split(" "));
    }

    List<Severity> severities() {
        return codes("severity").stream().map(Severity::valueOf).toList();
    }

    /** What the headline must show: for each entry, one of its words. */
    List<List<String>> words() {
        String value = head.getOrDefault("words", "");
        return value.isBlank()
                ? List.of()
                : Stream.of(value.split(" \\| "))
                        .map(entry -> List.of(entry.split(" or ")))
                        .toList();
    }

    @Override
    public String toString() {
        return sample + " " + name;
    }
}
