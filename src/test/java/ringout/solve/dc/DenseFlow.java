package ringout.solve.dc;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import ringout.solve.dc.DcElement.Load;
import ringout.solve.dc.DcElement.Resistor;
import ringout.solve.dc.DcElement.Source;
import ringout.solve.dc.Draw.ConstantCurrent;
import ringout.solve.dc.Draw.ConstantPower;
import ringout.solve.dc.Draw.Resistive;

/**
 * The operating point by another way: dense nodal equations with Newton's method and a library's LU decomposition, the
 * loads raised from nothing in steps that get smaller until they reach their value or no step is small enough. Resistors,
 * sources and loads against node 0 only. Nodes that 0 ohm joins are one unknown.
 */
final class DenseFlow {
    private static final double ARRIVED = 1e-9;
    private static final double SMALLEST_STEP = 1e-8;

    private final DcCircuit circuit;
    private final int[] unknown;
    private final int n;
    private final RealMatrix linear;
    private final double[] driven;
    private double[] volts;
    private double carried;
    private double slack = 1;

    private DenseFlow(DcCircuit circuit) {
        this.circuit = circuit;
        unknown = unknowns(circuit);
        n = Arrays.stream(unknown).max().orElse(-1) + 1;
        linear = new Array2DRowRealMatrix(n, n);
        driven = new double[n];
        for (DcElement element : circuit.elements()) {
            stamp(element);
        }
        volts = new LUDecomposition(linear)
                .getSolver()
                .solve(new ArrayRealVector(driven))
                .toArray();
        follow();
    }

    static DenseFlow of(DcCircuit circuit) {
        return new DenseFlow(circuit);
    }

    private void stamp(DcElement element) {
        if (element instanceof Resistor r) {
            conductance(r.a(), r.b(), r.ohms() == 0 ? 0 : 1 / r.ohms());
        } else if (element instanceof Source s) {
            conductance(s.plus(), s.minus(), 1 / s.ohms());
            driven[unknown[s.plus()]] += s.volts() / s.ohms();
        } else if (element instanceof Load l && l.draw() instanceof Resistive r) {
            conductance(l.plus(), l.minus(), 1 / r.ohms());
        }
    }

    private void conductance(int a, int b, double siemens) {
        if (unknown[a] != unknown[b]) {
            add(a, a, siemens);
            add(b, b, siemens);
            add(a, b, -siemens);
            add(b, a, -siemens);
        }
    }

    private void add(int i, int j, double siemens) {
        if (unknown[i] >= 0 && unknown[j] >= 0) {
            linear.addToEntry(unknown[i], unknown[j], siemens);
        }
    }

    /** Node 0 is no unknown; nodes that 0 ohm joins share the lowest number, again and again until none changes. */
    private static int[] unknowns(DcCircuit circuit) {
        int[] root = IntStream.range(0, circuit.nodes()).toArray();
        boolean changed = true;
        while (changed) {
            changed = false;
            for (DcElement element : circuit.elements()) {
                if (element instanceof Resistor r && r.ohms() == 0 && root[r.a()] != root[r.b()]) {
                    root[r.a()] = Math.min(root[r.a()], root[r.b()]);
                    root[r.b()] = root[r.a()];
                    changed = true;
                }
            }
        }
        int[] numbers = Arrays.stream(root).distinct().sorted().toArray();
        return Arrays.stream(root).map(r -> Arrays.binarySearch(numbers, r) - 1).toArray();
    }

    private void follow() {
        double step = 0.25;
        while (carried < 1 && step > SMALLEST_STEP) {
            double next = Math.min(1, carried + step);
            double[] found = newton(volts.clone(), next);
            if (found.length == n && positive(found)) {
                volts = found;
                carried = next;
            } else {
                step /= 2;
            }
        }
        if (carried == 1) {
            // Near the fold voltages are sensitive: the reference itself is only so good there.
            slack = Math.max(1, 1e-3 * new SingularValueDecomposition(jacobian(volts, 1)).getConditionNumber());
            slack = Math.min(slack, 1e5);
        }
    }

    private boolean positive(double[] found) {
        return circuit.elements().stream()
                .allMatch(e -> !(e instanceof Load l) || l.draw() instanceof Resistive || found[unknown[l.plus()]] > 0);
    }

    private double[] newton(double[] at, double scale) {
        for (int i = 0; i < 40; i++) {
            RealMatrix jacobian = jacobian(at, scale);
            RealVector mismatch =
                    linear.operate(new ArrayRealVector(at)).subtract(new ArrayRealVector(current(at, scale)));
            LUDecomposition lu = new LUDecomposition(jacobian);
            if (!lu.getSolver().isNonSingular()) {
                return new double[0];
            }
            RealVector move = lu.getSolver().solve(mismatch);
            at = new ArrayRealVector(at).subtract(move).toArray();
            if (move.getLInfNorm() < ARRIVED) {
                // On the lower branch the jacobian has turned over.
                return stable(jacobian(at, scale)) ? at : new double[0];
            }
        }
        return new double[0];
    }

    private static boolean stable(RealMatrix jacobian) {
        return Arrays.stream(new EigenDecompositionSymmetric(jacobian).getEigenvalues())
                .allMatch(value -> value > 0);
    }

    private double[] current(double[] at, double scale) {
        double[] into = driven.clone();
        for (DcElement element : circuit.elements()) {
            if (element instanceof Load l && l.draw() instanceof ConstantCurrent c) {
                into[unknown[l.plus()]] -= scale * c.amps();
            } else if (element instanceof Load l && l.draw() instanceof ConstantPower p) {
                into[unknown[l.plus()]] -= scale * p.watts() / at[unknown[l.plus()]];
            }
        }
        return into;
    }

    private RealMatrix jacobian(double[] at, double scale) {
        RealMatrix jacobian = linear.copy();
        for (DcElement element : circuit.elements()) {
            if (element instanceof Load l && l.draw() instanceof ConstantPower p) {
                int i = unknown[l.plus()];
                jacobian.addToEntry(i, i, -scale * p.watts() / (at[i] * at[i]));
            }
        }
        return jacobian;
    }

    /** {@return the part of the loads that is carried, 1 when all are} */
    double carried() {
        return carried;
    }

    double volts(int node) {
        return unknown[node] < 0 ? 0 : volts[unknown[node]];
    }

    /** {@return by what factor the reference may be worse than its best, from its condition number} */
    double slack() {
        return slack;
    }
}
