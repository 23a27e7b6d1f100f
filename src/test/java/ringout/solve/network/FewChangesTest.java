package ringout.solve.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Values that differ in few places, taken over from a factorisation, against the factorisation from the start. */
class FewChangesTest {

    @Property(tries = 100)
    void equalsTheFactorisationFromTheStart(@ForAll long seed) {
        Random random = new Random(seed);
        ResistiveNetwork network = SyntheticHarness.of(200 + random.nextInt(400), 7);
        ResistiveNetwork other = network.withOhms(changed(network, random));
        IntRow few = FewChanges.changed(network, other);
        assertTrue(few.size() > 0 && FewChanges.worthIt(few, other));
        FactorisedNetwork base = FactorisedNetwork.of(network);
        NetworkSolution taken = base.with(other).solve();
        NetworkSolution fresh = base.structure().factorise(other).solve();
        for (int v = 0; v < network.nodes(); v++) {
            assertEquals(taken.factorised().grounded(v), fresh.factorised().grounded(v));
            if (fresh.factorised().grounded(v)) {
                double volts = Probe.volts(fresh.voltage(v));
                assertEquals(volts, Probe.volts(taken.voltage(v)), 1e-12 * (1 + Math.abs(volts)));
            }
        }
        assertEquals(
                Probe.volts(base.solve().between(0, 1)),
                Probe.volts(base.with(network).solve().between(0, 1)));
    }

    private static double[] changed(ResistiveNetwork network, Random random) {
        double[] ohms = new double[network.elements()];
        for (int e = 0; e < ohms.length; e++) {
            ohms[e] = network.ohms(e);
        }
        for (int i = 0; i < 6; i++) {
            ohms[random.nextInt(ohms.length)] = Double.POSITIVE_INFINITY;
            ohms[random.nextInt(ohms.length)] *= 1 + random.nextInt(5);
        }
        return ohms;
    }
}
