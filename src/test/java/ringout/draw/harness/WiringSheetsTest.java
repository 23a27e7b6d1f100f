package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.draw.wiring.WiringDrawing;
import ringout.finding.Headline;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.present.svg.SvgOutcome;
import ringout.read.AircraftReader;

/** The wiring sheets of whole aircraft, judged from the finished SVG alone. */
class WiringSheetsTest {
    private static final Pattern WIRE = Pattern.compile("data-wire=\"([^\"]+)\"");

    private final List<String> sheets = new ArrayList<>();
    private Circuit circuit;
    private Report report;

    private void draw(String sample) {
        Aircraft aircraft = AircraftReader.read(Path.of(sample)).aircraft();
        List<Circuit> circuits = Circuit.all(Wiring.of(aircraft));
        circuit = circuits.get(0);
        report = Review.of(circuits, Catalogue.all(), Review.NO_DAY);
        for (WiringDrawing.Fits fits : WiringSheets.of(circuit, report, "0badcafe")) {
            SvgOutcome outcome = SvgOutcome.of(fits.sheet());
            assertTrue(outcome instanceof SvgOutcome.Verified, outcome.toString());
            sheets.add(((SvgOutcome.Verified) outcome).text());
        }
    }

    private static Set<String> wires(String svg) {
        Set<String> found = new TreeSet<>();
        Matcher matcher = WIRE.matcher(svg);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    @ParameterizedTest
    @ValueSource(strings = {"samples/starter", "samples/linewarden-review", "samples/dewmaker"})
    void everyConductorStandsOnOneSheetOfAtMostSixty(String sample) {
        draw(sample);
        Set<String> all = new HashSet<>();
        int count = 0;
        for (String sheet : sheets) {
            Set<String> wires = wires(sheet);
            assertTrue(wires.size() <= Cut.MOST, wires.size() + " conductors on one sheet");
            count += wires.size();
            all.addAll(wires);
        }
        assertEquals(count, all.size(), "a conductor stands on two sheets");
        assertTrue(count >= circuit.wiring().wires().size(), count + " drawn");
    }

    @Test
    void everyGraveFindingHasItsBadgeOnASheet() {
        draw("samples/linewarden-review");
        String all = String.join("\n", sheets);
        for (Headline headline : report.headlines()) {
            if (headline.finding().severity().atLeast(Severity.S3)) {
                assertTrue(
                        all.contains(headline.finding().code()),
                        headline.finding().id() + " is on no sheet");
            }
        }
        assertTrue(report.headlines().size() >= 3, "too few findings to judge");
    }

    @Test
    void theSameAircraftGivesTheSameBytes() {
        draw("samples/starter");
        List<String> first = List.copyOf(sheets);
        sheets.clear();
        draw("samples/starter");
        assertEquals(first, sheets);
    }

    @Test
    void everyFuseOfALeadIsDrawnInItsConductorWithItsRating() {
        draw("samples/linewarden-review");
        String all = String.join("\n", sheets);
        for (String fuse : List.of("W61 18 RD 3 A", "W69 22 RD 1 A", "W71 16 RD 7.5 A", "W77 20 RD 3 A")) {
            assertEquals(1, all.split(Pattern.quote(">" + fuse + "<"), -1).length - 1, fuse);
        }
        assertEquals(4, all.split("class=\"fuse\"", -1).length - 1, "fuses drawn");
    }

    @Test
    void noSubtitleIsCut() {
        draw("samples/linewarden-review");
        assertTrue(sheets.stream().noneMatch(sheet -> sheet.contains("\u2026")), "an ellipsis on a sheet");
    }
}
