package ringout.solve.network;

/** What can be said about a voltage: a number, or that it is not defined. */
public sealed interface NodeVoltage {

    /**
     * A defined voltage.
     *
     * @param value volts against the reference, or between the two nodes asked for
     */
    record Volts(double value) implements NodeVoltage {}

    /**
     * No voltage is defined: the node's island has no reference, or the two nodes asked for are in different islands. A
     * meter there shows what its own leads pick up.
     */
    record Floating() implements NodeVoltage {}
}
