package ringout.draw.letter;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

/** The advance width of each letter of one face, read once from the table beside the bundled font. */
final class AdvanceWidths {
    /** Height of the letter H over the em, both faces. */
    static final double CAP_PER_EM = 1493.0 / 2048.0;

    /** Depth of the letter j below the line over the em, the deeper of both faces. */
    static final double DESCENT_PER_EM = 442.0 / 2048.0;

    /** Height of marks above the letter H over the em, such as that of a capital with a ring. */
    static final double RISE_PER_EM = 0.22;

    private static final String TABLE = "advances.txt";
    private static final double UNKNOWN = 1.0;

    private final Map<Integer, Double> perEm;

    private AdvanceWidths(Map<Integer, Double> perEm) {
        this.perEm = perEm;
    }

    static AdvanceWidths ofFace(Weight weight) {
        return weight == Weight.BOLD ? Faces.BOLD : Faces.REGULAR;
    }

    /** {@return the advance width of a letter over the em; 1 for a letter the font lacks} */
    double perEm(int codePoint) {
        return perEm.getOrDefault(codePoint, UNKNOWN);
    }

    /** Read when the first text is measured, not before. */
    private static final class Faces {
        static final AdvanceWidths REGULAR = read("regular");
        static final AdvanceWidths BOLD = read("bold");
    }

    private static AdvanceWidths read(String face) {
        Map<Integer, Double> widths = new HashMap<>();
        try (InputStream bytes = Objects.requireNonNull(
                        AdvanceWidths.class.getResourceAsStream(TABLE), TABLE + " is not bundled");
                BufferedReader lines = new BufferedReader(new InputStreamReader(bytes, UTF_8))) {
            double unitsPerEm = 0;
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                String[] words = line.split(" ");
                if (words[0].equals("face")) {
                    unitsPerEm = words[1].equals(face) ? Double.parseDouble(words[3]) : 0;
                } else if (unitsPerEm > 0) {
                    addLine(words, unitsPerEm, widths);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(TABLE, e);
        }
        return new AdvanceWidths(widths);
    }

    private static void addLine(String[] words, double unitsPerEm, Map<Integer, Double> widths) {
        int first = Integer.parseInt(words[0], 16);
        for (int i = 1; i < words.length; i++) {
            widths.put(first + i - 1, Integer.parseInt(words[i]) / unitsPerEm);
        }
    }
}
