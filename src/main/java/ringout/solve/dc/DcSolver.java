package ringout.solve.dc;

import java.util.Optional;
import ringout.solve.dc.DcElement.Regulator;
import ringout.solve.dc.DcOutcome.Overload;
import ringout.solve.dc.DcOutcome.Unsettled;
import ringout.solve.dc.DcOutcome.VoltageCollapse;

/**
 * Finds the operating point of a circuit: of the solutions a circuit with loads of constant power can have, the one with
 * the highest voltages, which is where it comes to rest when it is switched on.
 */
public final class DcSolver {

    private static final double MARGIN_DIGITS = 1e-7;
    private static final double LARGEST_MARGIN = 1e6;

    private final CircuitNetwork circuit;
    private final Settling settling;

    private DcSolver(CircuitNetwork circuit) {
        this.circuit = circuit;
        settling = new Settling(circuit);
    }

    /** {@return a solver for a circuit} */
    public static DcSolver of(DcCircuit circuit) {
        return new DcSolver(CircuitNetwork.of(circuit));
    }

    /**
     * {@return a solver for another circuit}
     *
     * <p>Where it has the same connections and other values, loads and source voltages only, what follows from the
     * connections alone is not worked out again.
     */
    public DcSolver like(DcCircuit other) {
        return new DcSolver(circuit.like(other));
    }

    /** {@return the operating point of a circuit} */
    public static DcOutcome solve(DcCircuit circuit) {
        return of(circuit).solve();
    }

    /** {@return the largest factor on the loads of a circuit, see {@link #margin()}} */
    public static double loadMargin(DcCircuit circuit) {
        return of(circuit).margin();
    }

    /** {@return whether this solver and another share what follows from the connections of their circuits} */
    boolean sharesWith(DcSolver other) {
        return circuit.sharesWith(other.circuit);
    }

    /** {@return the operating point} */
    public DcOutcome solve() {
        Attempt attempt = settling.limited(1);
        if (attempt instanceof Attempt.Settled settled) {
            return point(settled);
        } else if (attempt instanceof Attempt.Overloaded o) {
            double limit = ((Regulator) circuit.element(o.element()))
                    .rating()
                    .limitAmps()
                    .orElse(0);
            return new Overload(o.element(), o.amps(), limit, unlimited(1));
        } else if (attempt instanceof Attempt.Lost) {
            return collapse();
        }
        return new Unsettled();
    }

    private Optional<SolvedPoint> unlimited(double scale) {
        return settling.unlimited(scale) instanceof Attempt.Settled s ? Optional.of(point(s)) : Optional.empty();
    }

    private SolvedPoint point(Attempt.Settled settled) {
        return new SolvedPoint(circuit, settled, settling.solves());
    }

    private DcOutcome collapse() {
        double margin = bisect(0, 1);
        Optional<SolvedPoint> last = margin > 0 ? unlimited(margin) : Optional.empty();
        int weakest = last.map(SolvedPoint::weakest).orElseGet(this::firstLoad);
        return new VoltageCollapse(weakest, margin, last);
    }

    private int firstLoad() {
        return circuit.draws() == 0 ? 0 : circuit.drawElement(0);
    }

    /**
     * How far the loads can grow, current limits of regulators apart.
     *
     * @return the largest factor on all constant-current and constant-power loads together with which an operating point
     *     exists, to seven digits (fewer when regulators follow a low input); infinity if they never collapse it; 0 if not even the smallest part can be carried
     */
    public double margin() {
        double carried = 0;
        double lost = 1;
        while (carries(lost)) {
            carried = lost;
            lost *= 2;
            if (lost > LARGEST_MARGIN) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return bisect(carried, lost);
    }

    private double bisect(double from, double to) {
        double carried = from;
        double lost = to;
        while (lost - carried > MARGIN_DIGITS * lost && lost > MARGIN_DIGITS) {
            double middle = (carried + lost) / 2;
            if (carries(middle)) {
                carried = middle;
            } else {
                lost = middle;
            }
        }
        return carried;
    }

    private boolean carries(double scale) {
        return settling.unlimited(scale) instanceof Attempt.Settled;
    }
}
