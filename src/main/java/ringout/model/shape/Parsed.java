package ringout.model.shape;

/** The outcome of reading one value from text. */
public sealed interface Parsed {
    /**
     * A value.
     *
     * @param value the value
     */
    record Good(Object value) implements Parsed {}

    /**
     * Not a value of this kind.
     *
     * @param why what is wrong with it
     * @param hint nearest match or what is accepted, may be empty
     */
    record Bad(String why, String hint) implements Parsed {}
}
