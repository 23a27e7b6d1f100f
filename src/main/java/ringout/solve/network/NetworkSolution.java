package ringout.solve.network;

import ringout.solve.network.NodeVoltage.Floating;
import ringout.solve.network.NodeVoltage.Volts;

/**
 * Potentials of a solved network. Immutable.
 *
 * <p>An injected current whose two nodes are in different islands has no return and does not flow; see {@link #flows}.
 */
public final class NetworkSolution {

    private final FactorisedNetwork factorised;
    private final ResistiveNetwork excitation;
    private final double[] arrived;
    private final double[] potential;

    NetworkSolution(FactorisedNetwork factorised, ResistiveNetwork excitation, double[] arrived, double[] potential) {
        this.factorised = factorised;
        this.excitation = excitation;
        this.arrived = arrived;
        this.potential = potential;
    }

    /** {@return the voltage of a node against the reference of its island} */
    public NodeVoltage voltage(int node) {
        int reference = factorised.islands().reference(node);
        return reference < 0 ? new Floating() : new Volts(potential(node) - potential(reference));
    }

    /** {@return the voltage of the first node against the second, defined inside an island even without a reference} */
    public NodeVoltage between(int a, int b) {
        return factorised.connected(a, b) ? new Volts(potential(a) - potential(b)) : new Floating();
    }

    /** {@return whether an injected current has a return and flows} */
    public boolean flows(int injection) {
        return factorised.connected(excitation.injectionFrom(injection), excitation.injectionTo(injection));
    }

    /** {@return the currents of all elements, computed anew on each call} */
    public BranchCurrents currents() {
        return BranchCurrents.of(this);
    }

    /** {@return volts of a node against the datum of its own island, whichever node that is} */
    double potential(int node) {
        int position = factorised.structure().position(node);
        return position == NetworkStructure.AT_DATUM ? 0 : potential[position];
    }

    /** {@return the potentials by position of elimination} */
    double[] potentials() {
        return potential;
    }

    /** {@return by position of elimination, the current that arrives when the position is eliminated} */
    double[] arrived() {
        return arrived;
    }

    /** {@return the factorisation that was solved} */
    public FactorisedNetwork factorised() {
        return factorised;
    }

    /** {@return the network whose voltages and currents drive this solution} */
    ResistiveNetwork excitation() {
        return excitation;
    }
}
