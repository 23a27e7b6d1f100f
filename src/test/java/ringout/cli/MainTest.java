package ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** The call itself, as a script sees it: status and streams. */
class MainTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void versionGoesToOutAndEndsClean() {
        assertEquals(ExitStatus.CLEAN, run("--version"));
        assertTrue(out.toString().startsWith("ringout "), out::toString);
        assertEquals("", err.toString());
    }

    @Test
    void aCallWithoutCommandIsWrongInput() {
        assertEquals(ExitStatus.WRONG_INPUT, run());
        assertEquals("", out.toString());
        assertTrue(err.toString().contains("no command given"), err::toString);
    }

    @Test
    void anUnknownWordIsWrongInput() {
        assertEquals(ExitStatus.WRONG_INPUT, run("chekc"));
        assertTrue(err.toString().contains("chekc"), err::toString);
    }

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }
}
