package ringout.draw.style;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.Move;

/** The arrow from where a thing is to where it should be. */
public final class MoveInk {
    private static final Pen PEN = Pen.solid(Palette.DEEP_RED, Lines.THICK);
    private static final double HEAD = 3.4;
    private static final double CHEVRON_EVERY = 30;

    private MoveInk() {}

    /** {@return the arrow of a move} */
    public static Ink draw(Move move, List<Point> points) {
        List<Ink> ink = new ArrayList<>(arrow(points));
        Tag tag = Tag.of("move")
                .withId("move", move.id())
                .with("move", move.id())
                .with("from", move.from())
                .with("to", move.to());
        return new Cluster(tag.titled("belongs at " + move.to() + ", is at " + move.from(), ""), ink);
    }

    /** {@return a line with a ring where it starts and heads along it and at its end} */
    public static List<Ink> arrow(List<Point> points) {
        List<Ink> ink = new ArrayList<>();
        Point end = points.get(points.size() - 1);
        Point before = points.get(points.size() - 2);
        double length = before.distance(end);
        double dx = (end.x() - before.x()) / length;
        double dy = (end.y() - before.y()) / length;
        List<Point> shaft = new ArrayList<>(points);
        shaft.set(points.size() - 1, end.plus(-dx * HEAD, -dy * HEAD));
        ink.add(new Stroke(Tag.of("line"), shaft, PEN));
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            for (Point p : LineInk.along(List.of(a, b), CHEVRON_EVERY, HEAD)) {
                double d = a.distance(b);
                ink.add(head(p, (b.x() - a.x()) / d, (b.y() - a.y()) / d));
            }
        }
        ink.add(head(end, dx, dy));
        Point start = points.get(0);
        Area ring = new Area(start.x() - 0.9, start.y() - 0.9, 1.8, 1.8);
        ink.add(Patch.ellipse("", ring, Paint.of(Palette.WHITE), Pen.solid(Palette.DEEP_RED, Lines.STRONG)));
        return ink;
    }

    private static Patch head(Point tip, double dx, double dy) {
        Point base = tip.plus(-dx * HEAD, -dy * HEAD);
        double wing = HEAD * 0.4;
        List<Point> corners = List.of(tip, base.plus(-dy * wing, dx * wing), base.plus(dy * wing, -dx * wing));
        return Patch.polygon("head", corners, Paint.of(Palette.DEEP_RED), Pen.NONE);
    }
}
