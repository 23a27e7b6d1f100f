package ringout.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wiring;
import ringout.graph.power.PowerGraph;
import ringout.model.Aircraft;
import ringout.model.State;
import ringout.model.shape.Shape;
import ringout.present.text.LoadSheetCsv;
import ringout.present.text.LoadSheetText;

/** Figures of the two sample aircraft, worked out by hand from their tables of loads and regulators, within 1 %. */
class LoadSheetsTest {
    private static Circuit sample(String name) {
        return Circuit.all(Wiring.of(SmallAircraft.sample(name))).get(0);
    }

    private static Output output(String sample, String name) {
        return LoadSheets.of(sample(sample)).rails().stream()
                .flatMap(rail -> rail.outputs().stream())
                .filter(output -> output.name().split(" ")[0].equals(name))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "linewarden, PMON, 1.57, 5, 3.37, 6",
        "linewarden, RG12, 4.8, 8, 9.0, 10",
        "linewarden, RG6, 0.65, 8, 4.45, 10",
        "dewmaker, RG12, 19.6, 30, 34.2, 40",
        "dewmaker, RG5A, 0.9, 4, 1.8, 5",
        "dewmaker, RGX, 0.4, 3, 1.2, 4"
    })
    void railsStandAgainstTheirRatings(
            String sample, String name, double average, double rated, double peak, double peakRated) {
        Output output = output(sample, name);
        near(average, output.averageA());
        near(peak, output.peakA().orElseThrow());
        assertEquals(rated, output.continuousA().orElseThrow());
        assertEquals(peakRated, output.peakRatingA().orElseThrow());
        assertEquals(100 * (rated - average) / rated, output.averageMargin().orElseThrow(), 0.5);
        assertEquals(100 * (peakRated - peak) / peakRated, output.peakMargin().orElseThrow(), 0.5);
    }

    @Test
    void linewardenPacksAndEndurance() {
        LoadSheet sheet = LoadSheets.of(sample("linewarden"));
        sheet.packs().forEach(pack -> near(39.0, pack.amps()));
        near(43.6, board(sheet, "PDB"));
        assertEquals(1, sheet.lasting().size());
        near(27.6, sheet.lasting().get(0).endurance().orElseThrow().minutes());
        // Six cells of 1.5 milliohm in series at 39 A.
        double inside = sheet.packs().get(0).sag() / sheet.packs().get(0).amps();
        near(0.009, inside);
    }

    @Test
    void dewmakerPacksAndEndurance() {
        LoadSheet sheet = LoadSheets.of(sample("dewmaker"));
        near(131, sheet.packs().stream().mapToDouble(PackLine::amps).sum());
        near(50.6, board(sheet, "PDB"));
        near(16.5, sheet.lasting().get(0).endurance().orElseThrow().minutes());
        assertEquals(List.of("PKA + PKB"), sheet.rails().get(1).fedBy());
    }

    /** What a source gives is what its takers take; what two sources share is the sum of both. */
    @Test
    void nothingIsLostBetweenSourceAndTakers() {
        for (String name : List.of("linewarden", "dewmaker", "starter")) {
            for (LoadRail rail : LoadSheets.of(sample(name)).rails()) {
                boolean shared = rail.takers().stream().anyMatch(Taker::shared);
                boolean series = rail.packs() && name.equals("linewarden");
                double given =
                        rail.outputs().stream().mapToDouble(Output::averageA).sum() / (series ? 2 : 1);
                if (!shared) {
                    assertEquals(given, rail.averageA(), 0.001 * given + 1e-6, rail.name());
                }
            }
        }
    }

    @Test
    void everyLoadAboardIsListed() {
        for (String name : List.of("linewarden", "dewmaker", "starter")) {
            Circuit circuit = sample(name);
            LoadSheet sheet = LoadSheets.of(circuit);
            TreeSet<String> listed = new TreeSet<>();
            sheet.rails()
                    .forEach(rail -> rail.takers().stream()
                            .filter(taker -> !taker.regulator())
                            .forEach(taker -> listed.add(taker.name())));
            assertEquals(PowerGraph.of(circuit).loads().size(), listed.size(), name);
            assertEquals(List.of(), sheet.unfed());
        }
    }

    @Test
    void aLoadWithoutPowerIsSaidToHaveNone() {
        Aircraft aircraft = SmallAircraft.sample("linewarden");
        Wiring wiring = Wiring.of(aircraft);
        State state = Circuit.states(wiring).get(0);
        State pulled = Shape.of(State.class).with(state, "pulled", List.of("PDB-T3"));
        LoadSheet sheet = LoadSheets.of(Circuit.of(wiring, pulled));
        assertTrue(
                sheet.unfed().containsAll(List.of("GMC", "CAM", "VTX", "COR")),
                sheet.unfed().toString());
        assertTrue(LoadSheetText.of(sheet).contains("no power GMC"));
    }

    @Test
    void bothFormsSayTheSameTwice() {
        LoadSheet sheet = LoadSheets.of(sample("linewarden"));
        assertEquals(LoadSheetText.of(sheet), LoadSheetText.of(LoadSheets.of(sample("linewarden"))));
        String csv = LoadSheetCsv.of(sheet);
        assertEquals(csv, LoadSheetCsv.of(LoadSheets.of(sample("linewarden"))));
        assertTrue(csv.contains("source,RG12 12,RG12 12,12,4.8,8,40,9,10,10,,,,,fed by BAT1 + BAT2"), csv);
        csv.lines().forEach(line -> assertEquals(15, line.split(",", -1).length, line));
        String text = LoadSheetText.of(sheet);
        assertTrue(
                text.lines().anyMatch(line -> line.matches(" +RG12 12 +12.00 +4.80 +8.00 +40 % +9.00 +10.00 +10 %")));
        assertTrue(text.contains("BAT1 + BAT2: 27.6 min"), text);
    }

    private static double board(LoadSheet sheet, String name) {
        return sheet.boards().stream()
                .filter(board -> board.name().split(" ")[0].equals(name))
                .findFirst()
                .orElseThrow()
                .volts();
    }

    private static void near(double expected, double actual) {
        assertEquals(expected, actual, 0.01 * expected);
    }
}
