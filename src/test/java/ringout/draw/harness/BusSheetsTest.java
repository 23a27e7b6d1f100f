package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.present.svg.SvgOutcome;
import ringout.read.AircraftReader;

/** The bus diagrams of the samples: one a bus, passed by the verifier, with the trunk length and every member on it. */
class BusSheetsTest {
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
}
