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

    /**
     * A voltage.
     *
     * @param volts first point against second in V
     * @param least smallest value over all charges of the packs, loads and tolerances of regulators
     * @param most largest value over all of them
     */
    record Volts(double volts, double least, double most) implements Reading {}

    /** No source holds the points against each other: what a meter shows there is no reading. */
    record Floating() implements Reading {}

    /**
     * The loads ask for more than packs and conductors can carry: no voltage can be told.
     *
     * @param limiting what gives way first, as the list names it
     * @param margin the part of all loads together that can be carried, below 1
     */
    record Collapse(String limiting, double margin) implements Reading {}

    /** The computation did not come to rest: no voltage can be told. */
    record Unsettled() implements Reading {}

    /** Whether it is a number. */
    default boolean connected() {
        return this instanceof Ohms || this instanceof Volts;
    }
}
