package ringout.solve.network;

/**
 * How one voltage of a solved network answers to a small change of any element: all derivatives from one further solve.
 *
 * <p>Adjoint network (S. W. Director and R. A. Rohrer, IEEE Transactions on Circuit Theory 16, 1969): silence the
 * sources, drive one ampere between the two nodes that are observed, and the derivative by a resistance is the product
 * of its current there and its current in the network itself. Holds for 0 Ω elements as well. Linear: valid for small
 * changes, with the injected currents held constant.
 */
public final class Sensitivity {

    private final NetworkSolution adjoint;
    private final BranchCurrents adjointCurrents;
    private final BranchCurrents currents;
    private final ResistiveNetwork excitation;

    private Sensitivity(NetworkSolution solution, int a, int b) {
        FactorisedNetwork factorised = solution.factorised();
        adjoint = factorised.solve(factorised.network().probed(a, b));
        adjointCurrents = adjoint.currents();
        currents = solution.currents();
        excitation = solution.excitation();
    }

    /**
     * The sensitivities of the voltage of one node against another.
     *
     * @param solution the solved network
     * @param a first node
     * @param b second node, in the same island
     * @return the derivatives of {@code V(a) - V(b)}
     */
    public static Sensitivity of(NetworkSolution solution, int a, int b) {
        if (!solution.factorised().connected(a, b)) {
            throw new IllegalArgumentException("no voltage is defined between nodes " + a + " and " + b);
        }
        return new Sensitivity(solution, a, b);
    }

    /** {@return the change of the voltage per ohm that an element gets more, in volts per ohm} */
    public double voltsPerOhm(int element) {
        return currents.amps(element) * adjointCurrents.amps(element);
    }

    /** {@return the change of the voltage per volt that a source gets more; a pure number} */
    public double voltsPerVolt(int element) {
        return -adjointCurrents.amps(element);
    }

    /** {@return the change of the voltage per ampere that an injection gets more, in volts per ampere} */
    public double voltsPerAmp(int injection) {
        int from = excitation.injectionFrom(injection);
        int to = excitation.injectionTo(injection);
        boolean flows = adjoint.factorised().connected(from, to);
        return flows ? adjoint.potential(to) - adjoint.potential(from) : 0;
    }
}
