package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.edit.Edits;
import ringout.present.svg.SvgOutcome;
import ringout.read.AircraftReader;
import ringout.read.edit.EditReader;

/** The bus diagrams of the samples: one a bus, passed by the verifier, with the trunk length and every member on it. */
class BusSheetsTest {
    private static final Pattern MEMBER =
            Pattern.compile("data-pin=\"([^\"]+)\".*?<rect x=\"([0-9.]+)\"", Pattern.DOTALL);

    @ParameterizedTest
    @CsvSource({
        "samples/linewarden-review, 2, trunk 1.80 m",
        "samples/dewmaker, 3, trunk 5.73 m",
        "samples/starter, 1, trunk"
    })
    void everyBusHasItsSheet(String sample, int buses, String words) {
        List<Circuit> circuits =
                Circuit.all(Wiring.of(AircraftReader.read(Path.of(sample)).aircraft()));
        Report report = Review.of(circuits, Catalogue.all(), Review.NO_DAY);
        List<BusSheets.Named> sheets = BusSheets.of(circuits.get(0), report, "0badcafe");
        assertEquals(buses, sheets.size());
        StringBuilder all = new StringBuilder();
        for (BusSheets.Named sheet : sheets) {
            SvgOutcome outcome = SvgOutcome.of(sheet.drawing().sheet());
            assertTrue(outcome instanceof SvgOutcome.Verified, outcome.toString());
            all.append(((SvgOutcome.Verified) outcome).text());
        }
        assertTrue(all.toString().contains(words), "no '" + words + "' on any sheet of " + sample);
    }

    /** A lead led back to the first unit for redundancy: the ring must be seen, not only told. */
    @Test
    void leadThatClosesARingIsDrawnWithItsMarkAndCrossedOut() throws IOException {
        Path edit = Path.of("src/test/resources/seeded/dewmaker/DM01.edit");
        Aircraft ring = Edits.apply(
                        AircraftReader.read(Path.of("samples/dewmaker")).aircraft(),
                        EditReader.read(edit.toString(), Files.readString(edit)).edits())
                .aircraft();
        List<String> sheets = sheets(ring);
        assertEquals(3, sheets.size());
        String closed = sheets.get(0);
        assertTrue(
                closed.contains("data-wire=\"W45.H\"") && closed.contains("data-wire=\"W45.L\""), "both legs of W45");
        assertTrue(closed.contains("W45 1.00 m, closes the ring"), "its label");
        assertTrue(closed.contains("one too many"), "crossed out, and the legend says so");
        assertTrue(closed.contains("data-target=\"W45\""), "its mark");
    }

    @Test
    void busIsReadFromTheFlightControllerOutwards() {
        for (String sample : List.of("samples/linewarden-review", "samples/dewmaker")) {
            for (String sheet : sheets(AircraftReader.read(Path.of(sample)).aircraft())) {
                Matcher member = MEMBER.matcher(sheet);
                double controller = Double.MAX_VALUE;
                double leftmost = Double.MAX_VALUE;
                while (member.find()) {
                    double x = Double.parseDouble(member.group(2));
                    leftmost = Math.min(leftmost, x);
                    controller = member.group(1).startsWith("FC") ? x : controller;
                }
                assertEquals(leftmost, controller, "the controller is the first member of " + sample);
            }
        }
    }

    private static List<String> sheets(Aircraft aircraft) {
        List<Circuit> circuits = Circuit.all(Wiring.of(aircraft));
        Report report = Review.of(circuits, Catalogue.all(), Review.NO_DAY);
        List<String> texts = new ArrayList<>();
        for (BusSheets.Named sheet : BusSheets.of(circuits.get(0), report, "0badcafe")) {
            SvgOutcome outcome = SvgOutcome.of(sheet.drawing().sheet());
            assertTrue(outcome instanceof SvgOutcome.Verified, outcome.toString());
            texts.add(((SvgOutcome.Verified) outcome).text());
        }
        return texts;
    }
}
