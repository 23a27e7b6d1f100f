package ringout.solve.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Any network against an independent dense solution (Hipparchus), and the conservation laws. */
class RandomNetworkTest {

    private static final double CLOSE = 1e-9;

    @Property(tries = 150)
    void agreesWithTheDenseSolution(@ForAll long seed) {
        ResistiveNetwork network = RandomNetworks.any(seed);
        DenseReference dense = new DenseReference(network);
        NetworkSolution solution = FactorisedNetwork.of(network).solve();
        for (int a = 0; a < network.nodes(); a++) {
            int b = (a * 7 + 3) % network.nodes();
            if (dense.sameIsland(a, b)) {
                assertClose(dense.between(a, b), Probe.volts(solution.between(a, b)));
            } else {
                Probe.assertFloating(solution.between(a, b));
            }
            if (dense.hasReference(a)) {
                assertClose(dense.volts(a), Probe.volts(solution.voltage(a)));
            } else {
                Probe.assertFloating(solution.voltage(a));
            }
        }
    }

    @Property(tries = 150)
    void currentsAgreeWithTheDenseSolution(@ForAll long seed) {
        ResistiveNetwork network = RandomNetworks.any(seed);
        DenseReference dense = new DenseReference(network);
        BranchCurrents currents = FactorisedNetwork.of(network).solve().currents();
        for (int e = 0; e < network.elements(); e++) {
            // The dense judge takes the smallest currents in rings of 0 ohm: the same as equal resistances.
            assertClose(dense.amps(e), currents.amps(e));
        }
    }

    @Property(tries = 150)
    void resistanceIsTheVoltageOfOneAmpere(@ForAll long seed) {
        ResistiveNetwork network = RandomNetworks.any(seed);
        int a = 0;
        int b = network.nodes() - 1;
        NetworkBuilder test = ResistiveNetwork.builder(network.nodes());
        for (int e = 0; e < network.elements(); e++) {
            test.resistor(network.from(e), network.to(e), network.ohms(e));
        }
        test.inject(b, a, 1);
        DenseReference dense = new DenseReference(test.build());
        Resistance meter = EffectiveResistance.of(network).between(a, b);
        if (dense.sameIsland(a, b)) {
            assertClose(dense.between(a, b), Probe.ohms(meter));
        } else {
            assertInstanceOf(Resistance.Open.class, meter);
        }
    }

    @Property(tries = 2000)
    void currentAndPowerAreConserved(@ForAll long seed) {
        ResistiveNetwork network = RandomNetworks.any(seed);
        NetworkSolution solution = FactorisedNetwork.of(network).solve();
        BranchCurrents currents = solution.currents();
        assertEquals(0, currents.kirchhoffResidual(), 1e-13);
        double given = 0;
        double taken = 0;
        for (int e = 0; e < network.elements(); e++) {
            double amps = currents.amps(e);
            given += network.emf(e) * amps;
            taken += amps == 0 ? 0 : amps * amps * network.ohms(e);
        }
        for (int i = 0; i < network.injections(); i++) {
            if (solution.flows(i)) {
                taken += network.injectionAmps(i)
                        * Probe.volts(solution.between(network.injectionFrom(i), network.injectionTo(i)));
            }
        }
        assertClose(given, taken);
    }

    private static void assertClose(double expected, double actual) {
        assertEquals(expected, actual, CLOSE * Math.max(1, Math.abs(expected)));
    }
}
