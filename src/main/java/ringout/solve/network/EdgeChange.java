package ringout.solve.network;

/** One change of a network that is already solved. */
public sealed interface EdgeChange {

    /**
     * An element stops conducting: a wire broken, a plug pulled, a fuse blown, a pack lost.
     *
     * @param element number of the element
     */
    record Opened(int element) implements EdgeChange {}

    /**
     * An element gets another resistance.
     *
     * @param element number of the element
     * @param ohms new resistance, above 0 for a source, up to infinity
     */
    record Changed(int element, double ohms) implements EdgeChange {}

    /**
     * A resistance appears between two nodes: a short, a bridge, a meter's own input.
     *
     * @param a first node
     * @param b second node; current is positive from the first to the second
     * @param ohms resistance; 0 is a dead short
     */
    record Added(int a, int b, double ohms) implements EdgeChange {}
}
