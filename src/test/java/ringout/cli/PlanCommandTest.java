package ringout.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that writes the plan of a build. */
class PlanCommandTest {
    @TempDir
    private Path folder = Path.of("");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    @Test
    void tellsThePlanInShort() {
        assertEquals(ExitStatus.CLEAN, run("plan", "samples/linewarden"));
        String told = out.toString();
        assertTrue(told.startsWith("plan of the build of LW-6 Linewarden, rev C, as flown, data "), told);
        assertTrue(told.contains("hold H2, then close lower lid"), told);
        assertTrue(told.contains("last chance before the lower lid, 25 min off and on again"), told);
        assertTrue(told.contains("bench supply 48.0 V, limit 1.0 A"), told);
        assertTrue(told.contains("current of the supply: 0.53 A"), told);
        assertTrue(
                told.contains("broken      BAT2-POS, BAT2-NEG, BAT1-POS, BAT1-NEG")
                        || told.contains("BAT2-POS, BAT2-NEG, BAT1-POS, BAT1-NEG"),
                told);
        assertEquals("", err.toString());
    }

    @Test
    void writesTheSameSheetsTwice() throws IOException {
        Path first = folder.resolve("first");
        Path again = folder.resolve("again");
        assertEquals(ExitStatus.CLEAN, run("plan", "samples/linewarden", "-o", first.toString()), err.toString());
        assertEquals(ExitStatus.CLEAN, run("plan", "samples/linewarden", "-o", again.toString()), err.toString());
        for (String name : new String[] {
            "plan.pdf", "plan.html", "plan.xlsx", "stages.csv", "power-u1.csv", "last-chance-lower-lid.csv"
        }) {
            assertArrayEquals(Files.readAllBytes(first.resolve(name)), Files.readAllBytes(again.resolve(name)), name);
        }
        try (PDDocument pdf = Loader.loadPDF(first.resolve("plan.pdf").toFile())) {
            PDFTextStripper text = new PDFTextStripper();
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                text.setStartPage(page);
                text.setEndPage(page);
                String words = text.getText(pdf).replaceAll("\\s+", " ");
                assertTrue(words.contains("Propellers off"), "page " + page + " has no caution: " + words);
                assertTrue(words.contains("data "), "page " + page + " has no revision mark");
            }
        }
        assertEquals("", err.toString());
    }

    @Test
    void writesOneFormOnly() throws IOException {
        run("plan", "samples/dewmaker", "-o", folder.toString(), "--format", "html");
        assertTrue(Files.readString(folder.resolve("plan.html")).contains("Last chance: hub lid"));
        assertTrue(Files.notExists(folder.resolve("plan.pdf")));
    }
}
