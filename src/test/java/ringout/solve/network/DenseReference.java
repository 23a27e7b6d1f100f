package ringout.solve.network;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * The same network solved another way: modified nodal analysis (a current for every element is an unknown, so a 0 Ω
 * element needs no contraction), least squares by the singular values of Hipparchus, islands by breadth-first search.
 */
final class DenseReference {

    private final ResistiveNetwork network;
    private final int[] island;
    private final double[] unknowns;

    DenseReference(ResistiveNetwork network) {
        this.network = network;
        island = islands(network);
        unknowns = solve();
    }

    boolean sameIsland(int a, int b) {
        return island[a] == island[b];
    }

    boolean hasReference(int node) {
        for (int r = 0; r < network.references(); r++) {
            if (sameIsland(node, network.reference(r))) {
                return true;
            }
        }
        return false;
    }

    /** Volts against the first reference of the island. */
    double volts(int node) {
        for (int r = 0; r < network.references(); r++) {
            if (sameIsland(node, network.reference(r))) {
                return between(node, network.reference(r));
            }
        }
        throw new IllegalStateException("no reference");
    }

    double between(int a, int b) {
        return unknowns[a] - unknowns[b];
    }

    double amps(int element) {
        return unknowns[network.nodes() + element];
    }

    /** Unknowns: a potential for each node, a current for each element. Rows: currents at nodes, laws of elements. */
    private double[] solve() {
        int n = network.nodes();
        int m = network.elements();
        double[][] a = new double[n + m][n + m];
        double[] b = new double[n + m];
        for (int e = 0; e < m; e++) {
            a[network.from(e)][n + e] -= 1;
            a[network.to(e)][n + e] += 1;
            if (Double.isInfinite(network.ohms(e))) {
                a[n + e][n + e] = 1;
            } else {
                a[n + e][network.from(e)] += 1;
                a[n + e][network.to(e)] -= 1;
                a[n + e][n + e] = -network.ohms(e);
                b[n + e] = -network.emf(e);
            }
        }
        for (int i = 0; i < network.injections(); i++) {
            if (sameIsland(network.injectionFrom(i), network.injectionTo(i))) {
                b[network.injectionFrom(i)] += network.injectionAmps(i);
                b[network.injectionTo(i)] -= network.injectionAmps(i);
            }
        }
        DecompositionSolver solver = new SingularValueDecomposition(new Array2DRowRealMatrix(a)).getSolver();
        return solver.solve(new ArrayRealVector(b)).toArray();
    }

    private static int[] islands(ResistiveNetwork network) {
        int[] island = new int[network.nodes()];
        for (int root = 0, next = 1; root < island.length; root++) {
            if (island[root] == 0) {
                flood(network, island, root, next++);
            }
        }
        return island;
    }

    private static void flood(ResistiveNetwork network, int[] island, int root, int number) {
        List<Integer> queue = new ArrayList<>(List.of(root));
        island[root] = number;
        for (int k = 0; k < queue.size(); k++) {
            for (int e = 0; e < network.elements(); e++) {
                int at = queue.get(k);
                if (Double.isFinite(network.ohms(e)) && (network.from(e) == at || network.to(e) == at)) {
                    int other = network.from(e) + network.to(e) - at;
                    if (island[other] == 0) {
                        island[other] = number;
                        queue.add(other);
                    }
                }
            }
        }
    }
}
