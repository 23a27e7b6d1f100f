package ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command {@code compare}. */
class CompareCommandTest {
    private static final List<String> FLEET =
            List.of("compare", "samples/fleet/tail-1", "samples/fleet/tail-2", "samples/fleet/tail-3");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(List<String> call, String... more) {
        List<String> words = new ArrayList<>(call);
        words.addAll(List.of(more));
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words.toArray(new String[0]));
    }

    @Test
    void theTableOfAllTailsNamesTheTerminatorAndTheContactFirst() {
        assertEquals(ExitStatus.FINDINGS, run(FLEET));
        List<String> graded =
                out.toString().lines().filter(line -> line.matches("S\\d .*")).toList();
        assertTrue(graded.get(0).startsWith("S2 LOG CAN2 terminator and GMC CAN2"), graded.get(0));
        assertTrue(graded.get(1).startsWith("S2 reading at BAT2-POS"), graded.get(1));
        assertTrue(graded.get(2).startsWith("S3 "), graded.get(2));
        assertEquals("", err.toString());
    }

    @Test
    void theSameInJson() {
        assertEquals(ExitStatus.FINDINGS, run(FLEET, "--format", "json"));
        JsonNode root = new JsonMapper().readTree(out.toString());
        assertEquals("S2", root.get("rows").get(0).get("severity").asString());
        JsonNode third = root.get("tails").get(1);
        assertEquals("on", third.get("differences").get(0).get("after").asString());
        assertEquals(26, third.get("trends").get(0).get("outsideSinceHours").asInt());
    }

    @Test
    void theSameInCsv() {
        assertEquals(ExitStatus.FINDINGS, run(FLEET, "--format", "csv"));
        List<String> lines = out.toString().lines().toList();
        assertEquals("severity,what,base,tail 2,tail 3,comes,usual,without change on record", lines.get(0));
        assertTrue(lines.get(1).startsWith("S2,LOG CAN2 terminator and GMC CAN2 terminator,off; on,,on; off,\"T07 "));
    }

    @Test
    void anAircraftAgainstItselfIsClean() {
        assertEquals(ExitStatus.CLEAN, run(List.of("compare", "samples/linewarden", "samples/linewarden")));
        assertTrue(out.toString().contains("0 differences, 0 dangerous"), out.toString());
    }

    @Test
    void filesAreWritten(@TempDir Path folder) throws IOException {
        assertEquals(ExitStatus.FINDINGS, run(FLEET, "-o", folder.toString()));
        for (String name : List.of(
                "differences.txt",
                "differences.json",
                "differences.csv",
                "test-again.csv",
                "fleet.csv",
                "2-difference-01.svg")) {
            assertTrue(Files.size(folder.resolve(name)) > 0, name);
        }
        assertTrue(Files.readString(folder.resolve("test-again.csv")).contains("118.9 ohm when put back"));
    }

    @Test
    void whatCannotBeReadIsTold() {
        assertEquals(ExitStatus.WRONG_INPUT, run(List.of("compare", "samples/linewarden", "samples/nowhere")));
        assertTrue(err.toString().contains("samples/nowhere"));
    }
}
