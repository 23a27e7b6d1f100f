package ringout.sheet.document;

/**
 * A column of a table.
 *
 * @param head what it holds, in trade words
 * @param unit unit of measure of its numbers; empty when it has none
 * @param form how its cells are read or filled in
 * @param leastMm width it needs on paper at least, in mm; 0 when its texts decide
 */
public record Column(String head, String unit, Form form, double leastMm) {
    private static final double TICK_MM = 9;

    /** How the cells of a column are read or filled in. */
    public enum Form {
        /** Printed text. */
        TEXT,
        /** Printed number, flush right. */
        NUMBER,
        /** Left free for a pen; what is printed there is the hint behind it. */
        WRITE_IN,
        /** A box to tick. */
        TICK
    }

    /** {@return a column of texts} */
    public static Column text(String head) {
        return new Column(head, "", Form.TEXT, 0);
    }

    /** {@return a column of numbers with their unit, which may be empty} */
    public static Column number(String head, String unit) {
        return new Column(head, unit, Form.NUMBER, 0);
    }

    /** {@return a column left free for a pen, so many mm wide at least} */
    public static Column writeIn(String head, String unit, double leastMm) {
        return new Column(head, unit, Form.WRITE_IN, leastMm);
    }

    /** {@return a column of boxes to tick} */
    public static Column tick(String head) {
        return new Column(head, "", Form.TICK, TICK_MM);
    }

    /** {@return the head with its unit, as a spreadsheet names it: {@code length [mm]}} */
    public String headWithUnit() {
        return unit.isEmpty() ? head : head + " [" + unit + "]";
    }
}
