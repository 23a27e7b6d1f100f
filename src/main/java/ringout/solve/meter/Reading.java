package ringout.solve.meter;

/** What a meter shows between two points. */
public sealed interface Reading {
    /**
     * A resistance.
     *
     * @param ohm at nominal values, 20 degC, meter leads zeroed
     * @param least smallest value when everything is within its tolerance: worst case, exact
     * @param most largest value when everything is within its tolerance: worst case, exact
     */
    record Ohms(double ohm, double least, double most) implements Reading {}

    /** Nothing conducts between the points: the meter shows over range. */
    record NoConnection() implements Reading {}

    /** Whether the points are connected. */
    default boolean connected() {
        return !(this instanceof NoConnection);
    }
}
