package ringout.trace.candidate;

/** What makes a fault at a place likelier than elsewhere. */
public enum Circumstance {
    /** The conductor flexes or passes a hinge. */
    FLEX("at a flex or hinge"),
    /** The contact was crimped by hand: the lead was made here and not delivered. */
    HAND_CRIMP("hand-made crimp"),
    /** The row, plug or unit was made, repaired or touched since all was last good. */
    TOUCHED("touched since last good"),
    /** It lies in a zone that sees spray or rain. */
    WET("wet"),
    /** The plug was mated more often than such plugs stand. */
    MANY_MATINGS("over 200 matings"),
    /** The conductor passes an edge, a hole or carbon without a guard. */
    CHAFE("at an edge or carbon"),
    /** After a crash or hard landing. */
    CRASH("after a crash"),
    /** After an update of firmware or settings. */
    UPDATE("after an update");

    private final String words;

    Circumstance(String words) {
        this.words = words;
    }

    /** In the trade's words; also the key of its column in the table of priors. */
    public String words() {
        return words;
    }
}
