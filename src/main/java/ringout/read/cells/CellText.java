package ringout.read.cells;

/**
 * One cell as text.
 *
 * @param text what the owner reads in it, a formula's value and not the formula; empty for an empty cell
 * @param kind how the spreadsheet holds it
 */
public record CellText(String text, Kind kind) {
    /** An empty cell. */
    public static final CellText EMPTY = new CellText("", Kind.TEXT);

    /** How a spreadsheet holds a cell. */
    public enum Kind {
        /** As it was typed. */
        TEXT,
        /** As a number, so that its decimal mark is no question. */
        NUMBER,
        /** As a day, typed as one or taken for one: 1-2 becomes the first of February. */
        DAY,
        /** As a number with more digits than a spreadsheet keeps (15): the last ones are lost. */
        CUT,
        /** A formula that has no value, or whose value is an error. */
        NO_VALUE
    }

    /** A cell with text. */
    public static CellText of(String text) {
        return text.isEmpty() ? EMPTY : new CellText(text, Kind.TEXT);
    }
}
