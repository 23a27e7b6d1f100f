package ringout.draw.map;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.map.MapScene.Turn;
import ringout.draw.paper.Point;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;

/** The arrow around a disc: its head tells which way the rotor turns. */
final class Rounds {
    /** How far the arrow reaches beyond its disc, mm. */
    static final double REACH = 4.4;

    private static final double GAP = 2.2;
    private static final double HEAD = 5;
    private static final double WING = 2.1;
    private static final int FROM = 215;
    private static final int SWEEP = 110;
    private static final int STEP = 10;
    private static final int FLAT = 15;

    private Rounds() {}

    /** The arrow above a disc of a middle and a radius, from left to right for clockwise. */
    static List<Ink> draw(Point middle, double radius, Turn turn) {
        double round = radius + GAP;
        List<Point> arc = new ArrayList<>();
        for (int angle = 0; angle <= SWEEP; angle += STEP) {
            arc.add(at(middle, round, turn == Turn.CW ? FROM + angle : FROM + SWEEP - angle));
        }
        return arrow(arc, turn == Turn.CW ? FROM + SWEEP : FROM, turn);
    }

    /** An arc with a head that goes on where it ends, at an angle. */
    private static List<Ink> arrow(List<Point> arc, int end, Turn turn) {
        Point tip = arc.get(arc.size() - 1);
        double out = Math.toRadians(end);
        double sign = turn == Turn.CW ? 1 : -1;
        double dx = -Math.sin(out) * sign;
        double dy = Math.cos(out) * sign;
        Point nose = tip.plus(dx * HEAD, dy * HEAD);
        List<Point> head = List.of(nose, tip.plus(-dy * WING, dx * WING), tip.plus(dy * WING, -dx * WING));
        return List.of(
                new Stroke(Tag.of("turn"), arc, Pen.solid(Palette.BLACK, Lines.THICK)),
                Patch.polygon("head", head, Paint.of(Palette.BLACK), Pen.NONE));
    }

    /** The same arrow flat, within a line of the legend that begins at a point. */
    static List<Ink> sample(Point from, Turn turn) {
        double round = 16;
        Point middle = from.plus(10, round - 1.4);
        List<Point> arc = new ArrayList<>();
        for (int angle = -FLAT; angle <= FLAT; angle += FLAT / 3) {
            arc.add(at(middle, round, 270 + (turn == Turn.CW ? angle : -angle)));
        }
        return arrow(arc, 270 + (turn == Turn.CW ? FLAT : -FLAT), turn);
    }

    private static Point at(Point middle, double radius, int degrees) {
        double angle = Math.toRadians(degrees);
        return middle.plus(radius * Math.cos(angle), radius * Math.sin(angle));
    }
}
