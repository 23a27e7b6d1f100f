package ringout.draw.style;

/** The colours of a sheet, as {@code #rrggbb}. */
public final class Palette {
    /** Lettering and outlines. */
    public static final String BLACK = "#000000";

    /** Paper. */
    public static final String WHITE = "#ffffff";

    /** Lettering of lesser weight; 7:1 on white. */
    public static final String DARK_GREY = "#595959";

    /** Lines of what is unchanged; 4.5:1 on white, and dark enough not to vanish from a copy in black and white. */
    public static final String FAINT = "#767676";

    /** Heads of plugs and tables. */
    public static final String LIGHT_GREY = "#e6e6e6";

    /** Title bars of units. */
    public static final String PALE = "#f4f4f4";

    /** Buses and other data; Okabe and Ito's blue, 5:1 on white. */
    public static final String BLUE = "#0072b2";

    /** Supplies; Okabe and Ito's vermilion, darkened to 4.7:1 on white. */
    public static final String VERMILION = "#c04a00";

    /** Ground of severity 1; 7:1 under white lettering. */
    public static final String DEEP_RED = "#9c2f00";

    /** Ground of severity 2; Okabe and Ito's orange. */
    public static final String ORANGE = "#e69f00";

    /** Ground of severity 3; Okabe and Ito's sky blue, lightened. */
    public static final String SKY = "#9bd3f5";

    /** Ground of the undecided; Okabe and Ito's yellow. */
    public static final String YELLOW = "#f0e442";

    private Palette() {}
}
