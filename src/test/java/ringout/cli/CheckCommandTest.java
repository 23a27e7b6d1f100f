package ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The check command as its users call it. */
class CheckCommandTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    @ParameterizedTest
    @ValueSource(strings = {"samples/linewarden", "samples/dewmaker"})
    void aCleanAircraftEndsWithZeroInUnderTenLines(String sample) {
        assertEquals(ExitStatus.CLEAN, run("check", sample, "--today", "2026-01-01"), out.toString());
        assertTrue(out.toString().lines().count() < 10, out.toString());
        assertFalse(out.toString().matches("(?s).*: S[123] .*"), out.toString());
        assertEquals("", err.toString());
    }

    @Test
    void theFirstLineCounts() {
        run("check", "samples/linewarden");
        assertTrue(
                out.toString().matches("(?s)\\d+ passed, \\d+ findings?, \\d+ could not be decided\n.*"),
                out.toString());
    }

    /** Without the size and length of one lead: each is got in 2 min; the size is what more, or as many, checks wait for. */
    @Test
    void whatToGetNextIsSaidInThreeLinesAtTheMost(@TempDir Path folder) throws IOException {
        Path own = copied(
                "samples/linewarden",
                folder.resolve("own"),
                "W67,IMU-C2,LOG-C1,can,26,180",
                "W67,IMU-C2,LOG-C1,can,?,?");
        run("check", own.toString(), "--today", "2026-01-01");
        List<String> next =
                out.toString().lines().filter(line -> line.startsWith("N ")).toList();
        assertEquals(3, next.size(), out.toString());
        assertTrue(
                next.get(0).matches("N  get next: (length|wire size) of W67; .* 2 min, decides \\d+ verdicts of .*"),
                next.get(0));
        assertEquals(
                next,
                out.toString().lines().skip(out.toString().lines().count() - 3).toList());
        out.getBuffer().setLength(0);
        run("check", own.toString(), "--format", "json");
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("schemas/findings.schema.json")));
        assertEquals("[]", schema.validate(out.toString(), InputFormat.JSON).toString());
        assertTrue(out.toString().contains("\"next\" : ["), out.toString());
        assertTrue(out.toString().contains("\"weight\""), out.toString());
    }

    /** A sample in a folder of its own, one text of its list changed. */
    private static Path copied(String sample, Path own, String from, String to) throws IOException {
        Files.createDirectories(own);
        String library = Path.of("samples/library").toAbsolutePath().toString();
        for (String file : new String[] {"aircraft.json", "units.csv", "leads.csv"}) {
            Files.writeString(
                    own.resolve(file),
                    Files.readString(Path.of(sample, file))
                            .replace("\"../library", "\"" + library)
                            .replace(from, to));
        }
        return own;
    }

    @Test
    void theReviewSampleEndsWithOne() {
        assertEquals(ExitStatus.FINDINGS, run("check", "samples/linewarden-review", "--format", "line"));
        assertTrue(
                out.toString()
                        .lines()
                        .allMatch(line -> line.matches("(.*:\\d+:\\d+: S\\d [TAPSMRBX]\\d\\d .*)|(S\\d .*)|(Q .*)")),
                out.toString());
    }

    @Test
    void severityChoosesTheExitStatus() {
        assertEquals(ExitStatus.FINDINGS, run("check", "samples/starter", "--exit-at", "S2"));
        assertEquals(ExitStatus.CLEAN, run("check", "samples/starter", "--exit-at", "S1"));
    }

    @Test
    void jsonKeepsItsSchema() throws IOException {
        run("check", "samples/linewarden-review", "--format", "json");
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("schemas/findings.schema.json")));
        assertEquals("[]", schema.validate(out.toString(), InputFormat.JSON).toString());
    }

    @Test
    void sarifWithRepairsKeepsThePublishedSchema(@TempDir Path folder) throws IOException {
        Path mended = folder.resolve("mended");
        run("check", "samples/linewarden-review", "--format", "sarif", "--repair", mended.toString());
        try (var published = CheckCommandTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
            Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
                    .getSchema(new String(published.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8));
            assertEquals("[]", schema.validate(out.toString(), InputFormat.JSON).toString());
        }
        assertTrue(out.toString().contains("\"fixes\""));
    }

    @Test
    void jsonWithRepairsKeepsItsSchema(@TempDir Path folder) throws IOException {
        run(
                "check",
                "samples/linewarden-review",
                "--format",
                "json",
                "--repair",
                folder.resolve("m.json").toString());
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("schemas/findings.schema.json")));
        assertEquals("[]", schema.validate(out.toString(), InputFormat.JSON).toString());
        assertTrue(out.toString().contains("set leads[W82].pins 1>1 2>3 3>2 4>4"), out.toString());
    }

    /** Five of the six mistakes go; which strap to change on the sixth nobody can know from the list. */
    @Test
    void theMendedListIsANewFolderInTheOwnersHand(@TempDir Path folder) throws IOException {
        Path own = folder.resolve("own");
        Files.createDirectories(own);
        for (String file : new String[] {"aircraft.json", "units.csv", "leads.csv"}) {
            String text = Files.readString(Path.of("samples/linewarden-review", file));
            String library =
                    Path.of("samples/library/linewarden").toAbsolutePath().toString();
            Files.writeString(
                    own.resolve(file),
                    file.equals("leads.csv")
                            ? "# my list\n" + text
                            : text.replace("\"../library/linewarden\"", "\"" + library + "\""));
        }
        Path mended = folder.resolve("mended");
        assertEquals(ExitStatus.FINDINGS, run("check", own.toString(), "--repair", mended.toString()), err.toString());
        assertTrue(out.toString().contains("5 repairs found"), out.toString());
        List<String> before = Files.readAllLines(own.resolve("leads.csv"));
        List<String> after = Files.readAllLines(mended.resolve("leads.csv"));
        assertEquals("# my list", after.get(0));
        assertEquals(before.size() + 1, after.size());
        assertEquals(3, after.stream().filter(line -> !before.contains(line)).count());
        out.getBuffer().setLength(0);
        assertEquals(ExitStatus.FINDINGS, run("check", mended.toString(), "--format", "line"));
        assertEquals(
                1,
                out.toString()
                        .lines()
                        .filter(line -> line.matches(".*: S[123] .*"))
                        .count(),
                out.toString());
        assertTrue(out.toString().contains("S2 A08"), out.toString());
        assertEquals(ExitStatus.WRONG_INPUT, run("check", own.toString(), "--repair", mended.toString()));
        assertTrue(err.toString().contains("there is something already"), err.toString());
    }

    @Test
    void sameInputSameBytes() {
        run("check", "samples/linewarden-review", "--format", "json", "--today", "2026-01-01");
        String first = out.toString();
        out.getBuffer().setLength(0);
        run("check", "samples/linewarden-review", "--format", "json", "--today", "2026-01-01");
        assertEquals(first, out.toString());
    }

    @Test
    void anAbsentFolderIsAWrongCallInPlainWords() {
        assertEquals(ExitStatus.WRONG_INPUT, run("check", "no/such/aircraft"));
        assertEquals("", out.toString());
        assertTrue(err.toString().contains("cannot be read as meant"), err.toString());
        assertFalse(err.toString().contains("Exception"), err.toString());
    }

    @Test
    void allProblemsAreToldAtOnceWithRowAndCell(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("units.csv"), "ref,type\nA,N\n,N\n");
        Files.writeString(folder.resolve("leads.csv"), "id,from,to,length mm\nW1,A-C1,B-C1,long\nW2,A-C2,,12\n");
        assertEquals(ExitStatus.WRONG_INPUT, run("check", folder.toString()));
        assertTrue(err.toString().contains("units.csv row 3"), err.toString());
        assertTrue(err.toString().contains("leads.csv row 2"), err.toString());
        assertTrue(err.toString().contains("leads.csv row 3"), err.toString());
        assertTrue(err.toString().contains("'long'"), err.toString());
    }

    @Test
    void aMistypedStateGetsAHint() {
        assertEquals(ExitStatus.WRONG_INPUT, run("check", "samples/linewarden", "--state", "payload of"));
        assertTrue(err.toString().contains("did you mean 'payload off'?"), err.toString());
    }
}
