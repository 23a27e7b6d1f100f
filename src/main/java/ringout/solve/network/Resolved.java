package ringout.solve.network;

import ringout.solve.network.NodeVoltage.Floating;
import ringout.solve.network.NodeVoltage.Volts;

/** A solved network after a few changes. */
public sealed interface Resolved permits ResolvedLocally, ResolvedAnew {

    /** How the answer was found. */
    enum Method {
        /** Rank-one compensation of the unchanged factor. */
        COMPENSATION,
        /** The columns the changes reach were factorised again. */
        PARTIAL_REFACTORISATION,
        /** The changed network was factorised and solved from the start. */
        FRESH
    }

    /** {@return the voltage of a node against the reference of its island} */
    NodeVoltage voltage(int node);

    /** {@return the voltage of the first node against the second} */
    NodeVoltage between(int a, int b);

    /** {@return whether conducting elements still join two nodes} */
    default boolean connected(int a, int b) {
        return between(a, b) instanceof Volts;
    }

    /** {@return whether an injected current still has a return and flows} */
    boolean flows(int injection);

    /**
     * The current of an element after the changes.
     *
     * @param element number of an element that has more than 0 Ω after the changes
     * @return amperes, positive from the element's first node to its second
     */
    double amps(int element);

    /** {@return how the answer was found} */
    Method method();

    /** {@return the nodes' points that were looked at, a measure of how far the changes reach} */
    int touched();

    /** {@return current through a resistance with a source voltage between two nodes; 0 if it is open} */
    static double amps(NodeVoltage across, double emf, double ohms) {
        if (Double.isInfinite(ohms)) {
            return 0;
        }
        if (ohms == 0) {
            throw new IllegalArgumentException("the current of a 0 ohm element needs all currents of its point");
        }
        if (across instanceof Volts v) {
            return (v.value() + emf) / ohms;
        }
        if (across instanceof Floating) {
            throw new IllegalStateException("a conducting element joins its ends");
        }
        throw new IllegalStateException("unknown kind of voltage");
    }
}
