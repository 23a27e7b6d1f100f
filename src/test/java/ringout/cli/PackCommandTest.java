package ringout.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that writes the pack. */
class PackCommandTest {
    private static final float MARGIN_PT = 14;

    @TempDir
    private Path folder = Path.of("");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String sample, Path into) {
        return Main.run(
                new PrintWriter(out, true),
                new PrintWriter(err, true),
                "pack",
                "samples/" + sample,
                "-o",
                into.toString(),
                "--today",
                "2026-01-01");
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    @Test
    void theSameAircraftGivesTheSameBytes() throws IOException {
        Path first = folder.resolve("first");
        Path again = folder.resolve("again");
        assertEquals(ExitStatus.FINDINGS, run("starter", first), err.toString());
        assertEquals(ExitStatus.FINDINGS, run("starter", again), err.toString());
        assertEquals("", err.toString());
        List<Path> files = files(first);
        assertTrue(files.size() > 30, files.toString());
        for (Path file : files) {
            Path twin = again.resolve(first.relativize(file));
            assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(twin), file.toString());
        }
    }

    @Test
    void everyPageOfTheSampleIsWhole() throws IOException {
        assertEquals(ExitStatus.CLEAN, run("linewarden", folder), err.toString());
        assertEquals("", err.toString());
        lookThrough(folder.resolve("pack.pdf"));
    }

    /** Every page has its mark, its number and its caution, and no letter outside of its margins. */
    private static void lookThrough(Path file) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            int pages = pdf.getNumberOfPages();
            assertTrue(pages > 30, "pages: " + pages);
            for (int page = 1; page <= pages; page++) {
                List<String> outside = new ArrayList<>();
                PDFTextStripper eye = new Margins(outside);
                eye.setStartPage(page);
                eye.setEndPage(page);
                String text = eye.getText(pdf).replaceAll("\\s+", "");
                assertTrue(text.contains("LW-6Linewarden,revC,asflown,data"), text);
                assertTrue(text.contains("page" + page + "of" + pages), text);
                assertTrue(text.toLowerCase(Locale.ROOT).contains("propellersoff"), text);
                assertFalse(text.contains("\uFFFD"), text);
                assertEquals(List.of(), outside, "page " + page);
            }
        }
    }

    /** Notes letters that stand outside of the margins of their page. */
    private static final class Margins extends PDFTextStripper {
        private final List<String> outside;

        Margins(List<String> outside) {
            this.outside = outside;
        }

        @Override
        protected void processTextPosition(TextPosition text) {
            super.processTextPosition(text);
            PDRectangle box = getCurrentPage().getMediaBox();
            // Turned text is told as if the page were turned with it.
            boolean turned = text.getDir() == 90 || text.getDir() == 270;
            float wide = turned ? box.getHeight() : box.getWidth();
            float high = turned ? box.getWidth() : box.getHeight();
            boolean inside = text.getXDirAdj() >= MARGIN_PT
                    && text.getXDirAdj() + text.getWidthDirAdj() <= wide - MARGIN_PT
                    && text.getYDirAdj() - text.getHeightDir() >= MARGIN_PT
                    && text.getYDirAdj() <= high - MARGIN_PT;
            if (!inside) {
                outside.add(text.getUnicode() + " at " + text.getXDirAdj() + ", " + text.getYDirAdj());
            }
        }
    }

    @Test
    void whatForbidsToSignIsSaidAndGivesTheStatus() {
        assertEquals(ExitStatus.FINDINGS, run("linewarden-review", folder.resolve("p")), err.toString());
        assertTrue(out.toString().contains("open, not to be signed: S"), out.toString());
    }
}
