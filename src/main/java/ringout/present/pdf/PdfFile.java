package ringout.present.pdf;

import java.util.List;

/**
 * A PDF file as written.
 *
 * @param bytes the whole file
 * @param flaws what did not fit its place, in words; empty when all is well
 */
@SuppressWarnings("ArrayRecordComponent") // handed over once, never compared
public record PdfFile(byte[] bytes, List<String> flaws) {
    /** Keeps its own copy of the flaws. */
    public PdfFile {
        flaws = List.copyOf(flaws);
    }
}
