package ringout.solve.rating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ringout.graph.SmallAircraft.circuit;
import static ringout.graph.SmallAircraft.read;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringout.graph.Gap;
import ringout.graph.Wire;
import ringout.graph.wire.Ampacity;

/** The two sets of rules. Sources: FAA AC 43.13-1B, tables 11-3, 11-6 (continuous column read, the other from memory), 11-9. */
class WireRulesTest {
    private static final double EXACT = 1e-9;
    private static final WireRules SHORT = new ShortLeadPractice();
    private static final AircraftChart CHART = new AircraftChart();

    private static Wire wire(String fields) {
        return circuit(read(
                        "{\"units\": [{\"ref\": \"A\", \"type\": \"PACK\"}, {\"ref\": \"PDB\", \"type\": \"BOARD\"}],"
                                + "\"leads\": [{\"id\": \"W1\", \"from\": \"A-N\", \"to\": \"PDB-BN\", " + fields
                                + "}]}"))
                .wiring()
                .wires()
                .get(0);
    }

    private static void amps(double wanted, Ampacity band) {
        assertEquals(new Ampacity(wanted, wanted), band);
    }

    @Test
    void projectNamesItsRules() {
        assertInstanceOf(ShortLeadPractice.class, WireRules.of(read("{\"units\": []}")));
        assertInstanceOf(
                ShortLeadPractice.class, WireRules.of(read("{\"project\": {\"ruleSet\": \"short-lead practice\"}}")));
        assertInstanceOf(AircraftChart.class, WireRules.of(read("{\"project\": {\"ruleSet\": \"aircraft chart\"}}")));
        assertInstanceOf(AircraftChart.class, SHORT.other());
        assertInstanceOf(ShortLeadPractice.class, CHART.other());
    }

    /** A 20 A fuse on 14 AWG passes one set and fails the other. */
    @Test
    void setsDifferOnFourteenGauge() {
        Wire wire = wire("\"awg\": 14, \"loadedInBundle\": 2");
        amps(32, SHORT.protector(wire, Protector.FUSE));
        amps(15, CHART.protector(wire, Protector.FUSE));
        amps(20, CHART.protector(wire, Protector.BREAKER));
    }

    @ParameterizedTest
    @CsvSource({"2, 125, 100", "6, 80, 70", "22, 5, 5", "18, 10, 10"})
    void protectorOfTheChart(int awg, double breaker, double fuse) {
        amps(breaker, CHART.protector(wire("\"awg\": " + awg), Protector.BREAKER));
        amps(fuse, CHART.protector(wire("\"awg\": " + awg), Protector.FUSE));
    }

    @Test
    void largestSizesHaveAFuseOnly() {
        amps(150, CHART.protector(wire("\"awg\": 1"), Protector.FUSE));
        assertEquals(
                Double.POSITIVE_INFINITY,
                CHART.protector(wire("\"awg\": 1"), Protector.BREAKER).high());
    }

    @ParameterizedTest
    @CsvSource({
        "24, 2.5, 4, 5",
        "22, 3, 5, 6",
        "20, 4, 7, 9",
        "18, 6, 9, 12",
        "16, 7, 11, 14",
        "14, 10, 14, 18",
        "12, 13, 19, 25",
        "10, 17, 26, 32",
        "8, 38, 57, 71",
        "6, 50, 76, 97",
        "4, 68, 103, 133",
        "2, 95, 141, 179"
    })
    void currentOfTheChart(int awg, double at105, double at150, double at200) {
        String bundle = "\"awg\": " + awg + ", \"loadedInBundle\": 2, \"insulationC\": ";
        amps(at105, CHART.ampacity(wire(bundle + 105)));
        amps(at150, CHART.ampacity(wire(bundle + 150)));
        amps(at200, CHART.ampacity(wire(bundle + 200)));
    }

    /** Ten loaded wires: x(29 - 10)/28 (MIL-STD-975, from memory). */
    @Test
    void fullBundleTakesMoreOff() {
        amps(14 * 19 / 28.0, CHART.ampacity(wire("\"awg\": 16, \"loadedInBundle\": 10, \"insulationC\": 200")));
        assertEquals(
                new Ampacity(7, 14), CHART.ampacity(wire("\"awg\": 16, \"insulationC\": 200")), "half to all of 14 A");
    }

    @Test
    void missingInsulationLeavesABand() {
        Wire wire = wire("\"awg\": 16, \"loadedInBundle\": 2");
        assertEquals(new Ampacity(7, 14), CHART.ampacity(wire));
        assertEquals(List.of(new Gap("insulation temperature rating", "W1")), CHART.missing(wire));
    }

    /** The rise left to the insulation counts by its root: 200 - 60 over 200 - 70. */
    @Test
    void coolerAmbientCarriesMore() {
        Wire wire = wire("\"awg\": 20, \"loadedInBundle\": 2, \"insulationC\": 200, \"ambientC\": 60");
        assertEquals(9 * Math.sqrt(140 / 130.0), CHART.ampacity(wire).low(), EXACT);
        Wire hot = wire("\"awg\": 20, \"loadedInBundle\": 2, \"insulationC\": 105, \"ambientC\": 105");
        assertEquals(0, CHART.ampacity(hot).high(), EXACT);
        Wire soft = wire("\"awg\": 20, \"loadedInBundle\": 2, \"insulationC\": 85");
        assertEquals(4 * Math.sqrt(15 / 35.0), CHART.ampacity(soft).low(), EXACT);
    }

    /** A size between two rows counts as the thinner: 1.5 mm2 as 16 AWG (1.31), and 2 mm2 too; 2.08 as 14. */
    @Test
    void sizeBetweenRowsCountsAsTheThinner() {
        String rest = ", \"loadedInBundle\": 2, \"insulationC\": 200";
        amps(14, CHART.ampacity(wire("\"areaMm2\": 1.5" + rest)));
        amps(14, CHART.ampacity(wire("\"areaMm2\": 2" + rest)));
        amps(18, CHART.ampacity(wire("\"areaMm2\": 2.08" + rest)));
        amps(10, CHART.protector(wire("\"areaMm2\": 1.5"), Protector.FUSE));
    }

    @Test
    void thinWireIsNotInTheChart() {
        Wire wire = wire("\"awg\": 28, \"loadedInBundle\": 2, \"insulationC\": 105");
        assertEquals(new Ampacity(0, Double.POSITIVE_INFINITY), CHART.ampacity(wire));
        assertEquals(
                List.of(new Gap("current rating for a size beyond the table", "W1")),
                CHART.missing(wire, Protector.FUSE));
        assertEquals(List.of(new Gap("wire size", "W1")), CHART.missing(wire("\"insulationC\": 105"), Protector.FUSE));
    }

    @ParameterizedTest
    @CsvSource({"14, 0.5, 1", "28, 1, 2", "115, 4, 8", "200, 7, 14"})
    void dropOfTheChart(double volts, double continuous, double intermittent) {
        assertEquals(continuous, CHART.allowedDropV(volts, true), EXACT);
        assertEquals(intermittent, CHART.allowedDropV(volts, false), EXACT);
    }

    @Test
    void dropBetweenRowsGoesByTheLower() {
        assertEquals(44.4 / 28, CHART.allowedDropV(44.4, true), EXACT);
        assertEquals(12 / 14.0 * 0.5, CHART.allowedDropV(12, true), EXACT);
    }

    /** 5 % continuous, 8 % for seconds: common practice, no source. */
    @Test
    void eachSetNamesItself() {
        Wire wire = wire("\"awg\": 16, \"loadedInBundle\": 2, \"insulationC\": 200, \"ambientC\": 50");
        assertTrue(SHORT.currentSource().startsWith(SHORT.title()));
        assertTrue(CHART.protectorSource().endsWith("FAA AC 43.13-1B, table 11-3"));
        assertEquals("16 AWG by the chart, insulation 200 degC, ambient 50 degC", CHART.words(wire));
        assertEquals("16 AWG free air", SHORT.words(wire));
    }
}
