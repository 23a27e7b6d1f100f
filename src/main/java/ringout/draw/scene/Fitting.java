package ringout.draw.scene;

/**
 * A thing fitted at a plug that is not a pin, drawn as a line of the plug with a symbol.
 *
 * @param id identifier, such as {@code GMC-C1-R}
 * @param symbol what is drawn in the cell
 * @param text what is printed beside it, such as {@code 120 ohm on}
 * @param presence whether it is there
 */
public record Fitting(String id, Symbol symbol, String text, Presence presence) implements Row {
    /** What a fitting looks like. */
    public enum Symbol {
        /** A terminator that is on: solid resistor. */
        TERMINATOR_ON,
        /** A terminator that is off: hollow resistor. */
        TERMINATOR_OFF,
        /** A fuse: rectangle with the line through it (IEC 60617, from memory). */
        FUSE,
        /** A label or tag. */
        LABEL
    }

    /** A fitting that is there. */
    public Fitting(String id, Symbol symbol, String text) {
        this(id, symbol, text, Presence.FITTED);
    }
}
