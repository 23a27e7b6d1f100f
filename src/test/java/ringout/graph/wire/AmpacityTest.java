package ringout.graph.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ringout.graph.SmallAircraft.circuit;
import static ringout.graph.SmallAircraft.read;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringout.graph.Gap;
import ringout.graph.Wire;
import ringout.model.Awg;

/** The wire table and its factors. Protector columns: FAA AC 43.13-1B, table 11-3. Free air: common practice, no source. */
class AmpacityTest {
    private static final double EXACT = 1e-9;

    private static Wire wire(String fields) {
        return circuit(read(
                        "{\"units\": [{\"ref\": \"A\", \"type\": \"PACK\"}, {\"ref\": \"PDB\", \"type\": \"BOARD\"}],"
                                + "\"leads\": [{\"id\": \"W1\", \"from\": \"A-N\", \"to\": \"PDB-BN\"" + fields
                                + "}]}"))
                .wiring()
                .wires()
                .get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "22, 5, 5",
        "20, 7.5, 5",
        "18, 10, 10",
        "16, 15, 10",
        "14, 20, 15",
        "12, 30, 20",
        "10, 40, 30",
        "8, 50, 50",
        "6, 80, 70",
        "4, 100, 70"
    })
    void protectorsAreThoseOfTheChart(int gauge, double breaker, double fuse) {
        WireTable.Row row = WireTable.row(new Awg(gauge)).orElseThrow();
        assertEquals(breaker, row.breakerA());
        assertEquals(fuse, row.fuseA());
    }

    @Test
    void freeAirCurrentGrowsWithTheSize() {
        List<WireTable.Row> rows = WireTable.rows();
        for (int i = 1; i < rows.size(); i++) {
            assertTrue(rows.get(i).gauge() < rows.get(i - 1).gauge());
            assertTrue(rows.get(i).freeAirA() > rows.get(i - 1).freeAirA());
        }
    }

    /** MIL-STD-975 from memory: (29 - N)/28 up to 15 wires, half beyond; below 7 common practice. */
    @ParameterizedTest
    @CsvSource({"1, 1", "3, 1", "4, 0.8", "6, 0.8", "7, 0.785714285714", "15, 0.5", "16, 0.5"})
    void bundlesDerate(int loaded, double factor) {
        assertEquals(factor, Ampacity.bundle(loaded), 1e-9);
    }

    @Test
    void aSignalLeadOf26Gauge() {
        Wire wire = wire(", \"awg\": 26, \"insulationC\": 105, \"movingAir\": false, \"loadedInBundle\": 2");
        assertEquals(new Ampacity(2.2, 2.2), Ampacity.of(wire));
        assertEquals("26 AWG free air", Ampacity.words(wire));
        assertEquals(List.of(), Ampacity.missing(wire));
    }

    @Test
    void siliconeInMovingAirCarriesMore() {
        Wire wire = wire(", \"awg\": 12, \"insulationC\": 200, \"movingAir\": true, \"loadedInBundle\": 5");
        assertEquals(41 * 1.4 * 0.8, Ampacity.of(wire).low(), EXACT);
        assertEquals(41 * 1.4 * 0.8, Ampacity.of(wire).high(), EXACT);
        assertEquals("12 AWG free air, silicone in moving air x1.4, 5 loaded wires x0.8", Ampacity.words(wire));
    }

    @Test
    void aBundleThatIsNotToldLeavesABandAndAirThatIsNotToldGivesNothing() {
        Wire wire = wire(", \"awg\": 26");
        assertEquals(new Ampacity(2.2 * 0.5, 2.2), Ampacity.of(wire));
        assertEquals(1.4, Ampacity.bonusLeft(wire));
        assertEquals(1, Ampacity.bonusLeft(wire(", \"awg\": 26, \"insulationC\": 105")));
        assertEquals(1, Ampacity.bonusLeft(wire(", \"awg\": 26, \"insulationC\": 200, \"movingAir\": false")));
        assertEquals(List.of(new Gap("number of loaded wires in the bundle", "W1")), Ampacity.missing(wire));
        Wire bare = wire("");
        assertEquals(new Ampacity(0, Double.POSITIVE_INFINITY), Ampacity.of(bare));
        assertEquals(new Gap("wire size", "W1"), Ampacity.missing(bare).get(0));
    }

    @Test
    void sizesInSquareMillimetresLieBetweenTheGauges() {
        Wire half = wire(", \"areaMm2\": 0.5, \"movingAir\": false, \"loadedInBundle\": 1");
        double amps = Ampacity.of(half).low();
        assertTrue(amps > 7 && amps < 11, "0.5 mm2 lies between 22 and 20 AWG: " + amps);
        assertEquals(11, WireTable.freeAirA(new Awg(20).areaMm2()).orElseThrow(), EXACT);
        assertEquals(0.86, WireTable.freeAirA(0.05).orElseThrow(), EXACT, "0.05 mm2 is what a 30 AWG wire is called");
    }

    @Test
    void beyondTheTableOnlyOneSideIsKnown() {
        assertEquals(
                new Ampacity(135, Double.POSITIVE_INFINITY),
                Ampacity.of(wire(", \"awg\": \"1/0\", \"movingAir\": false, \"loadedInBundle\": 1")));
        assertEquals(
                new Ampacity(0, 0.86), Ampacity.of(wire(", \"awg\": 36, \"movingAir\": false, \"loadedInBundle\": 1")));
    }
}
