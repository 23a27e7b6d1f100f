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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The convert command as its users call it. */
class ConvertCommandTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    @Test
    void tablesToJsonToTablesToJsonLosesNothing(@TempDir Path folder) throws IOException {
        Path first = folder.resolve("a.json");
        Path tables = folder.resolve("tables");
        Path second = folder.resolve("b.json");
        assertEquals(ExitStatus.CLEAN, run("convert", "samples/linewarden", first.toString(), "--self-contained"));
        assertEquals(ExitStatus.CLEAN, run("convert", first.toString(), tables.toString()));
        assertEquals(ExitStatus.CLEAN, run("convert", tables.toString(), second.toString()));
        assertArrayEquals(Files.readAllBytes(first), Files.readAllBytes(second));
        assertEquals("", err.toString());
    }

    @Test
    void nothingIsWrittenOverWhatIsThere(@TempDir Path folder) throws IOException {
        Path target = Files.writeString(folder.resolve("a.json"), "mine");
        assertEquals(ExitStatus.WRONG_INPUT, run("convert", "samples/starter", target.toString()));
        assertEquals("mine", Files.readString(target));
        assertTrue(err.toString().contains("nothing was written"), err.toString());
    }

    @Test
    void nothingIsWrittenFromAWrongFile(@TempDir Path folder) throws IOException {
        Path wrong = Files.writeString(folder.resolve("w.json"), "{\"units\":[{\"ref\":7,\"tipe\":\"x\"}]}");
        Path target = folder.resolve("out.json");
        assertEquals(ExitStatus.WRONG_INPUT, run("convert", wrong.toString(), target.toString()));
        assertFalse(Files.exists(target));
        assertTrue(err.toString().contains("did you mean type?"), err.toString());
    }
}
