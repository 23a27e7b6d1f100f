package ringout.solve.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import ringout.solve.network.EdgeChange.Added;
import ringout.solve.network.EdgeChange.Changed;
import ringout.solve.network.EdgeChange.Opened;
import ringout.solve.network.Resolved.Method;

/** A re-solve must be what a fresh solve of the changed network is. */
class ResolverTest {

    @Property(tries = 3000)
    void reSolveEqualsFreshSolve(@ForAll long seed) {
        ResistiveNetwork network = RandomNetworks.any(seed);
        Random random = new Random(~seed);
        Resolver resolver = Resolver.of(FactorisedNetwork.of(network).solve());
        for (int round = 0; round < 4; round++) {
            EdgeChange[] changes = randomChanges(network, random);
            if (changes.length > 0) {
                assertSame(network, resolver.after(0, changes), 0, changes);
            }
        }
    }

    @Test
    void everyElementOfAHarnessOpened() {
        ResistiveNetwork network = loaded(SyntheticHarness.of(600, 11));
        Resolver resolver = Resolver.of(FactorisedNetwork.of(network).solve());
        Set<Method> used = EnumSet.noneOf(Method.class);
        for (int e = 0; e < network.elements(); e++) {
            Resolved after = resolver.after(0, new Opened(e));
            used.add(after.method());
            assertSame(network, after, 0, new Opened(e));
        }
        assertEquals(EnumSet.of(Method.COMPENSATION, Method.PARTIAL_REFACTORISATION), used);
    }

    @Test
    void neverFurtherOffThanTheTolerance() {
        ResistiveNetwork network = SyntheticHarness.of(5000, 3);
        Resolver resolver = Resolver.of(FactorisedNetwork.of(network).solve());
        Random random = new Random(4);
        int touched = 0;
        for (int round = 0; round < 60; round++) {
            int e = random.nextInt(network.elements());
            EdgeChange[] changes = round % 2 == 0
                    ? new EdgeChange[] {new Changed(e, network.ohms(e) + 1)}
                    : new EdgeChange[] {new Opened(e), new Added(random.nextInt(5000), random.nextInt(5000), 30)};
            Resolved after = resolver.after(1e-3, changes);
            touched += round % 2 == 0 ? after.touched() : 0;
            assertSame(network, after, 1e-3, changes);
        }
        assertTrue(
                touched < 30 * 5000 / 10, "a local change should stay local, but " + touched + " points were touched");
    }

    /** A divider whose upper resistor opens leaves exactly nothing on the lower: no rounding of what was there before. */
    @Test
    void anOpenedBridgeLeavesExactlyZero() {
        for (double ratio : new double[] {1e6, 1e9, 1e12, 1e15}) {
            NetworkBuilder b = ResistiveNetwork.builder(3);
            b.source(0, 1, 28, 1e-3);
            int upper = b.resistor(1, 2, 1e-3);
            b.resistor(2, 0, 1e-3 * ratio);
            Resolver resolver =
                    Resolver.of(FactorisedNetwork.of(b.reference(0).build()).solve());
            Resolved after = resolver.after(0, new Opened(upper));
            assertEquals(0, Probe.volts(after.voltage(2)));
            assertEquals(28, Probe.volts(after.voltage(1)), 1e-13);
        }
    }

    /** A megohm beside a microohm takes over when the microohm opens; compensation alone would be all rounding. */
    @Test
    void aWeakBypassKeepsItsDigits() {
        NetworkBuilder b = ResistiveNetwork.builder(3);
        b.source(0, 1, 28, 1e-3);
        int strong = b.resistor(1, 2, 1e-6);
        b.resistor(1, 2, 3e9);
        b.resistor(2, 0, 4e9);
        Resolver resolver =
                Resolver.of(FactorisedNetwork.of(b.reference(0).build()).solve());
        Resolved after = resolver.after(0, new Opened(strong));
        assertEquals(Method.PARTIAL_REFACTORISATION, after.method());
        assertEquals(16, Probe.volts(after.voltage(2)), 1e-8);
    }

    @Test
    void aLoadWithoutReturnStops() {
        NetworkBuilder b = ResistiveNetwork.builder(4);
        b.source(0, 1, 24, 0.1);
        b.resistor(1, 2, 0.1);
        int back = b.resistor(3, 0, 0.1);
        int load = b.inject(2, 3, 10);
        Resolver resolver =
                Resolver.of(FactorisedNetwork.of(b.reference(0).build()).solve());
        Resolved after = resolver.after(0, new Opened(back));
        assertEquals(24, Probe.volts(after.voltage(2)), 1e-12);
        assertTrue(!after.flows(load));
        Probe.assertFloating(after.voltage(3));
        assertInstanceOf(ResolvedLocally.class, after);
    }

    @Test
    void refusesWhatItCannotMean() {
        Resolver resolver = Resolver.of(FactorisedNetwork.of(Solids.cube()).solve());
        assertThrows(IllegalArgumentException.class, () -> resolver.after(0, new Opened(12)));
        assertThrows(IllegalArgumentException.class, () -> resolver.after(0, new Opened(1), new Changed(1, 2)));
        assertThrows(IllegalArgumentException.class, () -> resolver.after(0, new Added(0, 8, 1)));
        assertThrows(IllegalArgumentException.class, () -> resolver.after(0, new Changed(0, -1)));
    }

    /** Adds constant-current loads across some of the resistors, so that an opened element can stop them. */
    private static ResistiveNetwork loaded(ResistiveNetwork harness) {
        NetworkBuilder b = ResistiveNetwork.builder(harness.nodes());
        for (int e = 0; e < harness.elements(); e++) {
            if (harness.emf(e) != 0) {
                b.source(harness.from(e), harness.to(e), harness.emf(e), harness.ohms(e));
            } else if (harness.ohms(e) > 20) {
                b.inject(harness.from(e), harness.to(e), 0.2);
                b.resistor(harness.from(e), harness.to(e), e % 2 == 0 ? harness.ohms(e) : Double.POSITIVE_INFINITY);
            } else {
                b.resistor(harness.from(e), harness.to(e), harness.ohms(e));
            }
        }
        return b.reference(0).build();
    }

    private static EdgeChange[] randomChanges(ResistiveNetwork network, Random random) {
        int kind = random.nextInt(8);
        int n = network.nodes();
        int m = network.elements();
        EdgeChange added = new Added(
                random.nextInt(n), random.nextInt(n), random.nextInt(4) == 0 ? 0 : RandomNetworks.ohms(random));
        if (kind == 0 || m == 0) {
            return new EdgeChange[] {added};
        }
        int e = random.nextInt(m);
        return switch (kind) {
            case 1 -> new EdgeChange[] {new Changed(e, RandomNetworks.ohms(random))};
            case 2 -> new EdgeChange[] {new Opened(e), added};
            case 3 ->
                e == 0
                        ? new EdgeChange[] {new Opened(e)}
                        : new EdgeChange[] {new Opened(e), new Opened(random.nextInt(e))};
            case 4 -> new EdgeChange[] {new Changed(e, 1e3)};
            case 5 -> new EdgeChange[] {added, new Added(random.nextInt(n), random.nextInt(n), 0.3), new Opened(e)};
            case 6 -> m < 6 ? new EdgeChange[] {new Opened(e)} : firstOpened(m);
            default -> new EdgeChange[] {new Opened(e)};
        };
    }

    private static EdgeChange[] firstOpened(int elements) {
        return IntStream.range(0, Math.min(6, elements)).mapToObj(Opened::new).toArray(EdgeChange[]::new);
    }

    private static void assertSame(ResistiveNetwork network, Resolved actual, double tolerance, EdgeChange... changes) {
        Edits edits = new Edits(network, List.of(changes));
        NetworkSolution fresh = FactorisedNetwork.of(edits.rebuilt(network)).solve();
        for (int a = 0; a < network.nodes(); a++) {
            assertSame(fresh.voltage(a), actual.voltage(a), tolerance);
            int b = (5 * a + 1) % network.nodes();
            assertSame(fresh.between(a, b), actual.between(a, b), 2 * tolerance);
        }
        for (int i = 0; i < network.injections(); i++) {
            assertEquals(fresh.flows(i), actual.flows(i));
        }
    }

    private static void assertSame(NodeVoltage expected, NodeVoltage actual, double tolerance) {
        if (expected instanceof NodeVoltage.Volts v) {
            assertEquals(v.value(), Probe.volts(actual), tolerance + 1e-8 * Math.max(1, Math.abs(v.value())));
        } else {
            Probe.assertFloating(actual);
        }
    }
}
