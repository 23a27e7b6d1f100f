package ringout.draw.ink;

import java.util.List;
import ringout.draw.paper.Point;

/**
 * An open line.
 *
 * @param tag what it stands for
 * @param points its corners
 * @param pen how it is drawn
 */
public record Stroke(Tag tag, List<Point> points, Pen pen) implements Ink {
    /** Keeps an unmodifiable copy of the points. */
    public Stroke {
        points = List.copyOf(points);
    }
}
