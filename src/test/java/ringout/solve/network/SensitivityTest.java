package ringout.solve.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Derivatives against central differences of fresh solutions, and against a divider by hand. */
class SensitivityTest {

    /** V = E R2 / (R1 + R2): dV/dR1 = -E R2 / (R1 + R2)^2, dV/dR2 = E R1 / (R1 + R2)^2, dV/dE = R2 / (R1 + R2). */
    @Test
    void divider() {
        NetworkBuilder b = ResistiveNetwork.builder(4);
        int source = b.source(0, 1, 12, 1);
        int link = b.resistor(1, 2, 0);
        int lower = b.resistor(2, 0, 3);
        int load = b.inject(2, 0, 0);
        NetworkSolution solution = FactorisedNetwork.of(b.reference(0).build()).solve();
        Sensitivity s = Sensitivity.of(solution, 2, 0);
        assertEquals(-12 * 3 / 16.0, s.voltsPerOhm(source), 1e-14);
        assertEquals(-12 * 3 / 16.0, s.voltsPerOhm(link), 1e-14);
        assertEquals(12 / 16.0, s.voltsPerOhm(lower), 1e-14);
        assertEquals(0.75, s.voltsPerVolt(source), 1e-15);
        assertEquals(-0.75, s.voltsPerAmp(load), 1e-15);
        assertThrows(IllegalArgumentException.class, () -> Sensitivity.of(solution, 2, 3));
    }

    @Property(tries = 300)
    void equalsCentralDifferences(@ForAll long seed) {
        ResistiveNetwork network = RandomNetworks.any(seed);
        FactorisedNetwork factorised = FactorisedNetwork.of(network);
        Random random = new Random(seed);
        int a = random.nextInt(network.nodes());
        int b = random.nextInt(network.nodes());
        if (network.elements() == 0 || !factorised.connected(a, b)) {
            return;
        }
        Sensitivity s = Sensitivity.of(factorised.solve(), a, b);
        int e = random.nextInt(network.elements());
        if (network.ohms(e) == 0 || Double.isInfinite(network.ohms(e))) {
            return;
        }
        double step = 1e-4 * network.ohms(e);
        double up = voltage(network, e, network.ohms(e) + step, a, b);
        double down = voltage(network, e, network.ohms(e) - step, a, b);
        double difference = (up - down) / (2 * step);
        assertEquals(difference, s.voltsPerOhm(e), 1e-5 * Math.max(1, Math.abs(difference)));
    }

    private static double voltage(ResistiveNetwork network, int element, double ohms, int a, int b) {
        double[] values = new double[network.elements()];
        for (int e = 0; e < values.length; e++) {
            values[e] = e == element ? ohms : network.ohms(e);
        }
        return Probe.volts(
                FactorisedNetwork.of(network.withOhms(values)).solve().between(a, b));
    }
}
