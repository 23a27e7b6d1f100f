package ringout.solve.dc;

import ringout.solve.dc.DcElement.Diode;
import ringout.solve.dc.DcElement.Load;
import ringout.solve.network.FactorisedNetwork;
import ringout.solve.network.NetworkSolution;

/**
 * The currents of all loads while diodes and regulators stay as they are switched: the solution with the highest voltages
 * if there is one.
 *
 * <p>First the loads' currents at the last voltages are drawn again and again (current injection). From the open-circuit
 * voltages downwards this approaches the high-voltage solution, quickly while the drops are small. When it is slow, or a
 * voltage is used up, Newton's method takes over ({@link NewtonFlow}), which either arrives or shows that there is none.
 */
final class LoadFlow {

    /** Relative change of any current at which the iteration ends. */
    static final double SETTLED = 1e-12;

    private static final int INJECTIONS = 60;
    private static final int PATIENCE = 4;
    private static final double SLOW = 0.4;
    private static final double FED = 1e-9;

    private final CircuitNetwork circuit;
    private final Excitation excitation;
    private final Converters converters;
    private final double scale;
    private final double[] open;
    private final double[] feeding;
    private final NetworkSolution openSolution;
    private double[] volts;
    private double[] amps;
    private NetworkSolution solution;
    private double certificate;

    /**
     * Prepares a flow.
     *
     * @param scale factor on all constant currents and constant powers of loads
     */
    LoadFlow(CircuitNetwork circuit, FactorisedNetwork factorised, Converters converters, double scale) {
        this.circuit = circuit;
        this.converters = converters;
        this.scale = scale;
        excitation = new Excitation(circuit, factorised);
        amps = new double[circuit.draws()];
        openSolution = excitation.solve(converters.emf(), amps);
        solution = openSolution;
        open = excitation.volts(openSolution);
        volts = open;
        feeding = feeding();
    }

    /** Open-circuit voltages with the drops of diodes left out: a diode without current has no voltage to give. */
    private double[] feeding() {
        double[] emf = converters.emf().clone();
        boolean anyDrop = false;
        for (int e = 0; e < circuit.circuit().elements().size(); e++) {
            if (circuit.element(e) instanceof Diode d && d.dropVolts() > 0) {
                emf[circuit.branch(e)] = 0;
                anyDrop = true;
            }
        }
        return anyDrop ? excitation.volts(excitation.solve(emf, amps)) : open;
    }

    /** {@return whether a draw has a positive voltage before anything is drawn} */
    boolean fed(int draw) {
        return feeding[draw] > FED;
    }

    /** {@return whether a draw has its voltage the wrong way round} */
    boolean reversed(int draw) {
        return feeding[draw] < -FED;
    }

    /** {@return whether all loads are supplied; if not, {@link #solution} is the open circuit} */
    boolean run() {
        boolean found = inject(constantsOnly()) || new NewtonFlow(this, excitation, converters).run();
        if (found) {
            certificate = certificate();
        } else {
            accept(openSolution, new double[circuit.draws()], open);
        }
        return found;
    }

    /** {@return the voltages with constant currents drawn and no constant powers} */
    double[] constantsOnly() {
        return excitation.volts(excitation.solve(converters.emf(), drawn(open, false)));
    }

    private boolean inject(double[] start) {
        double[] at = start;
        double before = Double.POSITIVE_INFINITY;
        for (int i = 0; i < INJECTIONS && positive(at); i++) {
            double[] asked = drawn(at, true);
            NetworkSolution next = excitation.solve(converters.emf(), asked);
            at = excitation.volts(next);
            double change = Math.max(converters.update(next, at), relativeChange(asked, drawn(at, true)));
            accept(next, asked, at);
            if (change <= SETTLED) {
                return positive(at);
            }
            if (i > PATIENCE && change > SLOW * before) {
                return false;
            }
            before = change;
        }
        return false;
    }

    /** Takes an iterate as the present one. */
    void accept(NetworkSolution newSolution, double[] newAmps, double[] newVolts) {
        solution = newSolution;
        amps = newAmps;
        volts = newVolts;
    }

    /**
     * Largest part of its voltage that the constant powers, at the voltages without them, take from any load, four times
     * over. Below 1 a solution exists. S. Bolognani and S. Zampieri, IEEE Transactions on Power Systems 31 (2016), for
     * loads against a common node.
     */
    private double certificate() {
        double[] without = constantsOnly();
        double[] with = excitation.volts(excitation.solve(converters.emf(), drawn(without, true)));
        double worst = positive(without) ? 0 : Double.POSITIVE_INFINITY;
        for (int i = 0; i < with.length; i++) {
            worst = fed(i) ? Math.max(worst, (without[i] - with[i]) / without[i]) : worst;
        }
        return 4 * worst;
    }

    /** {@return whether all fed draws have a positive voltage} */
    boolean positive(double[] candidate) {
        for (int i = 0; i < candidate.length; i++) {
            if (fed(i) && !(candidate[i] > 0)) {
                return false;
            }
        }
        return true;
    }

    /** {@return the current of each draw at given voltages, with or without what constant powers take} */
    double[] drawn(double[] at, boolean withPower) {
        double[] drawn = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            if (fed(i)) {
                drawn[i] = constantAmps(i) + (withPower ? constantWatts(i) / at[i] : 0);
            }
        }
        return drawn;
    }

    /** {@return the part of a draw that is a constant current} */
    double constantAmps(int draw) {
        boolean isConstant = circuit.element(circuit.drawElement(draw)) instanceof Load l
                && l.draw() instanceof Draw.ConstantCurrent;
        return isConstant ? scale * amount(draw) : converters.amps(draw);
    }

    /** {@return the part of a draw that is a constant power} */
    double constantWatts(int draw) {
        boolean isPower =
                circuit.element(circuit.drawElement(draw)) instanceof Load l && l.draw() instanceof Draw.ConstantPower;
        return isPower ? scale * amount(draw) : converters.watts(draw);
    }

    private double amount(int draw) {
        Draw d = ((Load) circuit.element(circuit.drawElement(draw))).draw();
        return d instanceof Draw.ConstantCurrent c ? c.amps() : ((Draw.ConstantPower) d).watts();
    }

    static double relativeChange(double[] before, double[] now) {
        double change = 0;
        double scale = 0;
        for (int i = 0; i < now.length; i++) {
            change = Math.max(change, Math.abs(now[i] - before[i]));
            scale = Math.max(scale, Math.abs(now[i]));
        }
        return scale == 0 ? 0 : change / scale;
    }

    /** {@return by how much the constant powers may grow at least, as far as one solution can tell; 0 if it cannot} */
    double certifiedGrowth() {
        return certificate == 0 ? Double.POSITIVE_INFINITY : certificate < 1 ? 1 / certificate : 0;
    }

    double[] openVolts() {
        return open;
    }

    double[] volts() {
        return volts;
    }

    double[] amps() {
        return amps;
    }

    NetworkSolution solution() {
        return solution;
    }

    Converters converters() {
        return converters;
    }

    int solves() {
        return excitation.solves();
    }
}
