package ringout.solve;

import ringout.graph.Part;
import ringout.graph.Wire;

/**
 * One resistance between two vertices of the typed graph, as an ohmmeter meets it with the power off.
 *
 * @param a vertex at one side
 * @param b vertex at the other side
 * @param ohm resistance in ohm at 20 degC; infinite for a part that does not conduct with the power off
 * @param live whether it is in the circuit: mated, closed, on
 * @param piece what it is
 * @param tolerance how far it may be from nominal
 */
public record MeterElement(int a, int b, double ohm, boolean live, Piece piece, Tolerance tolerance) {
    /** What an element is. */
    public sealed interface Piece {}

    /**
     * A conductor.
     *
     * @param wire the conductor
     */
    public record OfWire(Wire wire) implements Piece {}

    /**
     * A contact of a conductor.
     *
     * @param wire the conductor
     * @param pin vertex of the pin it is mated with
     */
    public record OfContact(Wire wire, int pin) implements Piece {}

    /**
     * A join inside a unit.
     *
     * @param pin vertex of the pin that is joined to a point inside
     */
    public record OfJoin(int pin) implements Piece {}

    /**
     * A two-terminal part: terminator, fuse, switch, link, resistor.
     *
     * @param part the part
     */
    public record OfPart(Part part) implements Piece {}

    /**
     * The input of a bus node between its legs.
     *
     * @param unit number of the unit
     * @param port name of its bus port
     */
    public record OfInput(int unit, String port) implements Piece {}

    /** The vertex at the other side. */
    public int other(int vertex) {
        return vertex == a ? b : a;
    }

    /** The same element between other vertices, live. */
    public MeterElement between(int newA, int newB) {
        return new MeterElement(newA, newB, ohm, true, piece, tolerance);
    }

    /** The same element in or out of the circuit. */
    public MeterElement live(boolean now) {
        return new MeterElement(a, b, ohm, now, piece, tolerance);
    }
}
