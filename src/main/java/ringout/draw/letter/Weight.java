package ringout.draw.letter;

/** How heavy a letter is drawn. */
public enum Weight {
    /** Ordinary lettering. */
    REGULAR,
    /** Names of units and plugs, and heads of tables. */
    BOLD
}
