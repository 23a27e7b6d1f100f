package ringout.solve;

/**
 * How far a resistance may be from its nominal value when all is well.
 *
 * @param low smallest value as a factor of the nominal one, 0 to 1
 * @param high largest value as a factor of the nominal one, at least 1
 */
public record Tolerance(double low, double high) {
    /** Nothing to vary. */
    public static final Tolerance NONE = new Tolerance(1, 1);

    /** A terminator: resistors of 1 % are usual. Common practice, no source. */
    public static final Tolerance TERMINATOR = percent(1);

    /** A conductor: 10 to 30 degC is 3.9 % of copper, the rest cut length and strands. Common practice, no source. */
    public static final Tolerance CONDUCTOR = percent(10);

    /** A mated contact: nearly nothing when new, twice its figure when worn. Common practice, no source. */
    public static final Tolerance CONTACT = percent(100);

    /** The input of an unpowered bus node between its legs. Common practice, no source. */
    public static final Tolerance NODE_INPUT = percent(30);

    /** A resistor or sense resistor inside a unit. Common practice, no source. */
    public static final Tolerance RESISTOR = percent(5);

    /** A closed switch, a fuse or an internal link. Common practice, no source. */
    public static final Tolerance CLOSED_PART = percent(50);

    /** The same both ways. */
    public static Tolerance percent(double percent) {
        return new Tolerance(1 - percent / 100, 1 + percent / 100);
    }

    /** Half the distance between largest and smallest value, as a factor of the nominal one. */
    public double half() {
        return (high - low) / 2;
    }
}
