package ringout.draw.paper;

/**
 * A point on the sheet.
 *
 * @param x mm to the right of the left edge
 * @param y mm below the upper edge
 */
public record Point(double x, double y) {
    /** {@return this point moved to the right and down} */
    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    /** {@return the straight distance to another point, mm} */
    public double distance(Point other) {
        return Math.hypot(x - other.x, y - other.y);
    }
}
