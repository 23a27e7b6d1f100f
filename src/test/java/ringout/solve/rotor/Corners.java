package ringout.solve.rotor;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealVector;

/** A linear programme by brute force: a bounded one has its best value at a corner, where as many constraints are tight as there are unknowns. */
final class Corners {
    private static final double TIGHT = 1e-9;

    private final List<double[]> equal = new ArrayList<>();
    private final List<double[]> atMost = new ArrayList<>();
    private final int unknowns;
    private double best = Double.NEGATIVE_INFINITY;

    private Corners(List<Thruster> rotors, Lifted weight, boolean holdYaw) {
        int n = rotors.size();
        unknowns = n + 1;
        double[] sum = new double[n + 2];
        double[] pitch = new double[n + 2];
        double[] roll = new double[n + 2];
        double[] yaw = new double[n + 2];
        sum[n + 1] = weight.kg();
        for (int i = 0; i < n; i++) {
            Thruster rotor = rotors.get(i);
            sum[i] = 1;
            pitch[i] = rotor.forwardM() - weight.forwardM();
            roll[i] = rotor.rightM() - weight.rightM();
            yaw[i] = rotor.clockwise() ? 1 : -1;
            double[] low = new double[n + 2];
            low[i] = -1;
            low[n] = 1;
            double[] high = new double[n + 2];
            high[i] = 1;
            high[n] = 1;
            high[n + 1] = rotor.maxKgf();
            atMost.add(low);
            atMost.add(high);
        }
        equal.addAll(holdYaw ? List.of(sum, pitch, roll, yaw) : List.of(sum, pitch, roll));
    }

    static OptionalDouble best(List<Thruster> rotors, Lifted weight, boolean holdYaw) {
        Corners corners = new Corners(rotors, weight, holdYaw);
        int free = corners.unknowns - corners.equal.size();
        for (int spare = 0; spare <= corners.equal.size(); spare++) {
            // equalities may depend on each other: then more bounds are tight
            corners.choose(0, new ArrayList<>(), Math.max(0, free) + spare);
        }
        return corners.best < -TIGHT ? OptionalDouble.empty() : OptionalDouble.of(Math.max(0, corners.best));
    }

    private void choose(int from, List<double[]> chosen, int left) {
        if (left == 0) {
            corner(chosen);
            return;
        }
        for (int i = from; i <= atMost.size() - left; i++) {
            chosen.add(atMost.get(i));
            choose(i + 1, chosen, left - 1);
            chosen.remove(chosen.size() - 1);
        }
    }

    private void corner(List<double[]> tight) {
        List<double[]> rows = new ArrayList<>(equal);
        rows.addAll(tight);
        if (rows.size() < unknowns) {
            return;
        }
        Array2DRowRealMatrix matrix = new Array2DRowRealMatrix(rows.size(), unknowns);
        ArrayRealVector right = new ArrayRealVector(rows.size());
        for (int r = 0; r < rows.size(); r++) {
            for (int c = 0; c < unknowns; c++) {
                matrix.setEntry(r, c, rows.get(r)[c]);
            }
            right.setEntry(r, rows.get(r)[unknowns]);
        }
        try {
            RealVector point = new QRDecomposition(matrix, TIGHT).getSolver().solve(right);
            if (holds(point)) {
                best = Math.max(best, point.getEntry(unknowns - 1));
            }
        } catch (MathRuntimeException singular) {
            // these rows do not meet in one point
        }
    }

    private boolean holds(RealVector point) {
        return equal.stream().allMatch(row -> Math.abs(value(row, point)) < 1e-7)
                && atMost.stream().allMatch(row -> value(row, point) < 1e-7);
    }

    private double value(double[] row, RealVector point) {
        double value = -row[unknowns];
        for (int i = 0; i < unknowns; i++) {
            value += row[i] * point.getEntry(i);
        }
        return value;
    }
}
