package ringout.bench;

import java.io.ByteArrayOutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.List;
import java.util.Locale;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.Pseudograph;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.index.Components;
import ringout.graph.index.CycleBasis;
import ringout.graph.index.IndexGraph;
import ringout.graph.index.Lowlink;
import ringout.model.Aircraft;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.source.MemoryFolder;
import ringout.synthetic.SyntheticAircraft;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/** Measures one size in this process and prints one line of numbers. */
final class OneSize {
    private static final String FILE = "aircraft.json";
    private static final JsonFactory JSON = new JsonFactory();
    private static final double MEGABYTE = 1 << 20;

    private final Rounds rounds;
    private final byte[] bytes;
    private final MemoryFolder folder;
    private final long budgetNanos;

    /** Keeps results alive, so that no work is optimised away. */
    private long sink;

    private OneSize(byte[] bytes, boolean processor, long seconds) {
        this.rounds = new Rounds(processor);
        this.bytes = bytes;
        this.folder = MemoryFolder.named("bench").with(FILE, bytes);
        this.budgetNanos = seconds * 1_000_000_000L;
    }

    /** Measures and gives one line for {@link Row}. */
    static String measure(int conductors, boolean processor, long seconds) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream(conductors * 256);
        int made = SyntheticAircraft.write(1, conductors, out).conductors();
        OneSize one = new OneSize(out.toByteArray(), processor, seconds);
        return one.run(made);
    }

    private String run(int made) throws Exception {
        repeat(this::pipeline, budgetNanos, 3);
        rounds.forget();
        resetPeaks();
        repeat(this::pipeline, budgetNanos, 5);
        double peak = peak();
        double floor = used();
        Aircraft aircraft = read();
        double model = used() - floor;
        List<Circuit> circuits = Circuit.all(Wiring.of(aircraft));
        Report report = Review.of(circuits, checks(), Review.NO_DAY);
        double graph = used() - floor - model;
        IndexGraph nets = circuits.get(0).nets().graph();
        graphs(nets);
        sink += report.headlines().size() + report.cannotTell().size();
        int said = report.headlines().size() + report.cannotTell().size();
        return Row.line(
                made,
                bytes.length / MEGABYTE,
                rounds.median("stream"),
                rounds.median("read"),
                rounds.median("graph"),
                rounds.median("check"),
                rounds.median("topology"),
                rounds.median("library"),
                model,
                graph,
                peak,
                said);
    }

    /** A piece of work that is measured inside. */
    private interface Work {
        void run() throws Exception;
    }

    private static void repeat(Work work, long nanos, int least) throws Exception {
        long start = System.nanoTime();
        for (int i = 0; i < least || (i < 2000 && System.nanoTime() - start < nanos); i++) {
            work.run();
        }
    }

    private void pipeline() throws Exception {
        sink += rounds.time("stream", this::stream);
        Aircraft aircraft = rounds.time("read", this::read);
        List<Circuit> circuits = rounds.time("graph", () -> Circuit.all(Wiring.of(aircraft)));
        sink += rounds.time("check", () -> Review.of(circuits, checks(), Review.NO_DAY))
                .headlines()
                .size();
    }

    /** The reference: every token of the same bytes, and nothing made of it. */
    private long stream() {
        long tokens = 0;
        try (JsonParser parser = JSON.createParser(ObjectReadContext.empty(), bytes)) {
            while (parser.nextToken() != null) {
                tokens++;
            }
        }
        return tokens;
    }

    private Aircraft read() {
        ReadResult result = AircraftReader.read(folder, FILE);
        if (!result.problems().isEmpty()) {
            throw new IllegalStateException(result.problems().get(0).words());
        }
        return result.aircraft();
    }

    /** Nets, bridges, cut vertices and cycle basis, beside the library's components alone on the same graph. */
    private void graphs(IndexGraph nets) throws Exception {
        Graph<Integer, Integer> library = library(nets);
        Work both = () -> {
            sink += rounds.time(
                    "topology",
                    () -> Components.of(nets).count()
                            + Lowlink.of(nets).subtreeEnd(0)
                            + CycleBasis.of(nets).dimension());
            sink += rounds.time(
                    "library",
                    () -> new ConnectivityInspector<>(library).connectedSets().size());
        };
        repeat(both, budgetNanos / 2, 3);
        rounds.forget(List.of("topology", "library"));
        repeat(both, budgetNanos / 2, 5);
    }

    private static Graph<Integer, Integer> library(IndexGraph graph) {
        Graph<Integer, Integer> copy = new Pseudograph<>(Integer.class);
        for (int v = 0; v < graph.vertexCount(); v++) {
            copy.addVertex(v);
        }
        for (int e = 0; e < graph.edgeBound(); e++) {
            if (graph.hasEdge(e)) {
                copy.addEdge(graph.from(e), graph.to(e), e);
            }
        }
        return copy;
    }

    private static double used() {
        System.gc();
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / MEGABYTE;
    }

    private static List<MemoryPoolMXBean> pools() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .toList();
    }

    private static void resetPeaks() {
        pools().forEach(MemoryPoolMXBean::resetPeakUsage);
    }

    private static double peak() {
        return pools().stream()
                        .mapToDouble(pool -> pool.getPeakUsage().getUsed())
                        .sum()
                / MEGABYTE;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%d", sink);
    }

    /**
     * The checks that look at the list and its graph. Those that solve for currents are measured apart, by the system
     * property {@code currents}: each of their cases of loads costs a solution of the whole network.
     */
    private static List<Check> checks() {
        return Catalogue.all().stream()
                .filter(check -> Boolean.getBoolean("currents")
                        || !check.getClass().getAnnotation(CheckInfo.class).solves())
                .toList();
    }
}
