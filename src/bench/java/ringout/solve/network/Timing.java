package ringout.solve.network;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.function.Supplier;

/**
 * Median processor time of a task, after it was run often enough to be compiled. Processor time of the calling thread, so
 * that a machine which others use as well does not count their share; garbage collection is not counted either.
 */
final class Timing {

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final double WARM_UP_SECONDS = 1.0;
    private static final double MEASURE_SECONDS = 1.5;
    private static final double SAMPLE_SECONDS = 1e-3;
    private static final int MOST_SAMPLES = 1000;

    private static int sink;

    private Timing() {}

    /** {@return the median of microseconds that a task takes} */
    static double micros(Supplier<?> task) {
        int runs = 0;
        long begin = THREADS.getCurrentThreadCpuTime();
        do {
            run(task, 1);
            runs++;
        } while (seconds(begin) < WARM_UP_SECONDS);
        int batch = (int) Math.max(1, SAMPLE_SECONDS / (seconds(begin) / runs));
        double[] samples = new double[MOST_SAMPLES];
        int count = 0;
        begin = THREADS.getCurrentThreadCpuTime();
        while (count < MOST_SAMPLES && (count < 3 || seconds(begin) < MEASURE_SECONDS)) {
            long before = THREADS.getCurrentThreadCpuTime();
            run(task, batch);
            samples[count++] = seconds(before) / batch;
        }
        Arrays.sort(samples, 0, count);
        return 1e6 * samples[count / 2];
    }

    private static double seconds(long since) {
        return (THREADS.getCurrentThreadCpuTime() - since) / 1e9;
    }

    private static void run(Supplier<?> task, int times) {
        for (int i = 0; i < times; i++) {
            sink += System.identityHashCode(task.get()) & 1;
        }
    }

    /** {@return a number that depends on all results, so that no task is optimised away} */
    static int sink() {
        return sink;
    }
}
