package ringout.bench;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Locale;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.read.AircraftReader;
import ringout.solve.network.ResistiveNetwork;
import ringout.solve.network.Resolver;
import ringout.solve.network.SyntheticHarness;
import ringout.trace.candidate.Candidates;
import ringout.trace.predict.FaultDictionary;

/**
 * What a fault dictionary costs: of the sample hexacopter in a process just started, and faults a second of supply networks of
 * two sizes at 10 mV, by changes of low rank against factorising and solving each in the same run. Processor time of this
 * thread. Argument: folder of an aircraft; the sample hexacopter when none is given.
 */
public final class FaultDictionaries {
    private static final double TOLERANCE_V = 0.010;
    private static final long SEED = 5;
    /** Nodes of a network by conductors: a harness of a hundred thousand wires has 109,000 supply nodes. */
    private static final double NODES_PER_CONDUCTOR = 1.09;

    private static final int[] CONDUCTORS = {500, 100_000};
    private static final int[] QUICK = {20_000, 4_000};
    private static final int[] ANEW = {2_000, 60};
    private static final int[] COMPARED = {400, 60};

    private FaultDictionaries() {}

    /** Measures; see the class. */
    public static void main(String[] arguments) throws Exception {
        dictionary(arguments.length == 0 ? "samples/linewarden" : arguments[0]);
        for (int i = 0; i < CONDUCTORS.length; i++) {
            speed(i);
        }
    }

    private static void dictionary(String folder) throws Exception {
        double start = cpuMs();
        Aircraft aircraft = AircraftReader.read(Path.of(folder)).aircraft();
        double read = cpuMs();
        Circuit circuit = Circuit.all(Wiring.of(aircraft)).get(0);
        int candidates = Candidates.of(circuit).all().size();
        FaultDictionary dictionary = FaultDictionary.of(circuit);
        double done = cpuMs();
        print(
                "%s: %d candidates, %d signatures, %.0f %% latent (%.0f %% by weight); read %.0f ms, dictionary %.0f ms",
                folder,
                candidates,
                dictionary.classes().size(),
                100 * dictionary.latentShare(),
                100 * dictionary.latentWeight(),
                read - start,
                done - read);
    }

    private static void speed(int size) {
        ResistiveNetwork network = SyntheticHarness.of((int) (CONDUCTORS[size] * NODES_PER_CONDUCTOR), SEED);
        NetworkFaults faults = new NetworkFaults(network);
        Resolver resolver = faults.resolver();
        quick(faults, resolver, QUICK[size] / 4);
        anew(faults, ANEW[size] / 4);
        double quick = quick(faults, resolver, QUICK[size]);
        double anew = anew(faults, ANEW[size]);
        double apart = 0;
        for (int fault : faults.some(COMPARED[size], SEED)) {
            apart = Math.max(apart, faults.apart(faults.quick(resolver, fault, TOLERANCE_V), faults.anew(fault)));
        }
        print(
                "%d conductors, %d faults: %.0f a second at 10 mV, %.0f a second anew, ratio %.0f; "
                        + "%d compared, largest difference %.2g V",
                CONDUCTORS[size], faults.count(), quick, anew, quick / anew, COMPARED[size], apart);
    }

    private static double quick(NetworkFaults faults, Resolver resolver, int count) {
        int[] some = faults.some(count, SEED);
        double before = cpuMs();
        for (int fault : some) {
            faults.quick(resolver, fault, TOLERANCE_V);
        }
        return 1000 * some.length / (cpuMs() - before);
    }

    private static double anew(NetworkFaults faults, int count) {
        int[] some = faults.some(count, SEED);
        double before = cpuMs();
        for (int fault : some) {
            faults.anew(fault);
        }
        return 1000 * some.length / (cpuMs() - before);
    }

    private static double cpuMs() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e6;
    }

    @SuppressWarnings("SystemOut") // a command of its own
    private static void print(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
