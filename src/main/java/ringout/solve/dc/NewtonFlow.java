package ringout.solve.dc;

import ringout.solve.network.NetworkSolution;

/**
 * Newton's method for loads of constant power, from the voltages without them downwards.
 *
 * <p>Unknown are the voltages {@code V} across the draws, {@code V = V0 - R (P / V)}. While {@code V} lies above the
 * high-voltage solution the matrix {@code 1 - R P/V²} is positive definite and each step comes closer from above without
 * passing it; when it stops being so, or a voltage is used up, the loads ask for more than the network can carry (fold).
 * The linear systems are solved by conjugate gradients, each product being one solution of the factorised network, so no
 * negative conductance ever enters a factorisation; lost definiteness shows as a direction of no curvature.
 */
final class NewtonFlow {

    private static final int STEPS = 60;
    private static final int REGULATOR_ROUNDS = 60;
    private static final double INNER = 1e-10;

    private final LoadFlow flow;
    private final Excitation excitation;
    private final Converters converters;

    NewtonFlow(LoadFlow flow, Excitation excitation, Converters converters) {
        this.flow = flow;
        this.excitation = excitation;
        this.converters = converters;
    }

    /** {@return whether the loads, with the regulators that feed on them, find a solution} */
    boolean run() {
        for (int round = 0; round < REGULATOR_ROUNDS; round++) {
            if (!descend()) {
                return false;
            }
            if (converters.update(flow.solution(), flow.volts()) <= LoadFlow.SETTLED) {
                return true;
            }
        }
        return false;
    }

    private boolean descend() {
        double[] at = flow.constantsOnly();
        for (int step = 0; step < STEPS && flow.positive(at); step++) {
            double[] amps = flow.drawn(at, true);
            NetworkSolution solution = excitation.solve(converters.emf(), amps);
            double[] reached = excitation.volts(solution);
            if (LoadFlow.relativeChange(reached, at) <= LoadFlow.SETTLED) {
                flow.accept(solution, amps, reached);
                return flow.positive(reached);
            }
            double[] move = newtonStep(at, reached);
            if (move.length < at.length) {
                return false;
            }
            at = sum(at, move);
        }
        return false;
    }

    /** Solves {@code (1 - R G) move = reached - at} with {@code G = P/V²}; an empty answer means the fold is passed. */
    private double[] newtonStep(double[] at, double[] reached) {
        int n = at.length;
        double[] root = new double[n];
        double[] right = new double[n];
        for (int i = 0; i < n; i++) {
            root[i] = flow.fed(i) ? Math.sqrt(flow.constantWatts(i)) / at[i] : 0;
            right[i] = root[i] * (reached[i] - at[i]);
        }
        double[] y = conjugateGradients(root, right);
        if (y.length < n) {
            return y;
        }
        double[] response = excitation.respond(product(root, y));
        double[] move = new double[n];
        for (int i = 0; i < n; i++) {
            move[i] = flow.fed(i) ? reached[i] - at[i] - response[i] : 0;
        }
        return move;
    }

    /** Solves {@code (1 - D R D) y = b} with {@code D} the given roots, or returns nothing if that is not definite. */
    private double[] conjugateGradients(double[] root, double[] b) {
        double[] y = new double[b.length];
        double[] residual = b.clone();
        double[] direction = b.clone();
        double square = dot(residual, residual);
        double goal = INNER * INNER * square;
        for (int i = 0; i < b.length + 10 && square > goal; i++) {
            double[] response = product(root, excitation.respond(product(root, direction)));
            double[] image = sum(direction, response);
            double curvature = dot(direction, image);
            if (!(curvature > 0)) {
                return new double[0];
            }
            double length = square / curvature;
            for (int k = 0; k < y.length; k++) {
                y[k] += length * direction[k];
                residual[k] -= length * image[k];
            }
            double next = dot(residual, residual);
            for (int k = 0; k < y.length; k++) {
                direction[k] = residual[k] + next / square * direction[k];
            }
            square = next;
        }
        return y;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double[] product(double[] a, double[] b) {
        double[] c = new double[a.length];
        for (int i = 0; i < c.length; i++) {
            c[i] = a[i] * b[i];
        }
        return c;
    }

    private static double[] sum(double[] a, double[] b) {
        double[] c = new double[a.length];
        for (int i = 0; i < c.length; i++) {
            c[i] = a[i] + b[i];
        }
        return c;
    }
}
