package ringout.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Origin;
import ringout.model.UnitType;
import ringout.read.source.MemoryFolder;
import ringout.text.Problem;

/** The joining of files into one aircraft. */
class AircraftReaderTest {
    private static final MemoryFolder EMPTY = MemoryFolder.named("kestrel");

    private static List<String> problems(ReadResult result) {
        return result.problems().stream().map(Problem::words).toList();
    }

    @Test
    void readsOneFileWithItsPlacesAndThreeKindsOfNothing() {
        ReadResult result = AircraftReader.read(EMPTY.with("aircraft.json", """
                {"leads": [
                  {"id": "W1", "from": "A-1", "to": "B-1", "lengthMm": {"value": "62 cm", "origin": "measured", "date": "2026-03-01"},
                   "routeMm": "?", "colours": "n/a", "note": ""}]}
                """));
        assertEquals(List.of(), problems(result));
        Lead lead = result.aircraft().leads().get(0);
        assertEquals(new Datum.Known<>(620.0, Origin.MEASURED, "2026-03-01"), lead.lengthMm());
        assertEquals(Datum.unknown(), lead.routeMm());
        assertEquals(Datum.notApplicable(), lead.colours());
        assertEquals(Datum.notAsked(), lead.note());
        assertEquals("aircraft.json line 2, column 3", lead.at().words());
        assertEquals("kestrel", result.aircraft().name());
    }

    @Test
    void addsTheTypesOfLibrariesAndTellsWhatDiffers() {
        ReadResult result = AircraftReader.read(EMPTY.with("aircraft.json", """
                {"library": ["../common", "extra.json"],
                 "types": [{"name": "OWN"}, {"name": "BOTH", "title": "same"}, {"name": "Other", "title": "mine"}]}
                """)
                .with("../common/a.json", """
                {"types": [{"name": "BOTH", "title": "same"}, {"name": "OTHER", "title": "theirs"}, {"name": "NEW"}]}
                """)
                .with("extra.json", "{\"types\": [{\"name\": \"MORE\"}]}"));
        assertEquals(
                List.of("OWN", "BOTH", "Other", "NEW", "MORE"),
                result.aircraft().types().stream().map(UnitType::name).toList());
        assertEquals(Set.of("NEW", "MORE"), result.libraryTypes());
        assertEquals(
                List.of("../common/a.json line 1, column 47: unit type OTHER differs in `title` from the one in"
                        + " aircraft.json line 2, column 64 (make them equal or give one another name)"),
                problems(result));
    }

    @Test
    void tellsAllProblemsOfAllFilesAtOnce() {
        ReadResult result = AircraftReader.read(EMPTY.with("aircraft.json", """
                {"library": ["missing.json"],
                 "units": [{"ref": "FC", "type": "FC"}, {"ref": "fc", "type": "FC"}, {"type": "X"}],
                 "leads": [{"id": "W1", "from": "A-1", "awg": "thin", "lenghtMm": 3}]}
                """));
        assertEquals(
                List.of(
                        "aircraft.json line 1, column 1: library 'missing.json': there is no such file",
                        "aircraft.json line 2, column 41: there are two of unit fc; the other is in"
                                + " aircraft.json line 2, column 12 (give one of them another name)",
                        "aircraft.json line 2, column 70: unit has no `ref`",
                        "aircraft.json line 3, column 12: lead W1 has no `to` (give it, or write ? when it is not"
                                + " known)",
                        "aircraft.json line 3, column 47: `awg` 'thin' is not a wire gauge (write 26, 4/0, or give"
                                + " mm2 in its own column)",
                        "aircraft.json line 3, column 55: no field `lenghtMm` here (did you mean lengthMm?)"),
                problems(result));
    }

    @Test
    void aMissingPlaceIsAProblemAndNotAnException() {
        assertTrue(
                problems(AircraftReader.read(Path.of("no/such/place"))).get(0).contains("there is no such file"));
        assertTrue(problems(AircraftReader.read(Path.of("/dev/zero"))).get(0).contains("this is not a file"));
        assertTrue(problems(AircraftReader.read(EMPTY)).get(0).startsWith("aircraft.json: there is no such file"));
    }

    /** Found by the fuzzer: the parser refuses some byte orders before it reads anything. */
    @Test
    void anUnusualByteOrderIsAProblemAndNotAnException() {
        byte[] bytes = {0, 0, (byte) 0xff, (byte) 0xfe, '{', '}'};
        List<String> words = problems(AircraftReader.read(EMPTY.with("aircraft.json", bytes)));
        assertTrue(words.get(0).contains("not readable as JSON"), words.toString());
    }
}
