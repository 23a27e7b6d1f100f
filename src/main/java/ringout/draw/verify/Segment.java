package ringout.draw.verify;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.verify.Seen.Way;

/** A straight piece of a wire. */
record Segment(Way way, Point a, Point b) {
    private static final double LEVEL = 0.01;

    static List<Segment> of(List<Way> ways) {
        List<Segment> all = new ArrayList<>();
        for (Way way : ways) {
            for (int i = 1; i < way.points().size(); i++) {
                Segment piece =
                        new Segment(way, way.points().get(i - 1), way.points().get(i));
                if (piece.length() > LEVEL) {
                    all.add(piece);
                }
            }
        }
        return all;
    }

    double length() {
        return a.distance(b);
    }

    boolean level() {
        return Math.abs(a.y() - b.y()) < LEVEL;
    }

    boolean plumb() {
        return Math.abs(a.x() - b.x()) < LEVEL;
    }

    Area area() {
        return Area.between(a.x(), a.y(), b.x(), b.y());
    }

    Area ink() {
        return area().grown(way.width() / 2);
    }

    double distance(Point p) {
        Area area = area();
        double dx = Math.max(0, Math.max(area.x() - p.x(), p.x() - area.right()));
        double dy = Math.max(0, Math.max(area.y() - p.y(), p.y() - area.bottom()));
        return Math.hypot(dx, dy);
    }

    /** Whether both cross, each within its own length. */
    boolean crosses(Segment other) {
        if (level() == other.level()) {
            return false;
        }
        Segment h = level() ? this : other;
        Segment v = level() ? other : this;
        Area across = h.area();
        Area down = v.area();
        return down.x() > across.x() + LEVEL
                && down.x() < across.right() - LEVEL
                && across.y() > down.y() + LEVEL
                && across.y() < down.bottom() - LEVEL;
    }

    /** The length for which two pieces of one direction run beside each other; 0 or less if they do not. */
    double beside(Segment other) {
        if (level() != other.level()) {
            return 0;
        }
        Area p = area();
        Area q = other.area();
        return level()
                ? Math.min(p.right(), q.right()) - Math.max(p.x(), q.x())
                : Math.min(p.bottom(), q.bottom()) - Math.max(p.y(), q.y());
    }

    /** The distance between the lines of two pieces of one direction. */
    double apart(Segment other) {
        return level() ? Math.abs(a.y() - other.a.y()) : Math.abs(a.x() - other.a.x());
    }
}
