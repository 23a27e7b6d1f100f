package ringout.finding;

/** What a drawing shows of a finding beside its badge: what is missing, what is too much, what is in the wrong place. */
public sealed interface Sketch {
    /** Kinds of things that may be missing or misplaced. */
    enum What {
        /** A conductor between two pins. */
        WIRE,
        /** A terminator at a unit. */
        TERMINATOR
    }

    /**
     * Something that ought to be there: drawn as a ghost.
     *
     * @param what the kind of thing
     * @param from unit, plug or pin where it ought to be
     * @param to the other end of a conductor; equal to {@code from} for a terminator
     */
    record Missing(What what, String from, String to) implements Sketch {}

    /**
     * Something that ought not to be there: crossed out.
     *
     * @param what the kind of thing
     * @param at lead, or unit with a terminator
     */
    record Extra(What what, String at) implements Sketch {}

    /**
     * Something in the wrong place: an arrow from where it is to where it should be.
     *
     * @param what the kind of thing
     * @param from where it is
     * @param to where it should be
     */
    record Misplaced(What what, String from, String to) implements Sketch {}
}
