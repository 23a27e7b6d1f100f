package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import ringout.check.Review;
import ringout.compare.fleet.Tail;
import ringout.compare.fleet.Trends;
import ringout.compare.judge.Judgement;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.edit.Edits;
import ringout.present.svg.SvgOutcome;
import ringout.read.AircraftReader;
import ringout.read.edit.EditReader;

/** Difference drawings pass the verifier, and show what is new, gone and changed, each in its own way. */
class DifferenceSheetsTest {
    private static final Aircraft BASE =
            AircraftReader.read(Path.of("samples", "linewarden")).aircraft();

    private static List<String> sheets(Aircraft other) {
        Circuit here = Circuit.all(Wiring.of(BASE)).get(0);
        Circuit there = Circuit.all(Wiring.of(other)).get(0);
        Report none = Review.of(List.of(here), List.of(), Review.NO_DAY);
        Judgement judgement = Judgement.of(here, none, there, none);
        Tail tail = Tail.of("other", other, judgement, Trends.of(there.wiring()));
        List<String> sheets = new ArrayList<>();
        for (DifferenceSheets.Named named : DifferenceSheets.of(BASE, tail, none)) {
            SvgOutcome outcome = SvgOutcome.of(named.sheet());
            assertTrue(outcome instanceof SvgOutcome.Verified, named.name() + " " + outcome);
            sheets.add(((SvgOutcome.Verified) outcome).text());
        }
        return sheets;
    }

    private static Aircraft edited(String... lines) {
        return Edits.apply(
                        BASE,
                        EditReader.read("test.edit", String.join("\n", lines)).edits())
                .aircraft();
    }

    private static List<String> wires(List<String> sheets, String state) {
        List<String> wires = new ArrayList<>();
        Pattern title = Pattern.compile("<title>(W\\S+) [^<]*, " + state + "</title>");
        for (String sheet : sheets) {
            Matcher found = title.matcher(sheet);
            while (found.find()) {
                wires.add(found.group(1));
            }
        }
        return wires.stream().sorted().toList();
    }

    @Test
    void whatIsNewIsAddedAndWhatIsGoneIsRemoved() {
        List<String> sheets = sheets(edited(
                "remove leads[W63]",
                "add leads {\"id\":\"W99\",\"from\":\"LGC-CMD-2\",\"to\":\"FC-A1-2\",\"kind\":\"pulse\"}"));
        assertEquals(List.of("W99.2"), wires(sheets, "added"));
        assertEquals(List.of("W63.1", "W63.2", "W63.3"), wires(sheets, "removed"));
        assertTrue(sheets.stream().anyMatch(sheet -> sheet.contains(">removed<") && sheet.contains(">unchanged<")));
    }

    @Test
    void crossedConductorsShowBothWays() {
        List<String> sheets = sheets(edited("set leads[W41].pins 1>1 2>3 3>2 4>4"));
        assertEquals(1, sheets.size());
        assertEquals(List.of("W41.2", "W41.3"), wires(sheets, "added"));
        assertEquals(List.of("W41.2~2", "W41.3~2"), wires(sheets, "removed"));
        assertTrue(wires(sheets, "unchanged").contains("W41.1"));
    }

    @Test
    void aTerminatorIsMarkedAtItsPlaceAndNothingElseIsNew() {
        List<String> sheets =
                sheets(edited("set units[LOG].ports[CAN2].terminator on", "set units[GMC].ports[CAN2].terminator off"));
        assertEquals(1, sheets.size());
        assertTrue(sheets.get(0).contains("data-target=\"LOG-C1-R\""), sheets.get(0));
        assertTrue(sheets.get(0).contains("data-target=\"GMC-C1-R\""));
        assertEquals(List.of(), wires(sheets, "added"));
    }

    @Test
    void unitsThatCameAndWent() {
        List<String> sheets = sheets(edited(
                "remove units[COR]",
                "remove leads[W90]",
                "remove leads[W75]",
                "add units {\"ref\":\"CAM2\",\"type\":\"CAM\",\"what\":\"second camera\"}",
                "add leads {\"id\":\"W92\",\"from\":\"RG12-O4\",\"to\":\"CAM2-PWR\",\"kind\":\"power\"}"));
        assertTrue(sheets.stream().anyMatch(sheet -> sheet.contains("unit COR, removed")));
        assertTrue(sheets.stream().anyMatch(sheet -> sheet.contains("unit CAM2, added")));
        assertEquals(List.of("W92.1", "W92.2"), wires(sheets, "added"));
    }

    @Test
    void noDifferenceNoSheet() {
        assertEquals(List.of(), sheets(BASE));
        assertFalse(sheets(edited("set leads[W65].lengthMm 640")).isEmpty());
    }
}
