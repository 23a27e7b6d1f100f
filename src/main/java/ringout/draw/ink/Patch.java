package ringout.draw.ink;

import java.util.List;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;

/**
 * A closed outline, filled or not.
 *
 * @param tag what it stands for
 * @param outline its form
 * @param fill what is inside
 * @param pen how the outline is drawn
 */
public record Patch(Tag tag, Outline outline, Paint fill, Pen pen) implements Ink {
    /** The form of a patch. */
    public sealed interface Outline {}

    /** An upright rectangle. */
    public record Rectangle(Area area) implements Outline {}

    /** A polygon. */
    public record Polygon(List<Point> corners) implements Outline {
        /** Keeps an unmodifiable copy of the corners. */
        public Polygon {
            corners = List.copyOf(corners);
        }
    }

    /** An ellipse within an area. */
    public record Ellipse(Area area) implements Outline {}

    /** {@return a rectangle} */
    public static Patch rectangle(String classes, Area area, Paint fill, Pen pen) {
        return new Patch(Tag.of(classes), new Rectangle(area), fill, pen);
    }

    /** {@return an ellipse} */
    public static Patch ellipse(String classes, Area area, Paint fill, Pen pen) {
        return new Patch(Tag.of(classes), new Ellipse(area), fill, pen);
    }

    /** {@return a polygon} */
    public static Patch polygon(String classes, List<Point> corners, Paint fill, Pen pen) {
        return new Patch(Tag.of(classes), new Polygon(corners), fill, pen);
    }
}
