package ringout.solve.rating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples of FAA AC 43.13-1B, chapter 11. Where a page was not read the value is marked as from memory. */
class WireSelectionTest {
    private static ChartWire row(int gauge) {
        return ChartWire.of(gauge).orElseThrow();
    }

    /** Figure 11-2, example 1: 50 ft with the ground wire, 28 V, 20 A continuous: between No. 8 and No. 10, so No. 8. */
    @Test
    void firstExampleTakesNumberEight() {
        assertEquals(8, WireSelection.thinnest(50, 20, 1).orElseThrow().gauge());
        assertEquals(1.26, WireSelection.dropV(row(10), 50, 20), 1e-9);
        assertEquals(0.70, WireSelection.dropV(row(8), 50, 20), 1e-9);
    }

    /**
     * Figure 11-2, example 2: 15.5 ft, 20 A, 200 degC wire at 50 degC, size 14 carries 47 A in free air; 0.91 at 20,000 ft and 0.6 in the
     * bundle leave 26 A (read). The conductor comes to 181.56 degC and 9.48 ft drop as much as 15.5 ft cold: too short. Size 12
     * with 37 A comes to 160.28 degC and 15.47 ft (from memory; 24 ft cold).
     */
    @Test
    void secondExampleIsTooShortOnFourteen() {
        double carries = 47 * Derating.altitude(20_000) * 0.6;
        assertEquals(26, carries, 0.5);
        double warm = Derating.conductorC(50, 200, 20, 26);
        assertEquals(181.56, warm, 0.005);
        assertEquals(9.48, Derating.lengthWarm(15.5, warm), 0.005);
        double twelve = Derating.conductorC(50, 200, 20, 37);
        assertEquals(160.28, twelve, 0.005);
        assertEquals(15.47, Derating.lengthWarm(24, twelve), 0.005);
    }

    /** Tables 11-7 and 11-8; the 90 ft row exceeds its own limit by 0.8 %, so the choice gets one per cent. */
    @ParameterizedTest
    @CsvSource({
        "1, 107, 20, 6, 0.9416",
        "0.5, 90, 20, 4, 0.5040",
        "4, 88, 20, 12, 3.5552",
        "7, 100, 20, 14, 6.1200",
        "1, 39, 20, 10, 0.9828",
        "0.5, 19.5, 20, 10, 0.4914",
        "4, 156, 20, 10, 3.9312",
        "7, 273, 20, 10, 6.8796"
    })
    void tablesOfDrop(double limit, double feet, double amps, int size, double drop) {
        assertEquals(
                size,
                WireSelection.thinnest(feet, amps, limit * 1.01).orElseThrow().gauge());
        assertEquals(drop, WireSelection.dropV(row(size), feet, amps), 5e-5);
    }

    /** Longest runs of size 10 at 20 A, from 1.26 ohm per 1000 ft; the chart reads 39, 19.5, 156 and 273 ft, 1.7 % less. */
    @ParameterizedTest
    @CsvSource({"1, 39.68, 39", "0.5, 19.84, 19.5", "4, 158.73, 156", "7, 277.78, 273"})
    void longestRuns(double drop, double feet, double chart) {
        double longest = WireSelection.longestFt(row(10), 20, drop);
        assertEquals(feet, longest, 0.005);
        assertEquals(chart, longest, chart * 0.02);
    }

    /** Paragraph 11-69, example 1: 35 wires at 60,000 ft, 60 degC, a fifth loaded (from memory). */
    @Test
    void bundleOfThirtyFive() {
        double altitude = Derating.altitude(60_000);
        double thick = 21.5 * 0.52 * altitude;
        double thin = 16.2 * 0.52 * altitude;
        assertEquals(8.8, thick, 0.05);
        assertEquals(6.6, thin, 0.06);
        assertEquals(50.6, (10 * thick + 25 * thin) * 0.2, 0.5);
    }

    /** Paragraph 11-69, example 2: 12 wires of size 12, all loaded (from memory). */
    @Test
    void bundleOfTwelve() {
        assertEquals(29.2, 68 * 0.43 * Derating.altitude(0), 0.05);
        assertEquals(350.4, 12 * 29.2 * Derating.altitude(0), 0.05);
        assertEquals(23.8, 61 * 0.43 * Derating.altitude(20_000), 0.1);
        assertEquals(68 / 61.0, Derating.rise(175, 140), 0.005);
    }

    /** 254.5 over 234.5 + T: the resistance of copper at 100 degC is 1.3143 times that at 20 degC. */
    @Test
    void copperWarm() {
        assertEquals(1 / 1.3143, Derating.lengthWarm(1, 100), 5e-5);
        assertEquals(1, Derating.lengthWarm(1, 20), 1e-12);
    }

    @Test
    void altitudeFallsToTheEndOfTheCurve() {
        assertEquals(1, Derating.altitude(0), 1e-12);
        assertEquals(0.91, Derating.altitude(20_000), 1e-12);
        assertEquals(0.79, Derating.altitude(60_000), 1e-12);
        assertEquals(0.79, Derating.altitude(90_000), 1e-12);
        assertTrue(Derating.altitude(10_000) < 1 && Derating.altitude(10_000) > 0.91);
    }

    /** The order of the rows. */
    @Test
    void noSizeDropsMoreThanAThinnerOne() {
        for (int i = 1; i < ChartWire.rows().size(); i++) {
            assertTrue(ChartWire.rows().get(i).ohmPer1000ft()
                    < ChartWire.rows().get(i - 1).ohmPer1000ft());
        }
    }
}
