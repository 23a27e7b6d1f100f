package ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringout.model.AsBuilt;
import ringout.model.seal.Seal;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;

/** What pages wrote comes back on record, whole; a revision is frozen, and says so when it was altered. */
class RecordCommandTest {
    private static final String STARTER = Path.of("samples", "starter").toString();

    @TempDir
    private Path out;

    private final StringWriter text = new StringWriter();
    private final StringWriter complaints = new StringWriter();
    private String mark = "";

    @BeforeEach
    void markOfTheList() {
        mark = Seal.ofList(AircraftReader.read(Path.of(STARTER)).aircraft()).mark();
    }

    private int run(String... args) {
        text.getBuffer().setLength(0);
        complaints.getBuffer().setLength(0);
        return Main.run(new PrintWriter(text, true), new PrintWriter(complaints, true), args);
    }

    private String file(String name, String content) throws IOException {
        return Files.writeString(out.resolve(name), content.replace("MARK", mark))
                .toString();
    }

    private String path(String name) {
        return out.resolve(name).toString();
    }

    private static AsBuilt record(Path file) {
        ReadResult read = AircraftReader.read(file);
        assertEquals(List.of(), read.problems());
        return read.aircraft().record();
    }

    private static final String FIRST = """
            {"aircraft": "Starter", "hash": "MARK", "entries": [
             {"kind": "tick", "item": "W6", "end": "from", "what": "made", "by": "KB", "date": "2026-03-01"},
             {"kind": "tick", "item": "W6", "end": "to", "what": "made", "by": "KB", "date": "2026-03-01"},
             {"kind": "reading", "item": "FC-CAN-2 GPS-C1-2", "quantity": "ohm", "value": "0,12",
              "instrument": "meter 2", "by": "KB", "date": "2026-03-01"},
             {"kind": "signature", "item": "W6", "role": "made", "by": "KB", "date": "2026-03-01"},
             {"kind": "photo", "item": "PDB", "file": "pdb.jpg", "hash": "ab12", "by": "KB", "date": "2026-03-01"},
             {"kind": "note", "item": "W6", "text": "sleeve was short", "by": "KB", "date": "2026-03-01"}]}
            """;

    private String starter() {
        return AircraftReader.read(Path.of(STARTER)).aircraft().name();
    }

    @Test
    void whatWasWrittenComesBackWhole() throws IOException {
        String first = file("first.json", FIRST.replace("Starter", starter()));
        assertEquals(
                ExitStatus.CLEAN, run("record", STARTER, "--take", first, "-o", path("folder")), complaints::toString);
        assertTrue(text.toString().contains("6 taken, 0 on record already, 0 to look at"), text.toString());
        AsBuilt record = record(out.resolve("folder"));
        assertEquals("to", record.ticks().get(1).end().or(""));
        assertEquals(mark, record.ticks().get(1).revision().or(""));
        assertEquals(0.12, record.readings().get(0).value().or(0.0));
        assertEquals("made", record.signatures().get(0).role().or(""));
        assertEquals("ab12", record.photos().get(0).hash().or(""));
        assertEquals("sleeve was short", record.notes().get(0).text().or(""));
        assertEquals(
                mark,
                Seal.ofList(AircraftReader.read(out.resolve("folder")).aircraft())
                        .mark());
    }

    @Test
    void takenTwiceItIsThereOnce() throws IOException {
        String first = file("first.json", FIRST.replace("Starter", starter()));
        assertEquals(ExitStatus.CLEAN, run("record", STARTER, "--take", first, first, "-o", path("once.json")));
        assertTrue(text.toString().contains("6 taken, 6 on record already, 0 to look at"), text.toString());
        assertEquals(2, record(out.resolve("once.json")).ticks().size());
    }

    @Test
    void whatDiffersIsKeptBothAndTold() throws IOException {
        String first = file("first.json", FIRST.replace("Starter", starter()));
        String second = file("second.json", """
                {"aircraft": "NAME", "hash": "0badc0de", "entries": [
                 {"kind": "reading", "item": "FC-CAN-2 GPS-C1-2", "quantity": "ohm", "value": 61.2, "by": "TO"},
                 {"kind": "tick", "item": "W99", "end": "from", "what": "made", "by": "TO"}]}
                """.replace("NAME", starter()));
        assertEquals(ExitStatus.FINDINGS, run("record", STARTER, "--take", first, second, "-o", path("both.json")));
        assertTrue(text.toString().contains("8 taken, 0 on record already, 3 to look at"), text.toString());
        assertTrue(text.toString().contains("second.json: written on pages of 0badc0de, the list is now " + mark));
        assertTrue(text.toString().contains("a tick of W99, and no such lead is in the list"));
        assertTrue(
                text.toString()
                        .contains("reading of FC-CAN-2 GPS-C1-2 says value 61.2, by TO, revision 0badc0de, on record is"
                                + " value 0.12, instrument meter 2, by KB"),
                text.toString());
        AsBuilt record = record(out.resolve("both.json"));
        assertEquals(2, record.readings().size());
        assertEquals(3, record.ticks().size());
    }

    @Test
    void pagesOfAnotherAircraftAndWrongEntriesAreRefused() throws IOException {
        String other = file("other.json", """
                {"aircraft": "Otherwarden", "entries": [
                 {"kind": "tik", "item": "W6", "end": "from"},
                 {"kind": "reading", "item": "A-1 B-1"},
                 {"kind": "tick", "item": "W6", "end": "from", "when": "now"}]}
                """);
        assertEquals(ExitStatus.WRONG_INPUT, run("record", STARTER, "--take", other, "-o", path("no.json")));
        assertTrue(complaints.toString().contains("these pages are of Otherwarden, not of " + starter()));
        assertTrue(complaints.toString().contains("'tik' is no kind of entry (did you mean tick?)"));
        assertTrue(complaints.toString().contains("this reading has no `value`"));
        assertTrue(complaints.toString().contains("no field `when` here"));
        assertFalse(Files.exists(out.resolve("no.json")));
    }

    @Test
    void aFrozenRevisionIsReadAndVerified() throws IOException {
        assertEquals(ExitStatus.CLEAN, run("freeze", STARTER, "-o", path("a.json"), "--today", "2026-03-01"));
        assertTrue(text.toString().contains("frozen " + mark), text.toString());
        ReadResult read = AircraftReader.read(out.resolve("a.json"));
        assertEquals(List.of(), read.problems());
        assertEquals(mark, Seal.ofList(read.aircraft()).mark());
        String frozen = Files.readString(out.resolve("a.json"));
        file("b.json", frozen.replace("\"lengthMm\": 350", "\"lengthMm\": 360"));
        assertEquals(ExitStatus.WRONG_INPUT, run("check", path("b.json")));
        assertTrue(complaints.toString().contains("was altered after it was frozen as " + mark), complaints.toString());
        file("c.json", frozen.replace(", ", ",\n   "));
        assertEquals(List.of(), AircraftReader.read(out.resolve("c.json")).problems());
        assertEquals(ExitStatus.WRONG_INPUT, run("freeze", STARTER, "-o", path("a.json")));
        assertTrue(complaints.toString().contains("a frozen revision is never overwritten"));
    }

    @Test
    void nothingIsFrozenWhileASignatureStandsOnAnOpenFinding() throws IOException {
        Path folder = Files.createDirectory(out.resolve("signed"));
        try (var files = Files.list(Path.of(STARTER))) {
            for (Path table : files.toList()) {
                String content = Files.readString(table).replace("W7,GPS-C2,LOG-C1,can", "W7,GPS-C2,LOG-C1,can");
                boolean pins = table.getFileName().toString().equals("leads.csv");
                Files.writeString(
                        folder.resolve(table.getFileName()), pins ? content.replaceAll("(?m)^W6,.*\\n", "") : content);
            }
        }
        assertEquals(ExitStatus.CLEAN, run("freeze", folder.toString(), "-o", path("open.json")), complaints::toString);
        Files.writeString(
                folder.resolve("signatures.csv"), "item,role,by,date\nthe whole aircraft,released,KB,2026-03-01\n");
        assertEquals(ExitStatus.FINDINGS, run("freeze", folder.toString(), "-o", path("signed.json")));
        assertTrue(
                complaints.toString().contains("the whole aircraft is signed released by KB, and S"),
                complaints.toString());
        assertFalse(Files.exists(out.resolve("signed.json")));
    }
}
