package ringout.bench;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.LongSupplier;

/** Times of named steps over several rounds; the first rounds warm the process and do not count. */
final class Rounds {
    private final Map<String, List<Double>> times = new LinkedHashMap<>();
    private final LongSupplier clock;

    /**
     * Times on the wall, or of this thread's processor alone (for a machine that is busy with other things; collecting
     * garbage is then not counted).
     */
    Rounds(boolean processor) {
        this.clock = processor ? ManagementFactory.getThreadMXBean()::getCurrentThreadCpuTime : System::nanoTime;
    }

    /** Does a step and keeps its time. */
    <T> T time(String step, Callable<T> work) throws Exception {
        long before = clock.getAsLong();
        T result = work.call();
        times.computeIfAbsent(step, key -> new ArrayList<>()).add((clock.getAsLong() - before) / 1e6);
        return result;
    }

    /** Forgets what was measured. */
    void forget() {
        times.clear();
    }

    /** Forgets some steps. */
    void forget(List<String> steps) {
        steps.forEach(times::remove);
    }

    /** Median of a step in milliseconds. */
    double median(String step) {
        List<Double> sorted =
                times.getOrDefault(step, List.of(Double.NaN)).stream().sorted().toList();
        return sorted.get(sorted.size() / 2);
    }
}
