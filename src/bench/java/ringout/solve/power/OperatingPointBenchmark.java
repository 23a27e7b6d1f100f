package ringout.solve.power;

import java.io.ByteArrayOutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.power.PowerGraph;
import ringout.model.Aircraft;
import ringout.read.AircraftReader;
import ringout.read.source.MemoryFolder;
import ringout.synthetic.SyntheticAircraft;

/**
 * Times the operating points of made-up aircraft of 500 to 100,000 conductors, in processor time of one run on one machine:
 * the first case of loads with all that is worked out once, and ten cases. Only ratios mean anything elsewhere.
 *
 * <pre>
 * mvn -q -Pbench test-compile exec:exec -Dbench= -Dbench.main=ringout.solve.power.OperatingPointBenchmark \
 *     -Dbench.jvm="-Xmx2g -XX:+UseSerialGC"
 * </pre>
 */
public final class OperatingPointBenchmark {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final int ROUNDS = 15;
    private static final int CASES = 10;
    private static final double NANOS_A_MILLI = 1e6;

    private OperatingPointBenchmark() {}

    /** Runs the benchmark. */
    public static void main(String[] arguments) {
        for (int conductors : new int[] {500, 10_000, 100_000}) {
            measure(conductors);
        }
    }

    private static void measure(int conductors) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SyntheticAircraft.write(1, conductors, out);
        MemoryFolder folder = MemoryFolder.named("made").with("aircraft.json", out.toByteArray());
        Aircraft aircraft = AircraftReader.read(folder, "aircraft.json").aircraft();
        Wiring wiring = Wiring.of(aircraft);
        List<Double> one = new ArrayList<>();
        List<Double> ten = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            Circuit circuit = Circuit.all(wiring).get(0);
            PowerGraph.of(circuit);
            long start = THREADS.getCurrentThreadCpuTime();
            for (int c = 0; c < CASES; c++) {
                OperatingPoint point =
                        OperatingPoint.of(circuit, LoadCase.AVERAGE.with(PackCharge.cell(3.5 + 0.05 * c)));
                if (!(point instanceof PowerFlow)) {
                    throw new IllegalStateException(point.toString());
                }
                if (c == 0) {
                    one.add((THREADS.getCurrentThreadCpuTime() - start) / NANOS_A_MILLI);
                }
            }
            ten.add((THREADS.getCurrentThreadCpuTime() - start) / NANOS_A_MILLI);
        }
        System.out.printf(
                Locale.ROOT,
                "%7d conductors: first case %8.2f ms, ten cases %8.2f ms, %.2f of the first%n",
                conductors,
                median(one),
                median(ten),
                median(ten) / median(one));
    }

    private static double median(List<Double> values) {
        Collections.sort(values);
        return values.get(values.size() / 2);
    }
}
