package ringout.draw.style;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.Presence;

/** The line of a wire: its stroke, its core if double, rings if coaxial, crosses if it is one too many. */
public final class LineInk {
    private static final double RING_EVERY = 16;
    private static final double RING = 2;
    private static final double CROSS_EVERY = 14;
    private static final double CROSS = 1.5;
    private static final double PLUS = 1.5;

    private LineInk() {}

    /** {@return the ink of a line} */
    public static List<Ink> draw(List<Point> points, Lines lines, Presence presence) {
        List<Ink> ink = new ArrayList<>();
        Lines used = lines(lines, presence);
        ink.add(new Stroke(Tag.of("line"), points, used.outer()));
        if (used.core().width() > 0) {
            ink.add(new Stroke(Tag.of("core"), points, used.core()));
        }
        if (used.rings()) {
            for (Point p : along(points, RING_EVERY, RING)) {
                Area area = new Area(p.x() - RING / 2, p.y() - RING / 2, RING, RING);
                Pen pen = Pen.solid(Palette.DARK_GREY, Lines.MEDIUM);
                ink.add(Patch.ellipse("ring", area, Paint.of(Palette.WHITE), pen));
            }
        }
        if (presence == Presence.EXTRA || presence == Presence.REMOVED) {
            along(points, CROSS_EVERY, CROSS).forEach(p -> ink.addAll(cross(p, CROSS)));
        }
        if (presence == Presence.ADDED) {
            along(points, CROSS_EVERY, CROSS).forEach(p -> ink.addAll(plus(p)));
        }
        return ink;
    }

    private static Lines lines(Lines lines, Presence presence) {
        return switch (presence) {
            case MISSING, REMOVED -> Lines.ghost();
            case AS_BEFORE -> lines.faint();
            case ADDED -> lines.heavy();
            case FITTED, EXTRA -> lines;
        };
    }

    /** {@return a plus in a ring, the sign of what is new} */
    public static List<Ink> plus(Point p) {
        Pen pen = Pen.solid(Palette.BLACK, Lines.STRONG);
        Area ring = new Area(p.x() - PLUS, p.y() - PLUS, 2 * PLUS, 2 * PLUS);
        double arm = PLUS - 0.5;
        return List.of(
                Patch.ellipse("ring", ring, Paint.of(Palette.WHITE), Pen.solid(Palette.BLACK, Lines.MEDIUM)),
                new Stroke(Tag.of("added"), List.of(p.plus(-arm, 0), p.plus(arm, 0)), pen),
                new Stroke(Tag.of("added"), List.of(p.plus(0, -arm), p.plus(0, arm)), pen));
    }

    /** {@return the two strokes of a cross} */
    public static List<Ink> cross(Point p, double half) {
        Pen pen = Pen.solid(Palette.BLACK, Lines.STRONG);
        return List.of(
                new Stroke(Tag.of("crossed-out"), List.of(p.plus(-half, -half), p.plus(half, half)), pen),
                new Stroke(Tag.of("crossed-out"), List.of(p.plus(-half, half), p.plus(half, -half)), pen));
    }

    /** Places at equal distances along a line, each piece by itself, none nearer to a corner than so much. */
    static List<Point> along(List<Point> points, double every, double clear) {
        List<Point> places = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            double length = a.distance(b);
            int count = (int) Math.floor(length / every);
            count = count == 0 && length > 2 * clear + 4 ? 1 : count;
            for (int k = 0; k < count; k++) {
                double share = (k + 0.5) / count;
                places.add(new Point(a.x() + (b.x() - a.x()) * share, a.y() + (b.y() - a.y()) * share));
            }
        }
        return places;
    }
}
