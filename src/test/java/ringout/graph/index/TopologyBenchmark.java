package ringout.graph.index;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;

/**
 * Index rows, nets, bridges, cut vertices and cycle basis together, beside JGraphT's {@code ConnectivityInspector} alone
 * on the same graph in the same run: once on the library's own structure, once on our view. Run by hand, never by the
 * build; medians, ratios and the growth exponent go to standard output.
 *
 * <p>Arguments: {@code shuffled} for a network numbered in no order, {@code cpu} to count processor time of this thread
 * instead of time on the wall (for a machine that is busy with other things; collecting the library's garbage is then
 * not counted), and the sizes in wires. Without arguments, from the top folder:
 *
 * <pre>MAVEN_OPTS=-Xmx4g mvn -q -Pbench test-compile exec:java -Dexec.classpathScope=test \
 *     -Dexec.mainClass=ringout.graph.index.TopologyBenchmark</pre>
 */
public final class TopologyBenchmark {
    private static final long BUDGET_NANOS = 2_000_000_000L;
    private static final int MOST_RUNS = 200;
    private static final int LEAST_RUNS = 5;

    private static LongSupplier clock = System::nanoTime;

    /** Keeps results alive, so that no work is optimised away. */
    private static long sink;

    private TopologyBenchmark() {}

    public static void main(String[] arguments) {
        boolean shuffled = Arrays.asList(arguments).contains("shuffled");
        if (Arrays.asList(arguments).contains("cpu")) {
            clock = ManagementFactory.getThreadMXBean()::getCurrentThreadCpuTime;
        }
        int[] sizes = Arrays.stream(arguments)
                .filter(a -> Character.isDigit(a.charAt(0)))
                .mapToInt(Integer::parseInt)
                .toArray();
        if (sizes.length == 0) {
            sizes = new int[] {1_000, 10_000, 100_000, 1_000_000};
        }
        print("wires     points  connect   rows    nets  lowlink  cycles  | together  library  ratio | view  ratio%n");
        measure(10_000, shuffled);
        double[] together = new double[sizes.length];
        for (int i = 0; i < sizes.length; i++) {
            Row row = measure(sizes[i], shuffled);
            together[i] = row.together();
            row.show();
        }
        int last = sizes.length - 1;
        if (last > 0) {
            double exponent = Math.log(together[last] / together[0]) / Math.log((double) sizes[last] / sizes[0]);
            print("growth exponent of together, %d to %d wires: %.3f%n", sizes[0], sizes[last], exponent);
        }
        print("(sink %d; times in ms, medians)%n", sink & 1);
    }

    private record Row(
            int wires,
            IndexGraph graph,
            double rows,
            double nets,
            double lowlink,
            double cycles,
            double library,
            double view) {
        double together() {
            return rows + nets + lowlink + cycles;
        }

        void show() {
            print(
                    "%8d %8d %8d %7.3f %7.3f %7.3f %7.3f | %8.3f %9.3f %5.3f | %8.3f %5.3f%n",
                    wires,
                    graph.vertexCount(),
                    graph.edgeCount(),
                    rows,
                    nets,
                    lowlink,
                    cycles,
                    together(),
                    library,
                    together() / library,
                    view,
                    together() / view);
        }
    }

    private static Row measure(int wires, boolean shuffled) {
        SyntheticHarness harness = SyntheticHarness.of(wires, 1);
        IndexGraph all = shuffled ? harness.shuffled() : harness.all();
        IndexGraph nets = all.onlyEdges(harness::conducts);
        int[] from = ends(all, true);
        int[] to = ends(all, false);
        double rows = median(() -> IndexGraph.undirected(all.vertexCount(), from, to)
                .onlyEdges(harness::conducts)
                .edgeCount());
        double components = median(() -> Components.of(nets).count());
        double lowlink = median(() -> Lowlink.of(nets).subtreeEnd(0));
        double cycles = median(() -> CycleBasis.of(nets).dimension());
        double view = median(() -> connectedSets(JGraphTView.of(nets)));
        Graph<Integer, Integer> own = SmallGraphs.reference(nets);
        double library = median(() -> connectedSets(own));
        return new Row(harness.wires(), nets, rows, components, lowlink, cycles, library, view);
    }

    private static int connectedSets(Graph<Integer, Integer> graph) {
        return new ConnectivityInspector<>(graph).connectedSets().size();
    }

    private static int[] ends(IndexGraph graph, boolean first) {
        int[] ends = new int[graph.edgeBound()];
        Arrays.setAll(ends, e -> first ? graph.from(e) : graph.to(e));
        return ends;
    }

    /** Median time in milliseconds, after one run that does not count. */
    private static double median(Supplier<Integer> work) {
        sink += work.get();
        double[] times = new double[MOST_RUNS];
        int runs = 0;
        long start = System.nanoTime();
        while (runs < LEAST_RUNS || (runs < MOST_RUNS && System.nanoTime() - start < BUDGET_NANOS)) {
            long before = clock.getAsLong();
            sink += work.get();
            times[runs++] = (clock.getAsLong() - before) / 1e6;
        }
        double[] counted = Arrays.copyOf(times, runs);
        Arrays.sort(counted);
        return counted[runs / 2];
    }

    private static void print(String format, Object... values) {
        System.out.printf(Locale.ROOT, format, values);
    }
}
