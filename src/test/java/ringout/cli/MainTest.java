package ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** The call itself, as a script sees it: status and streams. */
class MainTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final List<String> made = new ArrayList<>();
    private final CommandTable commands = new CommandTable()
            .with("weigh", () -> {
                made.add("weigh");
                return new Weigh();
            })
            .with("burst", () -> {
                made.add("burst");
                return new Burst();
            });

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
        assertEquals("ringout: no command given\nsee ringout --help\n", plain(err));
    }

    @Test
    void aMisspeltCommandIsWrongInputWithAHint() {
        assertEquals(ExitStatus.WRONG_INPUT, run("wiegh"));
        assertTrue(err.toString().startsWith("ringout: unmatched argument"), err::toString);
        assertTrue(err.toString().contains("'wiegh'"), err::toString);
        assertTrue(err.toString().contains("weigh"), err::toString);
    }

    @Test
    void aMissingParameterNamesTheCommandWhoseHelpTellsIt() {
        assertEquals(ExitStatus.WRONG_INPUT, run("weigh"));
        assertTrue(err.toString().contains("PART"), err::toString);
        assertTrue(plain(err).endsWith("see ringout weigh --help\n"), err::toString);
    }

    @Test
    void theStatusOfTheCommandIsTheStatusOfTheProgram() {
        assertEquals(ExitStatus.FINDINGS, run("weigh", "W68"));
        assertEquals("", err.toString());
    }

    @Test
    void aFailureInsideIsADefectAndNeverAVerdict() {
        assertEquals(ExitStatus.DEFECT, run("burst"));
        assertEquals("", out.toString());
        assertTrue(err.toString().startsWith("ringout: a defect of this tool stopped it"), err::toString);
        assertTrue(err.toString().contains("inside burst"), err::toString);
    }

    @Test
    void onlyTheCommandThatIsCalledIsMade() {
        run("weigh", "W68");
        assertEquals(List.of("weigh"), made);
    }

    @Test
    void helpShowsAllCommandsInTheirOrder() {
        assertEquals(ExitStatus.CLEAN, run("--help"));
        String help = out.toString();
        assertTrue(help.contains("weigh") && help.indexOf("weigh") < help.indexOf("burst"), help);
        assertFalse(help.contains("\u001b"), "no colour unless a terminal asks for it");
    }

    private int run(String... args) {
        return Main.run(commands, new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    private static String plain(StringWriter text) {
        return text.toString().replace("\r\n", "\n");
    }

    @Command(name = "weigh", description = "ends with findings", mixinStandardHelpOptions = true)
    private static final class Weigh implements Callable<Integer> {
        @Parameters(paramLabel = "PART")
        private String part = "";

        @Override
        public Integer call() {
            return part.isEmpty() ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
        }
    }

    @Command(name = "burst", description = "fails")
    private static final class Burst implements Callable<Integer> {
        @Override
        public Integer call() {
            throw new IllegalStateException("inside burst");
        }
    }
}
