package ringout.solve.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** A network made small gives the voltages and currents of the whole, solved as it is. */
class CondensedTest {

    private int[] from;
    private int[] to;
    private double[] ohms;

    private void network(int elements) {
        from = new int[elements];
        to = new int[elements];
        ohms = new double[elements];
    }

    private void put(int e, int a, int b, double ohm) {
        from[e] = a;
        to[e] = b;
        ohms[e] = ohm;
    }

    private static BitSet set(int... nodes) {
        BitSet set = new BitSet();
        for (int node : nodes) {
            set.set(node);
        }
        return set;
    }

    /** Contact, wire, contact, a joined pin and a dead end: one resistor is left. */
    @Test
    void seriesWithDeadEnd() {
        network(5);
        put(0, 0, 1, 0.1);
        put(1, 2, 1, 1);
        put(2, 2, 3, 0.1);
        put(3, 3, 4, 0);
        put(4, 1, 5, 7);
        Condensed small = Condensed.of(6, from, to, ohms, set(0, 4));
        assertEquals(1, small.resistors());
        assertEquals(2, small.nodes());
        assertEquals(1.2, small.ohms(0), 1e-15);
        assertEquals(small.way(1), small.way(5));
        assertEquals(small.ahead(1), small.ahead(5));
        double[] amps = small.amps(new double[] {2}, new double[] {2, 0, 0, 0, -2, 0});
        assertEquals(2, amps[0]);
        assertEquals(-2, amps[1]);
        assertEquals(2, amps[3], 1e-15);
        assertEquals(0, amps[4]);
    }

    /** Two equal links of 0 ohm side by side carry half each. */
    @Test
    void ringOfZeroOhm() {
        network(3);
        put(0, 0, 1, 0);
        put(1, 1, 0, 0);
        put(2, 1, 2, 1);
        Condensed small = Condensed.of(3, from, to, ohms, set(0, 2));
        double[] amps = small.amps(new double[] {small.from(0) == small.anchor(0) ? 3 : -3}, new double[] {3, 0, -3});
        assertEquals(1.5, amps[0], 1e-12);
        assertEquals(-1.5, amps[1], 1e-12);
    }

    @Property(tries = 3000)
    void likeTheWhole(@ForAll long seed) {
        Random random = new Random(seed);
        int n = 2 + random.nextInt(30);
        network(random.nextInt(2 * n) + 1);
        for (int e = 0; e < from.length; e++) {
            int kind = random.nextInt(8);
            double ohm = kind == 0 ? 0 : kind == 1 ? Double.POSITIVE_INFINITY : Math.exp(6 * random.nextGaussian());
            put(e, random.nextInt(n), random.nextInt(n), ohm);
        }
        int a = random.nextInt(n);
        int b = random.nextInt(n);
        Condensed small = Condensed.of(n, from, to, ohms, set(a, b));
        NetworkBuilder whole = ResistiveNetwork.builder(n);
        for (int e = 0; e < from.length; e++) {
            whole.resistor(from[e], to[e], ohms[e]);
        }
        whole.inject(b, a, 1);
        whole.reference(b);
        NetworkBuilder left = ResistiveNetwork.builder(small.nodes());
        for (int r = 0; r < small.resistors(); r++) {
            left.resistor(small.from(r), small.to(r), small.ohms(r));
        }
        left.inject(small.anchor(b), small.anchor(a), 1);
        left.reference(small.anchor(b));
        compare(n, whole.build(), small, left.build(), a, b);
    }

    private void compare(int n, ResistiveNetwork whole, Condensed small, ResistiveNetwork left, int a, int b) {
        NetworkSolution expected = FactorisedNetwork.of(whole).solve();
        NetworkSolution actual = FactorisedNetwork.of(left).solve();
        BranchCurrents leftAmps = actual.currents();
        double[] ways = new double[small.resistors()];
        for (int r = 0; r < ways.length; r++) {
            ways[r] = leftAmps.amps(r);
        }
        for (int v = 0; v < n; v++) {
            NodeVoltage at = actual.voltage(small.anchor(v));
            if (expected.voltage(v) instanceof NodeVoltage.Volts e) {
                assertTrue(at instanceof NodeVoltage.Volts, "node " + v + " floats");
                double drop = small.way(v) < 0 ? 0 : ways[small.way(v)] * small.ahead(v);
                double scale = 1e-12 * Math.max(Math.abs(e.value()), Math.abs(((NodeVoltage.Volts) at).value()));
                assertEquals(e.value(), ((NodeVoltage.Volts) at).value() - drop, Math.max(1e-15, scale));
            } else {
                assertTrue(at instanceof NodeVoltage.Floating, "node " + v + " has a voltage");
            }
        }
        double[] inflow = new double[n];
        boolean flows = expected.flows(0);
        inflow[a] += flows ? 1 : 0;
        inflow[b] -= flows ? 1 : 0;
        double[] amps = small.amps(ways, inflow);
        double[] excess = inflow.clone();
        for (int e = 0; e < amps.length; e++) {
            excess[from[e]] -= amps[e];
            excess[to[e]] += amps[e];
            if (ohms[e] > 0) {
                assertEquals(expected.currents().amps(e), amps[e], 1e-12);
            }
        }
        for (double left1 : excess) {
            assertEquals(0, left1, 1e-12);
        }
    }
}
