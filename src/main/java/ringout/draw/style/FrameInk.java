package ringout.draw.style;

import static ringout.draw.letter.Lettering.MEDIUM;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.paper.SheetSize;
import ringout.draw.paper.ZoneGrid;

/** The frame, and around it the strip with the zone letters and numbers (ISO 5457:1999, from memory). */
final class FrameInk {
    private static final double STRIP = 5;

    private FrameInk() {}

    static Cluster draw(SheetSize size) {
        List<Ink> ink = new ArrayList<>();
        Area frame = size.frame();
        Area outer = frame.grown(STRIP);
        Pen thin = Pen.solid(Palette.BLACK, Lines.MEDIUM);
        ink.add(Patch.rectangle("strip", outer, Paint.clear(), thin));
        ink.add(Patch.rectangle("border", frame, Paint.clear(), Pen.solid(Palette.BLACK, Lines.THICK)));
        ZoneGrid grid = new ZoneGrid(size);
        List<Double> xs = grid.columnEdges();
        for (int i = 0; i < grid.columns(); i++) {
            String name = Integer.toString(i + 1);
            double middle = (xs.get(i) + xs.get(i + 1)) / 2;
            addMark(ink, name, middle, outer.y() + STRIP / 2);
            addMark(ink, name, middle, outer.bottom() - STRIP / 2);
            if (i > 0) {
                addTick(ink, thin, xs.get(i), outer.y(), xs.get(i), frame.y());
                addTick(ink, thin, xs.get(i), frame.bottom(), xs.get(i), outer.bottom());
            }
        }
        List<Double> ys = grid.rowEdges();
        for (int i = 0; i < grid.rows(); i++) {
            double middle = (ys.get(i) + ys.get(i + 1)) / 2;
            addMark(ink, grid.rowName(i), outer.x() + STRIP / 2, middle);
            addMark(ink, grid.rowName(i), outer.right() - STRIP / 2, middle);
            if (i > 0) {
                addTick(ink, thin, outer.x(), ys.get(i), frame.x(), ys.get(i));
                addTick(ink, thin, frame.right(), ys.get(i), outer.right(), ys.get(i));
            }
        }
        return new Cluster(Tag.of("frame"), ink);
    }

    private static void addMark(List<Ink> ink, String name, double x, double y) {
        ink.add(Print.line(name, x, y, Align.MIDDLE, MEDIUM, Weight.REGULAR, Palette.BLACK));
    }

    private static void addTick(List<Ink> ink, Pen pen, double x1, double y1, double x2, double y2) {
        ink.add(new Stroke(Tag.NONE, List.of(new Point(x1, y1), new Point(x2, y2)), pen));
    }
}
