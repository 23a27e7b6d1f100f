package ringout.draw.tree;

/** How thick a return is drawn, by what it carries all day. */
public enum Girth {
    /** A supply: all are drawn alike. */
    SUPPLY(0.7, "supply"),
    /** Size not known. */
    UNKNOWN(0.35, "0V, size not told"),
    /** Up to 5 A. */
    FINE(0.35, "0V, carries up to 5 A"),
    /** Up to 15 A. */
    LIGHT(0.7, "0V, over 5 to 15 A"),
    /** Up to 50 A. */
    STOUT(1.4, "0V, over 15 to 50 A"),
    /** More. */
    HEAVY(2.4, "0V, over 50 A");

    private static final double FINE_A = 5;
    private static final double LIGHT_A = 15;
    private static final double STOUT_A = 50;

    private final double millimetres;
    private final String words;

    Girth(double millimetres, String words) {
        this.millimetres = millimetres;
        this.words = words;
    }

    /** {@return the class of a conductor that carries at least so many A; 0 when that is not known} */
    public static Girth of(double amps) {
        if (amps <= 0) {
            return UNKNOWN;
        }
        if (amps <= FINE_A) {
            return FINE;
        }
        return amps <= LIGHT_A ? LIGHT : amps <= STOUT_A ? STOUT : HEAVY;
    }

    /** {@return width of the line, mm} */
    public double millimetres() {
        return millimetres;
    }

    /** {@return what the legend says} */
    public String words() {
        return words;
    }
}
