package ringout.draw.paper;

/**
 * An upright rectangle on the sheet.
 *
 * @param x left edge, mm
 * @param y upper edge, mm
 * @param width mm
 * @param height mm
 */
public record Area(double x, double y, double width, double height) {
    /** {@return the rectangle around two opposite corners} */
    public static Area between(double x1, double y1, double x2, double y2) {
        return new Area(Math.min(x1, x2), Math.min(y1, y2), Math.abs(x2 - x1), Math.abs(y2 - y1));
    }

    /** {@return the right edge, mm} */
    public double right() {
        return x + width;
    }

    /** {@return the lower edge, mm} */
    public double bottom() {
        return y + height;
    }

    /** {@return the middle} */
    public Point centre() {
        return new Point(x + width / 2, y + height / 2);
    }

    /** {@return this rectangle with every edge moved outwards by so many mm (inwards if negative)} */
    public Area grown(double by) {
        return new Area(x - by, y - by, width + 2 * by, height + 2 * by);
    }

    /** {@return whether the point lies inside or on the edge} */
    public boolean contains(Point point) {
        return point.x() >= x && point.x() <= right() && point.y() >= y && point.y() <= bottom();
    }

    /** {@return whether the other rectangle lies wholly inside or on the edge} */
    public boolean contains(Area other) {
        return other.x >= x && other.right() <= right() && other.y >= y && other.bottom() <= bottom();
    }

    /** {@return whether the insides have a point in common; touching edges do not count} */
    public boolean overlaps(Area other) {
        return other.x < right() && x < other.right() && other.y < bottom() && y < other.bottom();
    }
}
