package ringout.solve.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.graph.Circuit;

/**
 * The band of a reading against intervals computed by hand: ladders and series-parallel rules on the numbers of the list.
 *
 * <p>Sources: area of a gauge, ASTM B258 (diameter 0.127 mm times 92 to the power of (36 - n) / 39); copper 1/58 ohm mm2/m
 * (IEC 60028); resistances in series and parallel.
 */
class OhmsBandTest {
    private static final double[] TRUNK_MM = {620, 550, 180, 450};
    private static final int SAMPLES = 400;

    /** All resistances of the chain at one end of their tolerance: -1 least, 0 nominal, +1 most. */
    private record Chain(int end) {
        double terminator() {
            return 120 * (1 + 0.01 * end);
        }

        double input() {
            return 30_000 * (1 + 0.30 * end);
        }

        /** Both conductors of a lead with two contacts each. */
        double loop(double lengthMm) {
            double diameter = 0.127 * Math.pow(92, (36 - 26) / 39.0);
            double area = Math.PI / 4 * diameter * diameter;
            double conductor = lengthMm / 1000 / 58 / area * (1 + 0.10 * end);
            double contact = 0.020 * (1 + end);
            return 2 * (conductor + 2 * contact);
        }

        static double parallel(double a, double b) {
            return a * b / (a + b);
        }

        /** From the gimbal controller back to the flight controller. */
        double atFlightController() {
            double seen = parallel(terminator(), input());
            for (int i = TRUNK_MM.length - 1; i >= 0; i--) {
                seen = parallel(seen + loop(TRUNK_MM[i]), input());
            }
            return parallel(seen, terminator());
        }

        /** Into the lead pulled at the gimbal controller: one terminator, four node inputs, its own contacts away. */
        double intoPulledLead() {
            double seen = parallel(terminator(), input());
            for (int i = 0; i < TRUNK_MM.length; i++) {
                seen = i == TRUNK_MM.length - 1
                        ? seen + loop(TRUNK_MM[i]) - 2 * 0.020 * (1 + end)
                        : parallel(seen + loop(TRUNK_MM[i]), input());
            }
            return seen;
        }
    }

    @Test
    void matedChainIsALadder() {
        Reading.Ohms reading = MeterTests.reading(MeterTests.linewarden(), "FC-C2-H", "FC-C2-L");
        assertEquals(new Chain(0).atFlightController(), reading.ohm(), 1e-9);
        assertEquals(new Chain(-1).atFlightController(), reading.least(), 1e-9);
        assertEquals(new Chain(1).atFlightController(), reading.most(), 1e-9);
    }

    @Test
    void pulledLeadIsALadder() {
        Reading.Ohms reading = MeterTests.reading(MeterTests.linewarden("GMC-C1"), "W68@GMC-C1-H", "W68@GMC-C1-L");
        assertEquals(new Chain(0).intoPulledLead(), reading.ohm(), 1e-9);
        assertEquals(new Chain(-1).intoPulledLead(), reading.least(), 1e-9);
        assertEquals(new Chain(1).intoPulledLead(), reading.most(), 1e-9);
    }

    /** Conductor of 0.1 mm2 and two contacts of 10 milliohm; k of 1 + spread. */
    private static double lead(double lengthMm, double conductor, double contacts) {
        return lengthMm / 1000 / 58 / 0.1 * conductor + 0.020 * contacts;
    }

    /**
     * A bridge of five leads is no series-parallel network: by the star-mesh rule (Kennelly, Electrical World 34, 1899),
     * with every one of the ten tolerances drawn anew, no reading leaves the band, and both ends of it are attained.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void nothingWithinToleranceLeavesTheBandOfABridge(long seed) {
        int[][] rows = {{0, 1}, {0, 2}, {1, 2}, {1, 3}, {2, 3}};
        double[] mm = {310, 1200, 75, 2400, 640};
        Circuit circuit = MeterTests.circuit(MeterTests.net(4, rows, mm));
        Reading.Ohms band = MeterTests.reading(circuit, "J0-P-1", "J3-P-1");
        assertEquals(bridge(mm, i -> 1, i -> 1), band.ohm(), 1e-12);
        assertEquals(bridge(mm, i -> 0.9, i -> 0), band.least(), 1e-12);
        assertEquals(bridge(mm, i -> 1.1, i -> 2), band.most(), 1e-12);
        Random random = new Random(seed);
        for (int n = 0; n < SAMPLES; n++) {
            double drawn = bridge(mm, i -> 0.9 + 0.2 * random.nextDouble(), i -> 2 * random.nextDouble());
            assertTrue(drawn >= band.least() && drawn <= band.most(), drawn + " outside " + band);
        }
    }

    private interface Factor {
        double of(int row);
    }

    private static double bridge(double[] mm, Factor conductor, Factor contacts) {
        double[] r = new double[mm.length];
        for (int i = 0; i < r.length; i++) {
            r[i] = lead(mm[i], conductor.of(i), contacts.of(i));
        }
        double sum = r[0] + r[1] + r[2];
        double top = r[0] * r[1] / sum;
        double left = r[0] * r[2] / sum + r[3];
        double right = r[1] * r[2] / sum + r[4];
        return top + left * right / (left + right);
    }

    /** Two equal leads in parallel: each of the six tolerances moves the reading by a quarter of its own half width. */
    @Test
    void rootSumSquareOfTwoLeadsInParallel() {
        Circuit circuit = MeterTests.circuit(MeterTests.net(2, new int[][] {{0, 1}, {0, 1}}, new double[] {580, 580}));
        OhmsAnswer answer = MeterTests.ohms(circuit, "J0-P-1", "J1-P-1");
        double conductor = 0.25 * 0.1 * 0.1;
        double contact = 0.25 * 0.010;
        assertEquals(Math.sqrt(2 * conductor * conductor + 4 * contact * contact), answer.spreadOhm(), 1e-12);
        assertEquals(0.06, ((Reading.Ohms) answer.reading()).ohm(), 1e-12);
        assertEquals(2, answer.routes().size());
        assertEquals(0.5, answer.routes().get(0).share(), 1e-9);
    }

    @Test
    void aPointAgainstItselfReadsNothing() {
        Reading.Ohms reading = MeterTests.reading(MeterTests.linewarden(), "FC-C2-H", "FC-C2-H");
        assertEquals(new Reading.Ohms(0, 0, 0), reading);
    }
}
