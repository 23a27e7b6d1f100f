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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The probe command as its users call it. */
class ProbeCommandTest {
    private static final String LW = "samples/linewarden";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void empty() {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
    }

    private int run(String... args) {
        empty();
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    /** The number in front of the unit in the one-line form. */
    private double ohm(String... args) {
        String[] all = java.util.Arrays.copyOf(args, args.length + 2);
        all[args.length] = "--format";
        all[args.length + 1] = "line";
        assertEquals(ExitStatus.CLEAN, run(all), err.toString());
        String words = out.toString().replaceFirst("^.*: ", "");
        double number = Double.parseDouble(words.substring(0, words.indexOf(' ')));
        return words.contains(" kohm") ? number * 1000 : number;
    }

    private static void within(double low, double high, double ohm) {
        assertTrue(ohm >= low && ohm <= high, ohm + " not from " + low + " to " + high);
    }

    /** Source: the trade's table of this chain, 60 pulled to 59 by five node inputs of 30 kohm. */
    @Test
    void aHealthyBusReadsSixty() {
        within(59, 61, ohm("probe", LW, "FC-C2-H", "FC-C2-L"));
    }

    @Test
    void aPulledEndReadsOneTerminatorOnBothSides() {
        within(117.5, 121, ohm("probe", LW, "GMC-C1-H", "GMC-C1-L", "--pull", "GMC-C1"));
        within(117.5, 121, ohm("probe", LW, "FC-C2-H", "FC-C2-L", "--pull", "GMC-C1"));
        within(117.5, 121, ohm("probe", LW, "W68@GMC-C1-H", "W68@GMC-C1-L", "--pull", "GMC-C1"));
    }

    /** The reading that gives it away: all mated as ever, the pulled lead at half of what it should. */
    @Test
    void aTerminatorInTheWrongPlaceShowsOnlyAtThePulledEnd(@TempDir Path dir) throws IOException {
        String moved = moved(dir);
        within(59, 61, ohm("probe", moved, "FC-C2-H", "FC-C2-L"));
        within(59, 61, ohm("probe", moved, "GMC-C1-H", "GMC-C1-L"));
        within(59, 61, ohm("probe", moved, "W68@GMC-C1-H", "W68@GMC-C1-L", "--pull", "GMC-C1"));
    }

    private static String moved(Path dir) throws IOException {
        Path folder = Files.createDirectories(dir.resolve("aircraft/lw"));
        for (String file : List.of("aircraft.json", "leads.csv", "units.csv")) {
            Files.copy(Path.of(LW, file), folder.resolve(file));
        }
        Path library = Files.createDirectories(dir.resolve("aircraft/library/linewarden"));
        try (var files = Files.list(Path.of("samples/library/linewarden"))) {
            for (Path file : files.toList()) {
                Files.copy(file, library.resolve(file.getFileName()));
            }
        }
        String units = Files.readString(folder.resolve("units.csv"));
        assertTrue(units.contains("CAN2=off") && units.contains("CAN2=on"), units);
        Files.writeString(
                folder.resolve("units.csv"),
                units.replace("CAN2=on", "CAN2=x")
                        .replace("CAN2=off", "CAN2=on")
                        .replace("CAN2=x", "CAN2=off"));
        return folder.toString();
    }

    /**
     * Every cell of the trade's table of this chain: at FC mated; at GMC mated; W67 pulled at LOG, lead side; the same,
     * LOG side; W68 pulled at GMC, lead side. "Values rounded; node inputs pull 60 to 59 and 120 to 118-119."
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "as listed                           | 60   | 60   | 120  | 120  | 120",
                "terminator missing: GMC             | 120  | 120  | 120  | 15 k | 120",
                "terminator missing: FC              | 120  | 120  | 10 k | 120  | 7.5 k",
                "terminator also on at LOG           | 40   | 40   | 120  | 60   | 60",
                "terminator on at LOG instead of GMC | 60   | 60   | 120  | 120  | 60",
                "both terminators missing: FC, GMC   | 6 k  | 6 k  | 10 k | 15 k | 7.5 k",
                "open FC-GN1 (W65)                   | 120  | 120  | 15 k | 120  | 10 k",
                "open GN1-IMU (W66)                  | 120  | 120  | 30 k | 120  | 15 k",
                "open IMU-LOG (W67)                  | 120  | 120  | open | 120  | 30 k",
                "open LOG-GMC (W68)                  | 120  | 120  | 120  | 30 k | open",
            })
    void everyCellOfTheTable(String bus, String fc, String gmc, String leadSide, String logSide, String endLead) {
        assertEquals(ExitStatus.CLEAN, run("probe", LW, "CAN2"), err.toString());
        near(fc, cell("all mated, at", bus, "FC-C2"));
        near(gmc, cell("all mated, at", bus, "GMC-C1"));
        near(leadSide, cell("pulled, into the lead", bus, "LOG-C1"));
        near(logSide, cell("pulled, into the unit", bus, "LOG-C1"));
        near(endLead, cell("pulled, into the lead", bus, "GMC-C1"));
        assertEquals(
                30,
                out.toString()
                        .lines()
                        .filter(line -> line.matches("(as listed|terminator |both |open ).*"))
                        .count());
    }

    /** A cell of the printed table, by block, row and column. */
    private String cell(String block, String row, String plug) {
        List<String> lines = out.toString().lines().toList();
        int head = 0;
        while (!lines.get(head).startsWith(block)) {
            head++;
        }
        int from = lines.get(head).indexOf(plug);
        int line = head;
        while (!lines.get(line).startsWith(row + " ")) {
            line++;
        }
        String rest = lines.get(line).substring(from);
        return rest.split(" {2,}")[0].strip();
    }

    private static void near(String expected, String printed) {
        if (expected.equals("open") || printed.equals("open")) {
            assertEquals(expected, printed);
            return;
        }
        double want = number(expected);
        double low = want <= 120 ? want * 0.98 : want * 0.985;
        double high = want <= 120 ? want * 1.01 : want * 1.015;
        within(low, high, number(printed));
    }

    private static double number(String cell) {
        return cell.endsWith(" k")
                ? Double.parseDouble(cell.substring(0, cell.length() - 2)) * 1000
                : Double.parseDouble(cell);
    }

    @Test
    void aStateChangesTheReading() {
        within(59, 61, ohm("probe", LW, "LOG-C1-H", "LOG-C1-L", "--state", "payload off"));
        within(117.5, 121, ohm("probe", LW, "LOG-C1-H", "LOG-C1-L", "--state", "payload off", "--pull", "LOG-C1"));
        run("probe", LW, "GMC-C1-H", "FC-C2-L");
        assertTrue(out.toString().contains("in state payload off: no connection (over range)"), out.toString());
    }

    @Test
    void whatNothingConnectsIsNeverANumber() {
        run("probe", LW, "FC-P1-1", "RG12-O1-1", "--format", "line");
        assertEquals("FC-P1-1 to RG12-O1-1, as flown, power off: no connection (over range)\n", out.toString());
        run("probe", LW, "FC-P1-1", "RG12-O1-1");
        assertTrue(out.toString().contains("what is inside FC, RG12 cannot be told"), out.toString());
        run("probe", LW, "W68@GMC-C1-H", "GMC-C1-H", "--pull", "GMC-C1", "--pull", "LOG-C2", "--format", "json");
        assertTrue(out.toString().contains("\"connected\" : false"), out.toString());
    }

    @Test
    void otherReadingsAreComputedAndWhatReadsTheSameIsToldTogether() {
        run("probe", LW, "FC-C2-H", "FC-C2-L");
        String text = out.toString();
        assertTrue(text.contains("49 % of the current: FC-C2-2, W65, GN1-C1-2 = GN1-C2-2, W66"), text);
        assertTrue(text.contains("rows W65, W66, W67, W68"), text);
        assertTrue(text.matches("(?s).*39\\.\\d to 40\\.\\d ohm +terminator also on at LOG\n.*"), text);
        assertTrue(
                text.matches(
                        "(?s).*11\\d\\.\\d to 12\\d\\.\\d ohm +terminator missing: FC, GMC\n +open conductor or contact:"
                                + " W65 \\(FC-C2-2 or FC-C2-3\\).*"),
                text);
        assertTrue(text.matches("(?s).*kohm +both terminators missing: FC, GMC\n.*"), text);
        assertTrue(text.matches("(?s).*ohm +short: W65.*"), text);
        assertTrue(
                text.matches("(?s).*not found by this measurement:\n +terminator on at LOG instead of GMC\n.*"), text);
        assertTrue(text.contains("packs out, propellers off"), text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "FC-C2-H FC-C2-L",
                "W68@GMC-C1-H W68@GMC-C1-L --pull GMC-C1",
                "FC-P1-1 RG12-O1-1",
                "FC-C2-H FC-C2-H",
                "ESC3-N PDB-BN --state payload~off",
                "CAN2",
                "--bus CAN1",
                "LGC-PWR-1 LGC-PWR-2 --power on --event gear~moving",
                "W72@GMC-PWR-1 W72@GMC-PWR-2 --power on --pull GMC-PWR",
                "FC-C2-H FC-C2-L --power on"
            })
    void jsonKeepsItsSchema(String call) throws IOException {
        String[] args = ("probe " + LW + " " + call + " --format json").split(" ");
        for (int i = 0; i < args.length; i++) {
            args[i] = args[i].replace('~', ' ');
        }
        assertEquals(ExitStatus.CLEAN, run(args), err.toString());
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("schemas/probe.schema.json")));
        assertEquals("[]", schema.validate(out.toString(), InputFormat.JSON).toString());
        String first = out.toString();
        run(args);
        assertEquals(first, out.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "FC-C3-H FC-C2-L                     | did you mean FC-C2-H?",
                "FCC-C2-H FC-C2-L                    | did you mean FC-C2-H?",
                "FC-C2-Q FC-C2-L                     | no pin 'Q' on FC-C2",
                "W86@GMC-C1-H FC-C2-L                | there is W68",
                "W69@GMC-C2-H FC-C2-L                | no plug",
                "FC-C2 FC-C2-L                       | 1 (5V3), 2 (H), 3 (L), 4 (0V)",
                "FC-C2-H                             | name a second one, or a bus",
                "CAN3                                | did you mean CAN1?",
                "FC-C2-H FC-C2-L --pull GMC-C9       | no plug 'C9' on GMC",
                "FC-C2-H FC-C2-L --pull GMC-C1-H     | pull the whole plug: GMC-C1",
                "FC-C2-H FC-C2-L --state payload_of  | did you mean 'payload off'?",
                "FC-C2-H FC-C2-L GMC-C1-H            | name two points, or one bus",
                "FC-C2-H FC-C2-L --bus CAN2          | name two points, or one bus",
                "FC-C2-H FC-C2-L --event gear        | say --power on",
                "CAN2 --power on                     | ohms with the power off",
                "LGC-PWR-1 LGC-PWR-2 --power on --event gears_moving | did you mean gear moving?",
                "@ @                                 | no unit or joint for ''",
                "W68@ -                              | no unit or joint for ''",
                "--- -                               | ringout:",
                "FC-C2-H ../../../etc/passwd         | no unit or joint for '../../../etc/passwd'",
            })
    void aWrongNameIsAWrongCallWithAHint(String call, String hint) {
        assertEquals(ExitStatus.WRONG_INPUT, run(("probe " + LW + " " + call).split(" ")));
        assertEquals("", out.toString());
        assertTrue(err.toString().contains(hint), err.toString());
        assertFalse(err.toString().contains("Exception"), err.toString());
    }

    @Test
    void aHostileNameIsShownHarmlessAndShort() {
        String bell = "\u001b[31m\u0007" + "x".repeat(5000) + "\n";
        assertEquals(ExitStatus.WRONG_INPUT, run("probe", LW, bell, "FC-C2-L"));
        assertTrue(err.toString().length() < 500, err.toString());
        assertFalse(err.toString().contains("\u001b"), err.toString());
    }

    @Test
    void voltsBeginWithTheCautions() {
        assertEquals(ExitStatus.CLEAN, run("probe", LW, "PDB-T2-1", "PDB-T2-2", "--power", "on"), err.toString());
        String text = out.toString();
        assertTrue(text.startsWith("  CAUTION  power is on: propellers off"), text);
        assertTrue(text.indexOf("arcs and burns") < text.indexOf("expect"), text);
        assertTrue(text.indexOf("measurement category") < text.indexOf("expect"), text);
        assertTrue(text.contains("expect 50.16 V"), text);
        assertTrue(text.contains("rows W02, W03"), text);
        run("probe", LW, "FC-C2-H", "FC-C2-L", "--power", "on", "--format", "line");
        assertEquals(
                "FC-C2-2 to FC-C2-3, as flown, power on, loads at rest: floating, no voltage from any supply\n",
                out.toString());
    }

    @Test
    void helpTellsThePointsAndTheCaution() {
        assertEquals(ExitStatus.CLEAN, run("probe", "--help"));
        assertTrue(out.toString().contains("LEAD@UNIT-PLUG-PIN"), out.toString());
        assertTrue(out.toString().contains("propellers off"), out.toString());
    }
}
