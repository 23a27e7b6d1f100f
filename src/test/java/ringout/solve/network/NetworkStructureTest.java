package ringout.solve.network;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Order, fill and what belongs to the structure. Fill counts are compared with theory and with natural order. */
class NetworkStructureTest {

    @Test
    void treesHaveNoFillAndALowTree() {
        int n = 20_000;
        NetworkBuilder chain = ResistiveNetwork.builder(n);
        NetworkBuilder star = ResistiveNetwork.builder(n);
        for (int v = 1; v < n; v++) {
            chain.resistor(v - 1, v, 1);
            star.resistor(0, v, 1);
        }
        chain.reference(0);
        star.reference(n - 1);
        NetworkStructure chained = NetworkStructure.of(chain.build());
        assertTrue(chained.factorEntries() <= 2 * n, "entries " + chained.factorEntries());
        assertTrue(chained.eliminationHeight() <= 40, "height " + chained.eliminationHeight());
        NetworkStructure starred = NetworkStructure.of(star.build());
        assertEquals(n - 2, starred.factorEntries());
    }

    /** Nested dissection of a k by k grid has about 31/4 n log2 n entries (A. George, 1973); natural order k n. */
    @Test
    void aGridIsOrderedAsWellAsTheoryAllows() {
        int k = 100;
        int n = k * k;
        NetworkStructure grid = NetworkStructure.of(Solids.grid(k));
        assertTrue(grid.factorEntries() < 2.5 * n * Math.log(n) / Math.log(2), "entries " + grid.factorEntries());
    }

    @Test
    void everyOrderIsAPermutation() {
        Random random = new Random(3);
        for (int round = 0; round < 200; round++) {
            int n = 1 + random.nextInt(60);
            int m = random.nextInt(4 * n);
            int[] from = random.ints(m, 0, n).toArray();
            int[] to = random.ints(m, 0, n).toArray();
            int[] order = Ordering.of(Adjacency.of(n, from, to));
            int[] sorted = order.clone();
            Arrays.sort(sorted);
            assertArrayEquals(IntStream.range(0, n).toArray(), sorted);
            assertArrayEquals(order, Ordering.of(Adjacency.of(n, from, to)));
        }
    }

    /** A hub that touches everything must not make the ordering quadratic or the factor dense. */
    @Test
    void hubsAndManySmallPiecesStaySparse() {
        int hubs = 3;
        int n = 60_000;
        NetworkBuilder b = ResistiveNetwork.builder(n);
        for (int v = hubs; v < n; v++) {
            b.resistor(v, v % hubs, 1);
            b.resistor(v, (v + 1) % hubs, 1);
        }
        assertTrue(NetworkStructure.of(b.build()).factorEntries() < 3 * n);

        NetworkBuilder pieces = ResistiveNetwork.builder(n);
        for (int v = 0; v + 4 < n; v += 5) {
            for (int i = 1; i < 5; i++) {
                pieces.resistor(v, v + i, 1);
                pieces.resistor(v + i, v + 1 + i % 4, 1);
            }
        }
        NetworkStructure many = NetworkStructure.of(pieces.build());
        assertEquals(4 * (n / 5), many.unknowns());
        assertTrue(many.factorEntries() < 2 * n);
        assertTrue(many.eliminationHeight() <= 5);
    }

    @Test
    void valuesMayChangeOnOneStructure() {
        ResistiveNetwork network = SyntheticHarness.of(2000, 1);
        NetworkStructure structure = NetworkStructure.of(network);
        Random random = new Random(2);
        double[] ohms = new double[network.elements()];
        for (int e = 0; e < ohms.length; e++) {
            ohms[e] = network.ohms(e) * (0.5 + random.nextDouble());
        }
        ResistiveNetwork warm = network.withOhms(ohms);
        NetworkSolution shared = structure.factorise(warm).solve();
        NetworkSolution fresh = FactorisedNetwork.of(warm).solve();
        for (int v = 0; v < network.nodes(); v++) {
            assertEquals(Probe.volts(fresh.voltage(v)), Probe.volts(shared.voltage(v)), 1e-11);
        }
        ohms[17] = 0;
        assertThrows(IllegalArgumentException.class, () -> structure.factorise(network.withOhms(ohms)));
    }

    /** Elements that open on a structure made while they conducted, and the other way round. */
    @Property(tries = 100)
    void openAndClosedShareAStructure(@ForAll long seed) {
        ResistiveNetwork network = RandomNetworks.any(seed);
        Random random = new Random(seed);
        double[] ohms = new double[network.elements()];
        for (int e = 0; e < ohms.length; e++) {
            boolean change = network.ohms(e) > 0 && random.nextInt(4) == 0;
            double other = random.nextBoolean() ? RandomNetworks.ohms(random) : Double.POSITIVE_INFINITY;
            ohms[e] = change ? other : network.ohms(e);
        }
        ResistiveNetwork changed = network.withOhms(ohms);
        DenseReference dense = new DenseReference(changed);
        NetworkSolution actual = NetworkStructure.of(network).factorise(changed).solve();
        for (int v = 0; v < network.nodes(); v++) {
            if (dense.sameIsland(v, 0)) {
                assertEquals(dense.between(v, 0), Probe.volts(actual.between(v, 0)), 1e-8);
            } else {
                Probe.assertFloating(actual.between(v, 0));
            }
            if (dense.hasReference(v)) {
                assertEquals(dense.volts(v), Probe.volts(actual.voltage(v)), 1e-8);
            } else {
                Probe.assertFloating(actual.voltage(v));
            }
        }
    }

    @Test
    void aSwitchThatOpensLeavesItsSideFloating() {
        NetworkBuilder b = ResistiveNetwork.builder(6);
        b.source(0, 1, 12, 0.1);
        int toSwitch = b.resistor(1, 2, 0.1);
        b.resistor(2, 3, 5);
        b.resistor(3, 0, Double.POSITIVE_INFINITY);
        int second = b.source(3, 2, 3, 1);
        ResistiveNetwork closed = b.reference(0).reference(3).build();
        NetworkStructure structure = NetworkStructure.of(closed);
        NetworkSolution before = structure.factorise(closed).solve();
        assertEquals(12, Probe.volts(before.voltage(2)), 1e-12);

        double[] ohms =
                IntStream.range(0, closed.elements()).mapToDouble(closed::ohms).toArray();
        ohms[toSwitch] = Double.POSITIVE_INFINITY;
        FactorisedNetwork open = structure.factorise(closed.withOhms(ohms));
        NetworkSolution after = open.solve();
        assertFalse(open.connected(0, 2));
        assertEquals(2.5, Probe.volts(after.voltage(2)), 1e-12, "its own reference, node 3, takes over");
        assertEquals(0.5, after.currents().amps(second), 1e-12);
        Probe.assertFloating(after.voltage(4));
        Probe.assertFloating(after.between(1, 2));
    }

    @Test
    void refusesWhatIsNotANetwork() {
        NetworkBuilder b = ResistiveNetwork.builder(2);
        assertThrows(IllegalArgumentException.class, () -> b.resistor(0, 2, 1));
        assertThrows(IllegalArgumentException.class, () -> b.resistor(0, 1, -1));
        assertThrows(IllegalArgumentException.class, () -> b.resistor(0, 1, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> b.source(0, 1, 12, 0));
        assertThrows(IllegalArgumentException.class, () -> b.inject(0, 1, Double.NaN));
    }
}
