package ringout.solve.network;

import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.CommonOps_DSCC;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/** The same conductance matrix in EJML's sparse Cholesky, in our order of elimination or in the order of the nodes. */
final class SparseOracle {

    private final DMatrixSparseCSC matrix;
    private final DMatrixRMaj right;
    private final DMatrixRMaj left;
    private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
            LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);

    private SparseOracle(DMatrixSparseCSC matrix) {
        this.matrix = matrix;
        right = new DMatrixRMaj(matrix.numRows, 1);
        left = new DMatrixRMaj(matrix.numRows, 1);
        right.set(matrix.numRows / 2, 0, 1);
    }

    /** In our order. */
    static SparseOracle ordered(NetworkStructure structure) {
        int[] number = new int[structure.network().nodes()];
        for (int v = 0; v < number.length; v++) {
            number[v] = structure.position(v);
        }
        return new SparseOracle(matrix(structure, number));
    }

    /** In the order of the nodes, which is what the library does by itself. */
    static SparseOracle unordered(NetworkStructure structure) {
        int[] number = new int[structure.network().nodes()];
        boolean[] seen = new boolean[structure.unknowns()];
        int[] numberOf = new int[structure.unknowns()];
        int next = 0;
        for (int v = 0; v < number.length; v++) {
            int position = structure.position(v);
            if (position >= 0 && !seen[position]) {
                seen[position] = true;
                numberOf[position] = next++;
            }
            number[v] = position < 0 ? -1 : numberOf[position];
        }
        return new SparseOracle(matrix(structure, number));
    }

    private static DMatrixSparseCSC matrix(NetworkStructure structure, int[] number) {
        ResistiveNetwork network = structure.network();
        int n = structure.unknowns();
        DMatrixSparseTriplet triplets = new DMatrixSparseTriplet(n, n, 4 * network.elements());
        double[] diagonal = new double[n];
        for (int e = 0; e < network.elements(); e++) {
            int i = number[network.from(e)];
            int j = number[network.to(e)];
            if (i == j) {
                continue;
            }
            double g = 1 / network.ohms(e);
            if (i >= 0) {
                diagonal[i] += g;
            }
            if (j >= 0) {
                diagonal[j] += g;
            }
            if (i >= 0 && j >= 0) {
                triplets.addItem(i, j, -g);
                triplets.addItem(j, i, -g);
            }
        }
        for (int i = 0; i < n; i++) {
            triplets.addItem(i, i, diagonal[i]);
        }
        DMatrixSparseCSC matrix = DConvertMatrixStruct.convert(triplets, (DMatrixSparseCSC) null);
        CommonOps_DSCC.duplicatesAdd(matrix, null);
        matrix.sortIndices(null);
        return matrix;
    }

    /** Factorises; from the second call on, with the structure kept, only the numbers. */
    Object factorise(boolean keepStructure) {
        if (solver.isStructureLocked() != keepStructure) {
            solver.setStructureLocked(keepStructure);
        }
        if (!solver.setA(matrix)) {
            throw new IllegalStateException("not positive definite");
        }
        return solver;
    }

    DMatrixRMaj solve() {
        solver.solve(right, left);
        return left;
    }
}
