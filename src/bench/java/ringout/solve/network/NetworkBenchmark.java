package ringout.solve.network;

import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Times the network solver on made-up harnesses of 500 to 100,000 nodes and prints medians with their ratios, all
 * of one run on one machine: only the ratios mean anything elsewhere. Beside it EJML's sparse Cholesky given our order,
 * the same without it where that ends, and a dense Cholesky where it fits. Run it with the collector of the launcher:
 *
 * <pre>
 * mvn -q -Pbench test-compile exec:exec -Dbench= -Dbench.main=ringout.solve.network.NetworkBenchmark \
 *     -Dbench.jvm="-Xmx2g -XX:+UseSerialGC"
 * </pre>
 */
public final class NetworkBenchmark {

    private static final double TOLERANCE_VOLTS = 0.01;
    private static final int UNORDERED_LIMIT = 3_000;
    private static final int DENSE_LIMIT = 1_000;

    private final ResistiveNetwork network;
    private final NetworkStructure structure;
    private double fresh;

    private NetworkBenchmark(int nodes) {
        network = SyntheticHarness.of(nodes, 7);
        structure = NetworkStructure.of(network);
    }

    /** Runs the benchmark for the numbers of nodes given, or for the usual ones. */
    public static void main(String[] arguments) {
        int[] sizes = arguments.length == 0
                ? new int[] {500, 2_500, 10_000, 100_000}
                : Arrays.stream(arguments).mapToInt(Integer::parseInt).toArray();
        for (int size : sizes) {
            new NetworkBenchmark(size).run();
        }
        System.out.println("(" + Timing.sink() + ")");
    }

    private void run() {
        System.out.printf(
                Locale.ROOT,
                "%n%d nodes, %d elements, %.2f factor entries a column, elimination height %d%n",
                network.nodes(),
                network.elements(),
                structure.factorEntries() / (double) structure.unknowns(),
                structure.eliminationHeight());
        ours();
        reSolves();
        scenarios();
        others();
    }

    private void ours() {
        Adjacency graph = graph();
        Factor factor = structure.factorise(network).factor();
        double order = Timing.micros(() -> Ordering.of(graph));
        double analyse = Timing.micros(() -> Symbolic.of(graph));
        double numeric = Timing.micros(() -> Factor.of(factor.shape, Conductances.of(structure, network)));
        double solve = Timing.micros(() -> substitute(factor));
        fresh = numeric + solve;
        line("order", order, order / numeric, "of numeric (goal at most 10)");
        line("order and symbolic factor", analyse, analyse / numeric, "of numeric");
        line("conductances and numeric factor", numeric, 1, "");
        line("solve", solve, solve / numeric, "of numeric");
        double all = Timing.micros(() -> NetworkStructure.of(network).factorise(network).solve());
        line("network to solution, all of it", all, all / numeric, "of numeric");
    }

    private static double[] substitute(Factor factor) {
        double[] x = new double[factor.shape.size];
        x[x.length / 2] = 1;
        factor.forward(x);
        return factor.backward(x);
    }

    private void reSolves() {
        Resolver resolver = Resolver.of(structure.factorise(network).solve());
        Random random = new Random(1);
        double opened = Timing.micros(() -> resolver.after(TOLERANCE_VOLTS, new EdgeChange.Opened(any(random))));
        double changed = Timing.micros(() -> {
            int e = any(random);
            return resolver.after(TOLERANCE_VOLTS, new EdgeChange.Changed(e, network.ohms(e) + 1));
        });
        double fault = Timing.micros(() -> {
            int e = any(random);
            return resolver.after(
                    TOLERANCE_VOLTS,
                    new EdgeChange.Opened(e),
                    new EdgeChange.Added(network.from(e), any(random) % network.nodes(), 5));
        });
        EffectiveResistance meter = EffectiveResistance.of(structure.factorise(network));
        double ohms = Timing.micros(() -> meter.between(any(random) % network.nodes(), any(random) % network.nodes()));
        line("re-solve, one element opened", opened, fresh / opened, "times faster than numeric + solve (goal 100 at 100k)");
        line("re-solve, one element +1 ohm", changed, fresh / changed, "times faster");
        line("re-solve, wire off and on a far node", fault, fresh / fault, "times faster");
        line("ohms between two nodes", ohms, fresh / ohms, "times faster");
    }

    private int any(Random random) {
        return random.nextInt(network.elements());
    }

    /** Each scenario opens a dozen elements and gives as many another resistance, as the states of an aircraft do. */
    private void scenarios() {
        ResistiveNetwork[] states = new ResistiveNetwork[10];
        for (int i = 0; i < states.length; i++) {
            states[i] = i == 0 ? network : state(i);
        }
        double one = Timing.micros(() -> scenarios(1, states));
        double ten = Timing.micros(() -> scenarios(10, states));
        FactorisedNetwork factorised = structure.factorise(network);
        double event = Timing.micros(factorised::solve);
        line("one state with its structure", one, 1, "");
        line("ten states on one structure", ten, ten / one, "of one (goal at most 2)");
        line("the same and ten events in each", ten + 90 * event, (ten + 90 * event) / one, "of one, a hundred solutions");
    }

    private ResistiveNetwork state(int seed) {
        Random random = new Random(seed);
        double[] ohms = new double[network.elements()];
        for (int e = 0; e < ohms.length; e++) {
            ohms[e] = network.ohms(e);
        }
        for (int i = 0; i < 12; i++) {
            ohms[any(random)] = Double.POSITIVE_INFINITY;
            ohms[any(random)] += 1;
        }
        return network.withOhms(ohms);
    }

    private NetworkSolution scenarios(int count, ResistiveNetwork[] states) {
        NetworkStructure shared = NetworkStructure.of(network);
        FactorisedNetwork first = shared.factorise(states[0]);
        NetworkSolution last = first.solve();
        for (int i = 1; i < count; i++) {
            last = first.with(states[i]).solve();
        }
        return last;
    }

    private void others() {
        SparseOracle ordered = SparseOracle.ordered(structure);
        ordered.factorise(false);
        double all = Timing.micros(() -> ordered.factorise(false));
        double numeric = Timing.micros(() -> ordered.factorise(true));
        double solve = Timing.micros(ordered::solve);
        line("EJML sparse Cholesky in our order", all, all / fresh, "of our numeric + solve");
        line("EJML, numbers only", numeric, numeric / fresh, "of our numeric + solve");
        line("EJML, solve", solve, solve / fresh, "of our numeric + solve");
        line("EJML, numbers and solve", numeric + solve, (numeric + solve) / fresh, "(goal at least 1)");
        if (network.nodes() <= UNORDERED_LIMIT) {
            SparseOracle unordered = SparseOracle.unordered(structure);
            double alone = Timing.micros(() -> unordered.factorise(false));
            line("EJML sparse Cholesky without an order", alone, alone / fresh, "of our numeric + solve");
        }
        if (network.nodes() <= DENSE_LIMIT) {
            double dense = Timing.micros(this::dense);
            line("EJML dense Cholesky", dense, dense / fresh, "of our numeric + solve");
        }
    }

    private DMatrixRMaj dense() {
        int n = structure.unknowns();
        DMatrixRMaj a = new DMatrixRMaj(n, n);
        for (int e = 0; e < network.elements(); e++) {
            int i = structure.position(network.from(e));
            int j = structure.position(network.to(e));
            double g = i == j ? 0 : 1 / network.ohms(e);
            if (i >= 0) {
                a.add(i, i, g);
            }
            if (j >= 0) {
                a.add(j, j, g);
            }
            if (i >= 0 && j >= 0) {
                a.add(i, j, -g);
                a.add(j, i, -g);
            }
        }
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(n);
        DMatrixRMaj b = new DMatrixRMaj(n, 1);
        b.set(n / 2, 0, 1);
        DMatrixRMaj x = new DMatrixRMaj(n, 1);
        solver.setA(a);
        solver.solve(b, x);
        return x;
    }

    private Adjacency graph() {
        int m = network.elements();
        int[] from = new int[m];
        int[] to = new int[m];
        for (int e = 0; e < m; e++) {
            from[e] = network.from(e) - 1;
            to[e] = network.to(e) - 1;
        }
        return Adjacency.of(network.nodes() - 1, from, to);
    }

    private static void line(String what, double micros, double ratio, String of) {
        System.out.printf(Locale.ROOT, "  %-40s %12.1f us  %10.2f %s%n", what, micros, ratio, of);
    }
}
