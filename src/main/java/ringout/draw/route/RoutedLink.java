package ringout.draw.route;

import java.util.List;
import ringout.draw.form.Link;
import ringout.draw.paper.Point;

/**
 * The way of a wire or move.
 *
 * @param link the wire or move
 * @param points from its first end to its last; level and plumb pieces in turn
 */
public record RoutedLink(Link link, List<Point> points) {
    /** Keeps an unmodifiable copy of the points. */
    public RoutedLink {
        points = List.copyOf(points);
    }

    /** {@return its length on paper, mm} */
    public double length() {
        double length = 0;
        for (int i = 1; i < points.size(); i++) {
            length += points.get(i).distance(points.get(i - 1));
        }
        return length;
    }

    /** {@return how often it turns} */
    public int bends() {
        return Math.max(0, points.size() - 2);
    }
}
