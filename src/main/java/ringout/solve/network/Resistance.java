package ringout.solve.network;

/** What an ideal ohmmeter shows between two nodes. */
public sealed interface Resistance {

    /**
     * A conducting path exists.
     *
     * @param value ohms, 0 or more
     */
    record Ohms(double value) implements Resistance {}

    /** No conducting path: the meter shows "open". */
    record Open() implements Resistance {}
}
