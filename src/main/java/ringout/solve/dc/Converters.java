package ringout.solve.dc;

import ringout.solve.dc.DcElement.Regulator;
import ringout.solve.network.NetworkSolution;
import ringout.solve.network.NodeVoltage;

/**
 * What the regulators of a circuit do at the present iterate: their output voltages as sources of the network, and the
 * power and current they ask of their inputs.
 *
 * <p>An output is a source behind its output resistance. Its input takes the power at the output terminals over the
 * efficiency, plus the quiescent current; a linear regulator takes its output current instead. Below its dropout the
 * output voltage is the input voltage less the dropout.
 */
final class Converters {

    /** A few units in the last place of the voltages of a solution. */
    private static final double ROUNDING = 2e-15;

    private final CircuitNetwork circuit;
    private boolean[] conducting;
    private final double[] cap;
    private final double[] emf;
    private final double[] watts;
    private final double[] amps;

    /**
     * Starts with every output at its cap and nothing asked of the inputs.
     *
     * @param cap highest source voltage by circuit element: the set voltage, or less where a current limit is held
     */
    Converters(CircuitNetwork circuit, boolean[] conducting, double[] cap) {
        this.circuit = circuit;
        this.conducting = conducting;
        this.cap = cap;
        emf = circuit.emf();
        watts = new double[circuit.draws()];
        amps = new double[circuit.draws()];
        for (int i = 0; i < watts.length; i++) {
            int e = circuit.drawElement(i);
            if (circuit.element(e) instanceof Regulator r) {
                emf[circuit.branch(e)] = cap[e];
                amps[i] = r.rating().quiescentAmps();
            }
        }
    }

    /** Takes over which outputs conduct; one that does not asks for its quiescent current only. */
    void follow(boolean[] now) {
        conducting = now;
        for (int i = 0; i < watts.length; i++) {
            int e = circuit.drawElement(i);
            if (!now[e] && circuit.element(e) instanceof Regulator r) {
                watts[i] = 0;
                amps[i] = r.rating().quiescentAmps();
            }
        }
    }

    /** {@return source voltages by network element} */
    double[] emf() {
        return emf;
    }

    /** {@return the power each draw's regulator asks for, whatever its input voltage; 0 for loads} */
    double watts(int draw) {
        return watts[draw];
    }

    /** {@return the current each draw's regulator asks for, whatever its input voltage; 0 for loads} */
    double amps(int draw) {
        return amps[draw];
    }

    /** Takes over a solution; returns the largest relative change of any asked power, current or source voltage. */
    double update(NetworkSolution solution, double[] volts) {
        double change = 0;
        for (int i = 0; i < watts.length; i++) {
            int e = circuit.drawElement(i);
            if (conducting[e] && circuit.element(e) instanceof Regulator r) {
                change = Math.max(change, update(i, e, r, solution, volts[i]));
            }
        }
        return change;
    }

    private double update(int i, int e, Regulator r, NetworkSolution solution, double inputVolts) {
        int n = circuit.branch(e);
        double out = Math.max(0, outputVolts(r, solution));
        double current = Math.max(0, (emf[n] - out) / r.rating().ohms());
        boolean linear = r.rating().efficiency().isEmpty();
        double newWatts = linear ? 0 : out * current / r.rating().efficiency().getAsDouble();
        double newAmps = r.rating().quiescentAmps() + (linear ? current : 0);
        double ceiling = r.rating().dropoutVolts().isPresent()
                ? inputVolts - r.rating().dropoutVolts().getAsDouble()
                : Double.POSITIVE_INFINITY;
        double newEmf = Math.max(0, Math.min(cap[e], ceiling));
        // The current is a difference of two rounded voltages over a small resistance: its last digits are noise.
        double noise = ROUNDING * Math.abs(emf[n]) / r.rating().ohms();
        double change = Math.max(
                relative(
                        watts[i],
                        newWatts,
                        noise * out / r.rating().efficiency().orElse(1)),
                Math.max(relative(amps[i], newAmps, noise), relative(emf[n], newEmf, ROUNDING * Math.abs(emf[n]))));
        watts[i] = newWatts;
        amps[i] = newAmps;
        emf[n] = newEmf;
        return change;
    }

    private static double outputVolts(Regulator r, NetworkSolution solution) {
        return solution.between(r.outPlus(), r.outMinus()) instanceof NodeVoltage.Volts v ? v.value() : 0;
    }

    private static double relative(double before, double now, double noise) {
        double change = Math.abs(now - before);
        return change <= noise ? 0 : change / Math.max(1e-9, Math.max(Math.abs(before), Math.abs(now)));
    }
}
