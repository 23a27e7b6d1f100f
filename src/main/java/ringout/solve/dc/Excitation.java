package ringout.solve.dc;

import ringout.solve.network.FactorisedNetwork;
import ringout.solve.network.NetworkSolution;
import ringout.solve.network.NodeVoltage;
import ringout.solve.network.ResistiveNetwork;

/** Solves one factorised network for source voltages and draws, and counts how often. */
final class Excitation {

    private final CircuitNetwork circuit;
    private final FactorisedNetwork factorised;
    private final ResistiveNetwork silent;
    private int solves;

    Excitation(CircuitNetwork circuit, FactorisedNetwork factorised) {
        this.circuit = circuit;
        this.factorised = factorised;
        silent = factorised.network().withEmf(new double[factorised.network().elements()]);
    }

    NetworkSolution solve(double[] emf, double[] amps) {
        solves++;
        return factorised.solve(factorised.network().drivenBy(emf, amps));
    }

    /** {@return the voltage that currents alone, drawn from the silent network, make across each draw; none above 0} */
    double[] respond(double[] amps) {
        solves++;
        return volts(factorised.solve(silent.withInjections(amps)));
    }

    /** {@return the voltage across each draw; 0 where none is defined} */
    double[] volts(NetworkSolution solution) {
        double[] volts = new double[circuit.draws()];
        for (int i = 0; i < volts.length; i++) {
            int plus = circuit.network().injectionFrom(i);
            int minus = circuit.network().injectionTo(i);
            volts[i] = solution.between(plus, minus) instanceof NodeVoltage.Volts v ? v.value() : 0;
        }
        return volts;
    }

    /** {@return how many linear solutions were made} */
    int solves() {
        return solves;
    }

    FactorisedNetwork factorised() {
        return factorised;
    }
}
