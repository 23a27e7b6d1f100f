package ringout.solve.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * A ladder with resistances from 1 microohm to 1 gigaohm in wild order, against 120-digit arithmetic. The textbook
 * factorisation in double precision is run beside it to show that the ladder is as hard as it looks.
 */
class LadderAccuracyTest {

    private static final int CELLS = 1000;
    private static final MathContext DIGITS = new MathContext(120);

    private final double[] series = new double[CELLS];
    private final double[] across = new double[CELLS];

    /** Each resistance anywhere between its ends, evenly over the decades. */
    private void draw(long seed, double lowest, double highestInSeries, double lowestAcross, double highest) {
        Random random = new Random(seed);
        for (int i = 0; i < CELLS; i++) {
            series[i] = decade(random, lowest, highestInSeries);
            across[i] = decade(random, lowestAcross, highest);
        }
    }

    private static double decade(Random random, double lowest, double highest) {
        return lowest * Math.pow(highest / lowest, random.nextDouble());
    }

    @Test
    void potentialsKeepTheirDigits() {
        for (long seed = 1; seed <= 5; seed++) {
            draw(seed, 1e-6, 1e3, 1, 1e9);
            double[] exact = exactPotentials();
            double ours = largestRelativeError(exact, ourPotentials());
            double plain = largestRelativeError(exact, plainPotentials());
            assertTrue(ours <= 1e-12, "seed " + seed + ": relative error " + ours);
            assertTrue(
                    plain >= 1e6 * ours && plain >= 1e-10,
                    "seed " + seed + ": the plain factorisation errs by only " + plain);
        }
    }

    /** The voltage dies away over hundreds of decades; as long as a double can hold it, it is right. */
    @Test
    void anyOrderOfDecadesChangesNothing() {
        draw(6, 1e-9, 1e12, 1e-9, 1e12);
        double ours = largestRelativeError(exactPotentials(), ourPotentials());
        assertTrue(ours <= 1e-12, "relative error " + ours);
    }

    @Test
    void resistancesBetweenNeighboursKeepTheirDigits() {
        draw(7, 1e-6, 1e9, 1e-6, 1e9);
        EffectiveResistance meter = EffectiveResistance.of(ladder());
        for (int i = 0; i < CELLS; i += 7) {
            double exact = exactResistanceOfRung(i);
            assertEquals(exact, Probe.ohms(meter.between(i + 1, 0)), 1e-12 * exact);
        }
    }

    private ResistiveNetwork ladder() {
        NetworkBuilder b = ResistiveNetwork.builder(CELLS + 1);
        for (int i = 0; i < CELLS; i++) {
            b.resistor(i + 1, 0, across[i]);
            if (i + 1 < CELLS) {
                b.resistor(i + 1, i + 2, series[i]);
            }
        }
        b.inject(0, CELLS / 2 + 1, 1);
        return b.reference(0).build();
    }

    private double[] ourPotentials() {
        NetworkSolution solution = FactorisedNetwork.of(ladder()).solve();
        double[] volts = new double[CELLS];
        for (int i = 0; i < CELLS; i++) {
            volts[i] = Probe.volts(solution.voltage(i + 1));
        }
        return volts;
    }

    /** Conductance that a node sees to its left, itself included, and the like to its right: sums and quotients only. */
    private BigDecimal[] seen(boolean fromRight) {
        BigDecimal[] seen = new BigDecimal[CELLS];
        for (int k = 0; k < CELLS; k++) {
            int i = fromRight ? CELLS - 1 - k : k;
            seen[i] = siemens(across[i]);
            if (k > 0) {
                int before = fromRight ? i + 1 : i - 1;
                BigDecimal ohms = new BigDecimal(series[Math.min(i, before)])
                        .add(BigDecimal.ONE.divide(seen[before], DIGITS), DIGITS);
                seen[i] = seen[i].add(BigDecimal.ONE.divide(ohms, DIGITS), DIGITS);
            }
        }
        return seen;
    }

    private static BigDecimal siemens(double ohms) {
        return BigDecimal.ONE.divide(new BigDecimal(ohms), DIGITS);
    }

    private double exactResistanceOfRung(int i) {
        BigDecimal both = seen(false)[i].add(seen(true)[i]).subtract(siemens(across[i]));
        return BigDecimal.ONE.divide(both, DIGITS).doubleValue();
    }

    private double[] exactPotentials() {
        BigDecimal[] left = seen(false);
        BigDecimal[] right = seen(true);
        BigDecimal[] volts = new BigDecimal[CELLS];
        int source = CELLS / 2;
        BigDecimal total = left[source].add(right[source]).subtract(siemens(across[source]));
        volts[source] = BigDecimal.ONE.divide(total, DIGITS);
        for (int i = source + 1; i < CELLS; i++) {
            volts[i] = divided(volts[i - 1], series[i - 1], right[i]);
        }
        for (int i = source - 1; i >= 0; i--) {
            volts[i] = divided(volts[i + 1], series[i], left[i]);
        }
        double[] rounded = new double[CELLS];
        for (int i = 0; i < CELLS; i++) {
            rounded[i] = volts[i].doubleValue();
        }
        return rounded;
    }

    private static BigDecimal divided(BigDecimal volts, double ohms, BigDecimal seen) {
        BigDecimal divisor = BigDecimal.ONE.add(new BigDecimal(ohms).multiply(seen, DIGITS), DIGITS);
        return volts.divide(divisor, DIGITS);
    }

    /** The textbook way: assemble the diagonal as a sum and subtract from it what elimination takes away. */
    private double[] plainPotentials() {
        double[] diagonal = new double[CELLS];
        double[] volts = new double[CELLS];
        for (int i = 0; i < CELLS; i++) {
            diagonal[i] = 1 / across[i] + (i > 0 ? 1 / series[i - 1] : 0) + (i + 1 < CELLS ? 1 / series[i] : 0);
        }
        volts[CELLS / 2] = 1;
        for (int i = 0; i + 1 < CELLS; i++) {
            double fraction = 1 / series[i] / diagonal[i];
            diagonal[i + 1] -= fraction / series[i];
            volts[i + 1] += fraction * volts[i];
        }
        for (int i = CELLS - 1; i >= 0; i--) {
            volts[i] /= diagonal[i];
            volts[i] += i + 1 < CELLS ? 1 / series[i] / diagonal[i] * volts[i + 1] : 0;
        }
        return volts;
    }

    private static double largestRelativeError(double[] exact, double[] computed) {
        double largest = 0;
        for (int i = 0; i < exact.length; i++) {
            boolean nearUnderflow = exact[i] < 1e-280;
            double scale = nearUnderflow ? 1e-260 : exact[i];
            largest = Math.max(largest, Math.abs(computed[i] - exact[i]) / scale);
        }
        return largest;
    }
}
