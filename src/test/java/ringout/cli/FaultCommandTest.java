package ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wiring;
import ringout.trace.candidate.PriorTable;
import ringout.trace.session.Diagnosis;
import ringout.trace.session.Scene;

class FaultCommandTest {
    private static final String LW = "samples/linewarden";
    private static final Circuit CIRCUIT =
            Circuit.all(Wiring.of(SmallAircraft.sample("linewarden"))).get(0);

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void clear() {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
    }

    private int run(String... args) {
        clear();
        PrintWriter to = new PrintWriter(out);
        int status = Main.run(to, new PrintWriter(err, true), args);
        to.flush();
        return status;
    }

    private int fault(String call) {
        String[] args = ("fault " + LW + " " + call).split(" ");
        for (int i = 0; i < args.length; i++) {
            args[i] = args[i].replace('~', ' ');
        }
        return run(args);
    }

    @Test
    void oneCallTellsFaultsThePathTheNextTestAndWhatComesAfter() {
        assertEquals(ExitStatus.CLEAN, fault("--silent GMC"), err.toString());
        String text = out.toString();
        assertTrue(text.contains("GMC-C1 not seated"), text);
        assertTrue(text.matches("(?s).*signal +FC-C2-2, W65.*W68,\\s+GMC-C1-2.*"), text);
        assertTrue(text.matches("(?s).*power +RG12-O1-1, W72, GMC-PWR-1.*"), text);
        assertTrue(text.contains("behind   GIM"), text);
        assertTrue(text.contains("who else is silent?"), text);
        assertTrue(text.contains("is it lit?"), text);
        assertTrue(text.contains("what changed last?"), text);
        assertTrue(text.contains("something not in the model"), text);
        assertTrue(text.matches("(?s).*next: .*\n  cost +[0-9.]+ min.*"), text);
        assertTrue(text.contains("propellers off before any pack is plugged"), text);
        assertTrue(text.contains("prove again"), text);
        String first = text;
        fault("--silent GMC");
        assertEquals(first, out.toString(), "same call, same words");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--silent GMX                                             | did you mean GMC?",
                "--silent CAM                                             | say --dark CAM",
                "--silent GMC --touched W688                              | did you mean W68?",
                "--silent GMC --reading ohms~H-L~GMC-C1~matted=118        | did you mean ohms H-L GMC-C1 mated?",
                "--silent GMC --reading ohms~H-L~GMC-C1~mated=lots        | it shows: short",
                "--silent GMC --reading settings~GMC=difers               | did you mean differs?",
                "--silent GMC --reading 118                               | TEST=VALUE",
                "--lit GMC                                                | --silent or --dark",
                "--silent GMC --resume no-such-file                       | cannot take up no-such-file",
                "--silent GMC --priors no-such-file                       | cannot read no-such-file"
            })
    void aWrongCallIsRefusedWithAHint(String call, String hint) {
        assertEquals(ExitStatus.WRONG_INPUT, fault(call), out.toString());
        assertTrue(err.toString().contains(hint), err.toString());
        assertEquals("", out.toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--silent GMC",
                "--silent GMC --alive others --lit GMC --reading ohms~H-L~GMC-C1~mated=118,2 --reading wire~volts~GMC-C1=0;0"
                        + " --reading supply~current=2.06 --reading look~GMC-C1=nothing",
                "--silent GMC --alive others --reading look~GMC-C1=seen --reading ohms~H-L~GMC-C1~mated=120",
                "--silent GMC ADB --alive others",
                "--silent GMC --touched W68 crash --alive others --reading wire~volts~GMC-C1=3.3~0 --reading settings~GMC=differs",
                "--dark CAM --alive others"
            })
    void jsonKeepsItsSchema(String call) throws IOException {
        int status = fault(call + " --format json");
        assertTrue(status == ExitStatus.CLEAN || status == ExitStatus.FINDINGS, err.toString());
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("schemas/fault.schema.json")));
        assertEquals("[]", schema.validate(out.toString(), InputFormat.JSON).toString());
    }

    @Test
    void aSavedReportIsTakenUpWhereItStood(@TempDir Path folder) throws IOException {
        String call = "--silent GMC --alive others --lit GMC --touched W68 --reading ohms~H-L~GMC-C1~mated=118";
        fault(call + " --format json");
        Path file = folder.resolve("search.json");
        Files.writeString(file, out.toString());
        fault(call);
        String told = out.toString();
        assertEquals(ExitStatus.CLEAN, fault("--resume " + file), err.toString());
        assertEquals(told, out.toString());
        fault("--resume " + file + " --reading wire~volts~GMC-C1=0~0");
        assertTrue(out.toString().contains("wire volts GMC-C1 = nothing (0 0)"), out.toString());
    }

    @Test
    void ownWeightsCount(@TempDir Path folder) throws IOException {
        Path table = folder.resolve("weights.csv");
        Files.writeString(table, "fault,weight,source\ndead transceiver,5000,own records\n");
        assertEquals(ExitStatus.CLEAN, fault("--silent GMC --lit GMC --priors " + table), err.toString());
        assertTrue(out.toString().matches("(?s).*9\\d %    GMC front end dead.*"), out.toString());
        Files.writeString(table, "dead tranceiver,5000\n");
        assertEquals(ExitStatus.WRONG_INPUT, fault("--silent GMC --priors " + table));
        assertTrue(err.toString().contains("no kind of fault or circumstance is called 'dead tranceiver'"));
    }

    @Test
    void theSheetIsOnePageWithTheTreeOfTests(@TempDir Path folder) throws IOException {
        assertEquals(ExitStatus.CLEAN, fault("--silent GMC --lit GMC --alive others -o " + folder), err.toString());
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("fault-finding.pdf").toFile())) {
            assertTrue(pdf.getNumberOfPages() <= 2, "pages: " + pdf.getNumberOfPages());
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertTrue(text.contains("Fault finding: GMC does not respond"), text);
            assertTrue(text.contains("go to 2"), text);
            assertTrue(text.contains("propellers off before any pack is plugged"), text);
            assertTrue(text.contains("After the repair, prove again"), text);
        }
        String page = Files.readString(folder.resolve("fault-finding.html"));
        assertTrue(page.contains("go to 2"), page);
        assertEquals(ExitStatus.CLEAN, fault("--resume " + folder.resolve("fault-finding.json")), err.toString());
    }

    private String talk(String... lines) {
        BufferedReader in = new BufferedReader(new StringReader(String.join("\n", lines) + "\n"));
        PrintWriter to = new PrintWriter(out);
        FaultDialogue dialogue = new FaultDialogue(CIRCUIT, PriorTable.standard(), in, to);
        Optional<Diagnosis> start = dialogue.begin(Scene.silent(List.of()));
        start.ifPresent(dialogue::run);
        to.flush();
        return out.toString();
    }

    @Test
    void theDialogueAsksWhatChangedThenWhoElseThenTheLight() {
        String told = talk("GMC", "", "", "yes", "quit");
        int changed = told.indexOf("What changed last?");
        int who = told.indexOf("Who else is silent?");
        int lit = told.indexOf("Is GMC lit?");
        assertTrue(changed > 0 && who > changed && lit > who, told);
        assertTrue(told.contains("silent: GMC; lit: GMC; all others respond"), told);
        assertTrue(told.endsWith("> "), told);
    }

    @Test
    void theDialogueTakesReadingsBackAndSaves(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("talk.json");
        String told = talk(
                "gmx",
                "gmc",
                "W68",
                "",
                "yes",
                "?",
                "ohms H-L GMC-C1 mated = 118,2",
                "back",
                "nonsense",
                "ohms H-L GMC-C1 mated=OL",
                "back",
                "ohms H-L GMC-C1 mated=1.2k",
                "back",
                "ohms H-L GMC-C1 mated=118",
                "wire volts GMC-C1 = 2.5 2.5",
                "back",
                "skip",
                "save " + file);
        assertTrue(told.contains("did you mean GMC?"), told);
        assertTrue(told.contains("what you can type"), told);
        assertTrue(told.contains("'nonsense' is no reading of"), told);
        assertTrue(told.contains("saved: " + file), told);
        assertEquals(ExitStatus.CLEAN, fault("--resume " + file), err.toString());
        assertTrue(out.toString().contains("read     ohms H-L GMC-C1 mated = about 120 (118)"), out.toString());
        assertFalse(out.toString().contains("wire volts GMC-C1 = "), out.toString());
    }

    @Test
    void theDialogueEndsWithWhatToProveAgain() {
        String told = talk(
                "GMC", "", "", "yes", "look GMC-C1=seen", "look GMC-C1=seen", "ohms H-L GMC-C1 mated=118", "cured");
        assertTrue(told.contains("seat GMC-C1"), told);
        int after = told.lastIndexOf("after the repair, prove again");
        assertTrue(after > 0 && told.indexOf("GMC-C1", after) > 0, told);
    }

    @Test
    void aRepairInVainIsNotAdvisedAgain() {
        String told = talk("GMC", "", "", "yes", "look GMC-C1=seen", "look GMC-C1=seen", "not cured", "quit");
        String last = told.substring(told.lastIndexOf("something not in the model"));
        assertFalse(last.contains("stop measuring: seat GMC-C1"), last);
    }

    @Test
    void anInputThatEndsEarlyLeavesNothing() {
        assertTrue(talk("GMC", "").contains("Who else is silent?"));
    }
}
