package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.draw.SvgPage;
import ringout.draw.style.Drawn;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.read.AircraftReader;
import ringout.read.source.MemoryFolder;
import ringout.synthetic.SyntheticAircraft;

/** Sheets of the whole aircraft on random aircraft: the verifier finds nothing wrong with any. */
class SurveyOfRandomAircraftTest {
    private static Circuit circuit(long seed) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        SyntheticAircraft.write(seed, 60 + (int) (seed * 17 % 90), bytes);
        MemoryFolder folder =
                MemoryFolder.named("random").with("aircraft.json", bytes.toString(StandardCharsets.UTF_8));
        return Circuit.all(Wiring.of(AircraftReader.read(folder).aircraft())).get(0);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void everySheetPasses(long seed) {
        Circuit circuit = circuit(seed);
        Report report = Review.of(List.of(circuit), Catalogue.looking(), Review.NO_DAY);
        Drawn block = SurveySheets.block(circuit, report, "").orElseThrow();
        SvgPage page = Sheets.page(block.numbered(1, 1));
        assertEquals(circuit.wiring().directory().count(), page.by("unit").size());
        Drawn place = SurveySheets.place(circuit, report, "").orElseThrow();
        Sheets.verified(place.numbered(1, 1));
        SurveySheets.map(circuit, report, "").ifPresent(map -> Sheets.verified(map.numbered(1, 1)));
        List<Drawn> loss = SurveySheets.loss(circuit, report, "");
        assertTrue(!loss.isEmpty(), "no loss of weight");
        loss.forEach(sheet -> Sheets.verified(sheet.numbered(1, 1)));
    }
}
