package ringout.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import ringout.solve.network.Resolver;
import ringout.solve.network.SyntheticHarness;

/** Every sampled fault of a supply network, solved by changes of low rank, lies within the tolerance of a full solution. */
class NetworkFaultsTest {
    private static final double TOLERANCE_V = 0.010;

    @Test
    void everySampledFaultIsWithinTolerance() {
        for (int nodes : new int[] {550, 3000}) {
            NetworkFaults faults = new NetworkFaults(SyntheticHarness.of(nodes, 11));
            Resolver resolver = faults.resolver();
            for (int fault : faults.some(250, 3)) {
                double apart = faults.apart(faults.quick(resolver, fault, TOLERANCE_V), faults.anew(fault));
                assertTrue(apart <= TOLERANCE_V, "fault " + fault + " of " + nodes + " nodes: " + apart + " V");
            }
        }
    }
}
