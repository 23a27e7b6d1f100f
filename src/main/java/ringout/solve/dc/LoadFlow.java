package ringout.solve.dc;

import java.util.Arrays;
import ringout.solve.dc.DcElement.Diode;
import ringout.solve.network.NetworkSolution;

/**
 * The currents of all loads: the solution with the highest voltages if there is one.
 *
 * <p>First the loads' currents at the last voltages are drawn again and again (current injection), and for each set of
 * currents the diodes and regulator outputs are switched until none contradicts. From the open-circuit voltages downwards
 * this approaches the high-voltage solution, quickly while the drops are small. When it is slow, or a voltage is used up,
 * Newton's method takes over with the states as they are ({@link NewtonFlow}); it either arrives or shows that there is no
 * solution with these states.
 */
final class LoadFlow {

    /** Relative change of any current at which the iteration ends. */
    static final double SETTLED = 1e-12;

    /** Relative change below which an iteration that gets no further is at the rounding of large networks. */
    private static final double ROUNDED = 1e-10;

    private static final int INJECTIONS = 60;
    private static final int PATIENCE = 4;
    private static final double SLOW = 0.4;
    private static final int SLIDES = 60;
    private static final double TRICKLE = 1e-6;
    private static final double FED = 1e-9;

    private final CircuitNetwork circuit;
    private final Switching switching;
    private final Converters converters;
    private final Asked asked;
    private Excitation excitation;
    private double[] open;
    private double[] feeding;
    private double[] volts;
    private double[] amps;
    private NetworkSolution solution;
    private int solves;

    /**
     * Prepares a flow.
     *
     * @param cap highest source voltage by circuit element: the set voltage, or less where a current limit is held
     * @param scale factor on all constant currents and constant powers of loads
     */
    LoadFlow(CircuitNetwork circuit, Switching switching, double[] cap, double scale) {
        this.circuit = circuit;
        this.switching = switching;
        converters = new Converters(circuit, switching.conducting(), cap);
        asked = new Asked(circuit, converters, scale);
        excitation = new Excitation(circuit, switching.factorise());
        amps = new double[circuit.draws()];
        open = amps;
        feeding = amps;
        volts = amps;
        solution = excitation.solve(converters.emf(), amps);
    }

    /**
     * Nothing drawn, and diodes switched as they are when every load draws next to nothing: a diode without any current
     * does not tell which way it lets pass.
     */
    private void openCircuit() {
        double[] trickle = new double[circuit.draws()];
        Arrays.fill(trickle, TRICKLE);
        boolean[] before;
        int rounds = 0;
        do {
            before = switching.conducting();
            drawNothing();
            comeToRest(trickle);
        } while (!Arrays.equals(before, switching.conducting()) && rounds++ <= circuit.switched().length);
        drawNothing();
    }

    /** The open circuit, with outputs as low as their inputs leave them. */
    private void drawNothing() {
        double[] nothing = new double[circuit.draws()];
        int rounds = 0;
        do {
            NetworkSolution found = excitation.solve(converters.emf(), nothing);
            open = excitation.volts(found);
            accept(found, nothing, open);
        } while (converters.update(solution, open) > SETTLED && rounds++ < circuit.switched().length);
        feeding = feeding();
    }

    /** Open-circuit voltages with the drops of diodes left out: a diode without current has no voltage to give. */
    private double[] feeding() {
        double[] emf = converters.emf().clone();
        boolean anyDrop = false;
        for (int e : circuit.switched()) {
            if (circuit.element(e) instanceof Diode d && d.dropVolts() > 0) {
                emf[circuit.branch(e)] = 0;
                anyDrop = true;
            }
        }
        return anyDrop ? excitation.volts(excitation.solve(emf, new double[circuit.draws()])) : open.clone();
    }

    /** {@return whether a diode or regulator contradicts its state and all were switched once more} */
    private boolean switched() {
        boolean any = switching.revise(this);
        if (!any && !switching.goesRound()) {
            return false;
        }
        solves += excitation.solves();
        excitation = new Excitation(circuit, switching.factorise());
        converters.follow(switching.conducting());
        return any;
    }

    /** {@return whether a draw has a positive voltage before anything is drawn} */
    boolean fed(int draw) {
        return feeding[draw] > FED;
    }

    /** {@return whether a draw has its voltage the wrong way round} */
    boolean reversed(int draw) {
        return feeding[draw] < -FED;
    }

    /** {@return whether all loads are supplied and no diode or regulator contradicts its state} */
    boolean run() {
        openCircuit();
        double[] start = open;
        for (int round = 0; round <= circuit.switched().length; round++) {
            if (inject(start) || newton()) {
                return true;
            }
            if (switching.goesRound() || !switching.anyBlocks() || !(cutOff() || slide())) {
                return false;
            }
            start = volts;
        }
        return false;
    }

    private boolean newton() {
        switching.begin();
        while (new NewtonFlow(this, excitation, converters).run()) {
            if (!switched()) {
                return !switching.goesRound();
            }
        }
        return false;
    }

    /** Loads that are fed until others draw, and then lie behind diodes that block: they have no voltage after all. */
    private boolean cutOff() {
        boolean any = false;
        for (int i = 0; i < volts.length; i++) {
            int plus = circuit.network().injectionFrom(i);
            if (fed(i)
                    && !solution.factorised().connected(plus, circuit.network().injectionTo(i))) {
                feeding[i] = 0;
                any = true;
            }
        }
        return any;
    }

    /**
     * Past the fold the voltages fall until they are used up, or until another source comes in. Near the fold they fall
     * slowly: the steps are lengthened more and more, but never take away more than half.
     */
    private boolean slide() {
        boolean[] before = switching.conducting();
        double[] at = volts;
        double length = 1;
        for (int i = 0; i < SLIDES && positive(at); i++) {
            double[] next = comeToRest(drawn(at, true));
            converters.update(solution, next);
            if (!Arrays.equals(before, switching.conducting())) {
                return positive(next);
            }
            at = further(at, next, length);
            length *= 2;
        }
        return false;
    }

    private static double[] further(double[] at, double[] next, double length) {
        double[] further = new double[at.length];
        for (int k = 0; k < at.length; k++) {
            further[k] = Math.max(at[k] / 2, at[k] + length * (next[k] - at[k]));
        }
        return further;
    }

    /** {@return the voltages with constant currents drawn and no constant powers} */
    double[] constantsOnly() {
        return excitation.volts(excitation.solve(converters.emf(), drawn(open, false)));
    }

    private boolean inject(double[] start) {
        double[] at = start;
        double before = Double.POSITIVE_INFINITY;
        for (int i = 0; i < INJECTIONS && positive(at); i++) {
            double[] draws = drawn(at, true);
            at = comeToRest(draws);
            double change = Math.max(converters.update(solution, at), relativeChange(draws, drawn(at, true)));
            boolean stalls = change > SLOW * before;
            if (change <= SETTLED || (stalls && change <= ROUNDED)) {
                return positive(at) && !switching.goesRound();
            }
            if (i > PATIENCE && stalls) {
                return false;
            }
            before = change;
        }
        return false;
    }

    /** Draws currents and switches until nothing contradicts; gives the voltages then. */
    private double[] comeToRest(double[] asked) {
        switching.begin();
        do {
            NetworkSolution next = excitation.solve(converters.emf(), asked);
            accept(next, asked, excitation.volts(next));
        } while (switched());
        return volts;
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
                drawn[i] = asked.amps(i) + (withPower ? asked.watts(i) / at[i] : 0);
            }
        }
        return drawn;
    }

    /** {@return the part of a draw that is a constant power} */
    double constantWatts(int draw) {
        return asked.watts(draw);
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
        double certificate = certificate();
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
        return solves + excitation.solves();
    }
}
