package ringout.read.table;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/** Trade words for files and column heads, kept as data in {@code synonyms.csv} beside this class. */
final class Synonyms {
    private static final Map<String, Map<String, String>> WORDS = load();

    private Synonyms() {}

    /** What the heads of a table mean: folded word to field. */
    static Map<String, String> of(String table) {
        return WORDS.getOrDefault(table, Map.of());
    }

    /** The name of a table, for a word that may name its file. */
    static String file(String word) {
        return of("file").getOrDefault(fold(word), word);
    }

    /** A head as it is compared: lower case, without blanks, underscores, dashes, dots and slashes. */
    static String fold(String head) {
        StringBuilder folded = new StringBuilder(head.length());
        String lower = head.toLowerCase(Locale.ROOT);
        for (int i = 0; i < lower.length(); i++) {
            char c = lower.charAt(i);
            if ("_-./:".indexOf(c) < 0 && !Character.isWhitespace(c) && c != 0xa0) {
                folded.append(c);
            }
        }
        return folded.toString();
    }

    private static Map<String, Map<String, String>> load() {
        Map<String, Map<String, String>> words = new LinkedHashMap<>();
        try (InputStream stream = Objects.requireNonNull(Synonyms.class.getResourceAsStream("synonyms.csv"));
                CsvReader<CsvRecord> rows =
                        CsvReader.builder().ofCsvRecord(new String(stream.readAllBytes(), StandardCharsets.UTF_8))) {
            for (CsvRecord row : rows) {
                for (String word : row.getField(2).split(";")) {
                    words.computeIfAbsent(row.getField(0), table -> new LinkedHashMap<>())
                            .put(fold(word), row.getField(1));
                }
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return words;
    }
}
