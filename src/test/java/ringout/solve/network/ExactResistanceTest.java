package ringout.solve.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.junit.jupiter.api.Test;

/**
 * Networks of equal resistors whose resistances are exact fractions or closed forms. Source: textbook identities (the
 * regular solids, the ladder and the golden ratio, the infinite square grid); each fraction is re-derivable by symmetry.
 */
class ExactResistanceTest {

    private static final double EXACT = 4e-15;

    @Test
    void cube() {
        EffectiveResistance meter = EffectiveResistance.of(Solids.cube());
        assertEquals(7.0 / 12, Probe.ohms(meter.between(0, 1)), EXACT);
        assertEquals(3.0 / 4, Probe.ohms(meter.between(0, 3)), EXACT);
        assertEquals(5.0 / 6, Probe.ohms(meter.between(0, 7)), EXACT);
    }

    @Test
    void otherRegularSolids() {
        assertEquals(1.0 / 2, between(Solids.tetrahedron(), 2, 3), EXACT);
        assertEquals(5.0 / 12, between(Solids.octahedron(), 0, 1), EXACT);
        assertEquals(1.0 / 2, between(Solids.octahedron(), 0, 3), EXACT);
        assertEquals(11.0 / 30, between(Solids.icosahedron(), 0, 4), EXACT);
        assertEquals(1.0 / 2, between(Solids.icosahedron(), 0, 11), EXACT);
    }

    /** R. M. Foster, The average impedance of an electrical network (1949): conductance times resistance sums to n - 1. */
    @Test
    void fosterSum() {
        assertEquals(7, fosterSum(Solids.cube()), 1e-14);
        assertEquals(11, fosterSum(Solids.icosahedron()), 1e-14);
        assertEquals(49, fosterSum(Solids.complete(50)), 1e-12);
        ResistiveNetwork harness = SyntheticHarness.of(3000, 5);
        assertEquals(2999, fosterSum(harness), 1e-9);
    }

    /** One ohm in series, one ohm across in each cell: quotients of Fibonacci numbers, golden ratio without end. */
    @Test
    void ladder() {
        double[] exact = {2, 5.0 / 3, 13.0 / 8, 34.0 / 21, 89.0 / 55};
        for (int cells = 1; cells <= exact.length; cells++) {
            assertEquals(exact[cells - 1], ladder(cells), EXACT);
        }
        assertEquals((1 + Math.sqrt(5)) / 2, ladder(60), EXACT);
    }

    @Test
    void bridge() {
        for (double detector : new double[] {1e-6, 5, 1e9}) {
            assertEquals(2, bridge(1, 2, 2, 4, detector), EXACT);
        }
        assertEquals(170.0 / 71, bridge(1, 3, 2, 4, 5), EXACT);
    }

    /** Infinite square grid: adjacent 1/2, diagonal 2/pi, knight's move 4/pi - 1/2; a large finite grid comes close. */
    @Test
    void squareGrid() {
        int side = 201;
        int centre = side / 2 * side + side / 2;
        EffectiveResistance meter = EffectiveResistance.of(Solids.grid(side));
        assertEquals(0.5, Probe.ohms(meter.between(centre, centre + 1)), 1e-4);
        assertEquals(2 / Math.PI, Probe.ohms(meter.between(centre, centre + side + 1)), 1e-4);
        assertEquals(4 / Math.PI - 0.5, Probe.ohms(meter.between(centre, centre + 2 * side + 1)), 2e-4);
    }

    @Test
    void openAndOnePoint() {
        NetworkBuilder b = ResistiveNetwork.builder(5);
        b.resistor(0, 1, 0);
        b.resistor(1, 2, 3);
        b.resistor(2, 3, Double.POSITIVE_INFINITY);
        b.resistor(3, 4, 1);
        EffectiveResistance meter = EffectiveResistance.of(b.build());
        assertEquals(0, Probe.ohms(meter.between(0, 1)));
        assertEquals(0, Probe.ohms(meter.between(4, 4)));
        assertEquals(3, Probe.ohms(meter.between(0, 2)), EXACT);
        assertInstanceOf(Resistance.Open.class, meter.between(0, 3));
        assertEquals(1, Probe.ohms(meter.between(3, 4)), EXACT);
    }

    private static double between(ResistiveNetwork network, int a, int b) {
        return Probe.ohms(EffectiveResistance.of(network).between(a, b));
    }

    private static double fosterSum(ResistiveNetwork network) {
        EffectiveResistance meter = EffectiveResistance.of(network);
        double sum = 0;
        for (int e = 0; e < network.elements(); e++) {
            sum += Probe.ohms(meter.between(network.from(e), network.to(e))) / network.ohms(e);
        }
        return sum;
    }

    private static double ladder(int cells) {
        NetworkBuilder b = ResistiveNetwork.builder(cells + 2);
        for (int c = 0; c < cells; c++) {
            b.resistor(1 + c, 2 + c, 1);
            b.resistor(2 + c, 0, 1);
        }
        return between(b.build(), 0, 1);
    }

    /** Two arms from node 0 to node 3 over nodes 1 and 2, detector between these. */
    private static double bridge(double a, double b, double c, double d, double detector) {
        NetworkBuilder n = ResistiveNetwork.builder(4);
        n.resistor(0, 1, a);
        n.resistor(1, 3, b);
        n.resistor(0, 2, c);
        n.resistor(2, 3, d);
        n.resistor(1, 2, detector);
        return between(n.build(), 0, 3);
    }
}
