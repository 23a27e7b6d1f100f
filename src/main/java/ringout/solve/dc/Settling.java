package ringout.solve.dc;

import ringout.solve.dc.DcElement.Regulator;
import ringout.solve.network.EffectiveResistance;
import ringout.solve.network.NetworkSolution;
import ringout.solve.network.NodeVoltage;
import ringout.solve.network.Resistance;

/** Brings loads, regulators, diodes and current limits to rest together, for one scale of the loads. */
final class Settling {

    private static final int LIMIT_ROUNDS = 60;
    private static final double LIMIT_REACHED = 1e-9;
    private static final double STIFF = 1e-9;

    private final CircuitNetwork circuit;
    private int solves;

    Settling(CircuitNetwork circuit) {
        this.circuit = circuit;
    }

    /** {@return the outcome with current limits held, if any regulator has one} */
    Attempt limited(double scale) {
        double[] cap = setVoltages();
        for (int round = 0; round < LIMIT_ROUNDS; round++) {
            Attempt attempt = settle(scale, cap);
            if (!(attempt instanceof Attempt.Settled settled)) {
                return attempt;
            }
            int exceeded = CircuitNetwork.NONE;
            double worst = LIMIT_REACHED;
            for (int e = 0; e < cap.length; e++) {
                double distance = distance(e, settled, cap);
                if (distance > worst) {
                    worst = distance;
                    exceeded = e;
                }
            }
            if (exceeded == CircuitNetwork.NONE) {
                return settled;
            }
            if (!adjust(exceeded, settled, cap)) {
                return new Attempt.Overloaded(exceeded, demand(exceeded, scale));
            }
        }
        return new Attempt.Restless();
    }

    /** {@return the outcome as if no regulator had a current limit} */
    Attempt unlimited(double scale) {
        return settle(scale, setVoltages());
    }

    private double demand(int e, double scale) {
        return unlimited(scale) instanceof Attempt.Settled s ? outputAmps(e, s) : Double.POSITIVE_INFINITY;
    }

    private double[] setVoltages() {
        double[] cap = new double[circuit.circuit().elements().size()];
        for (int e = 0; e < cap.length; e++) {
            cap[e] = circuit.element(e) instanceof Regulator r ? r.rating().volts() : 0;
        }
        return cap;
    }

    private Attempt settle(double scale, double[] cap) {
        Switching switching = new Switching(circuit);
        LoadFlow flow = new LoadFlow(circuit, switching, cap, scale);
        boolean found = flow.run();
        solves += flow.solves();
        if (found) {
            return new Attempt.Settled(flow, switching.conducting(), cap.clone());
        }
        return switching.goesRound() ? new Attempt.Restless() : new Attempt.Lost();
    }

    /** {@return by how much of its limit a regulator is off it: too much current, or held lower than it need be} */
    private double distance(int e, Attempt.Settled settled, double[] cap) {
        if (!(circuit.element(e) instanceof Regulator r)
                || r.rating().limitAmps().isEmpty()) {
            return 0;
        }
        double limit = r.rating().limitAmps().getAsDouble();
        double over = outputAmps(e, settled) / limit - 1;
        return cap[e] < r.rating().volts() ? Math.abs(over) : Math.max(0, over);
    }

    /** Moves the source voltage of a regulator to where, all else linear, its limit flows; false if nothing gives way. */
    private boolean adjust(int e, Attempt.Settled settled, double[] cap) {
        Regulator r = (Regulator) circuit.element(e);
        double siemens = 1 / r.rating().ohms();
        EffectiveResistance meter =
                EffectiveResistance.of(settled.flow().solution().factorised());
        if (!(meter.between(r.outPlus(), r.outMinus()) instanceof Resistance.Ohms ohms)) {
            return false;
        }
        double yielding = 1 - siemens * ohms.value();
        double over = outputAmps(e, settled) - r.rating().limitAmps().orElse(Double.POSITIVE_INFINITY);
        if (yielding < STIFF) {
            return false;
        }
        double emf = settled.flow().converters().emf()[circuit.branch(e)];
        cap[e] = Math.min(r.rating().volts(), emf - over / (siemens * yielding));
        return cap[e] > 0;
    }

    /** {@return the output current of a regulator} */
    double outputAmps(int e, Attempt.Settled settled) {
        Regulator r = (Regulator) circuit.element(e);
        NetworkSolution solution = settled.flow().solution();
        boolean gives = settled.conducts(e);
        return gives && solution.between(r.outPlus(), r.outMinus()) instanceof NodeVoltage.Volts v
                ? (settled.flow().converters().emf()[circuit.branch(e)] - v.value())
                        / r.rating().ohms()
                : 0;
    }

    /** {@return how many linear solutions were made so far} */
    int solves() {
        return solves;
    }
}
