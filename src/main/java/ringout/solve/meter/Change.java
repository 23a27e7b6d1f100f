package ringout.solve.meter;

/** One change of the elements an ohmmeter meets. */
public sealed interface Change {
    /**
     * An element stops conducting.
     *
     * @param element its number
     */
    record Opened(int element) implements Change {}

    /**
     * An element that is out of the circuit comes into it.
     *
     * @param element its number
     */
    record Closed(int element) implements Change {}

    /**
     * An element goes between other vertices.
     *
     * @param element its number
     * @param a vertex at one side
     * @param b vertex at the other side
     */
    record Moved(int element, int a, int b) implements Change {}

    /**
     * A resistance appears between two vertices: a short, or what a bad contact has too much.
     *
     * @param a vertex at one side
     * @param b vertex at the other side
     * @param ohm its resistance in ohm; 0 is a dead short
     */
    record Added(int a, int b, double ohm) implements Change {}
}
