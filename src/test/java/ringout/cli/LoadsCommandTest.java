package ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** The command that tells the electrical loads. */
class LoadsCommandTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    @Test
    void tellsRailsPacksAndEndurance() {
        assertEquals(ExitStatus.CLEAN, run("loads", "samples/linewarden"));
        assertTrue(out.toString().startsWith("electrical loads of LW-6 Linewarden, as flown\n"), out.toString());
        assertTrue(out.toString().contains("BAT1 + BAT2: 27.6 min"), out.toString());
    }

    @Test
    void writesCommaSeparatedValues() {
        assertEquals(ExitStatus.CLEAN, run("loads", "samples/dewmaker", "--format", "csv"));
        assertTrue(out.toString().startsWith("kind,rail,name,volts,"), out.toString());
        assertTrue(out.toString().contains("\nendurance,,PKA + PKB,"), out.toString());
    }

    @Test
    void anUnknownStateIsAWrongCall() {
        assertEquals(ExitStatus.WRONG_INPUT, run("loads", "samples/linewarden", "--state", "upside down"));
        assertTrue(err.toString().contains("upside down"), err.toString());
    }
}
