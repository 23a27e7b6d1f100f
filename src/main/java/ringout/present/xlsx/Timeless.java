package ringout.present.xlsx;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/** Takes the clock out of a workbook: the time of every entry, and the moment it says it was made. */
final class Timeless {
    /** Earliest year an entry can carry is 1980; a time without a zone, so that it is the same everywhere. */
    private static final LocalDateTime TIME = LocalDateTime.of(2000, 1, 1, 12, 0);

    private Timeless() {}

    static byte[] of(byte[] workbook) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        // By the directory at its end: a reader of streams does not take the sizes the library writes behind each
        // entry.
        try (ZipFile in = ZipFile.builder().setByteArray(workbook).get();
                ZipOutputStream out = new ZipOutputStream(bytes, UTF_8)) {
            for (ZipArchiveEntry entry : Collections.list(in.getEntriesInPhysicalOrder())) {
                ZipEntry same = new ZipEntry(entry.getName());
                same.setTimeLocal(TIME);
                out.putNextEntry(same);
                byte[] content = in.getInputStream(entry).readAllBytes();
                out.write(entry.getName().startsWith("docProps/") ? undated(content) : content);
                out.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static byte[] undated(byte[] properties) {
        return new String(properties, UTF_8)
                .replaceAll(
                        "(<dcterms:(?:created|modified)[^>]*>)[^<]*(</dcterms:(?:created|modified)>)",
                        "$1" + TIME + ":00Z$2")
                .getBytes(UTF_8);
    }
}
