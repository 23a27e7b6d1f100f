package ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A checklist is held against every single fault; what it measures in vain is told. */
class UnseenCommandTest {
    @TempDir
    private Path out;

    private final StringWriter told = new StringWriter();

    private int run(Path aircraft) {
        PrintWriter printer = new PrintWriter(told, true);
        return Main.run(printer, printer, "unseen", aircraft.toString(), "--lines", "3", "--points", "2");
    }

    @Test
    void aListWithoutTestsIsHeldAgainstARingOut() {
        assertEquals(ExitStatus.FINDINGS, run(Path.of("samples", "starter")));
        assertTrue(told.toString().contains("every lead rung out would show"), told::toString);
        assertTrue(told.toString().contains("FC-CAN not seated"), "a ring-out of loose leads sees no seat");
    }

    @Test
    void aTestThatMeasuresNothingComputableCountsAsBlind() throws IOException {
        try (var files = Files.list(Path.of("samples", "starter"))) {
            for (Path file : files.toList()) {
                Files.copy(file, out.resolve(file.getFileName()));
            }
        }
        Files.writeString(out.resolve("tests.csv"), """
                id,kind,pins
                P1,ohms,FC-CAN-H FC-CAN-L
                P2,smell,
                """);
        assertEquals(ExitStatus.FINDINGS, run(out), told::toString);
        assertTrue(told.toString().contains("1 planned lines show"), told::toString);
        assertTrue(told.toString().contains("cannot be computed: P2"), told::toString);
        assertTrue(told.toString().contains("lines to add"), told::toString);
    }
}
