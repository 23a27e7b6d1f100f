package ringout.draw.lead;

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
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.Fitting;
import ringout.draw.scene.Presence;
import ringout.draw.style.FittingInk;
import ringout.draw.style.LineInk;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/**
 * The line of a lead with its measure: from the datum at the left end of the from plug to the right end of the to plug is
 * the stated length at the stated scale.
 */
final class LeadLine {
    /** Length of a plug on the line, mm. */
    static final double PLUG = 6;

    private static final double MEASURE = 3.2;
    private static final double LEVEL = 10.5;
    private static final double FOOT = 4.2;
    private static final double NUMBERED = 4.2;
    private static final double HALF_PLUG = 2.6;
    private static final double HALF_FLAG = 2.2;
    private static final double WIDEST_LABEL = 24;
    private static final double TICK_APART = 5;

    private final LeadCard card;
    private final LeadScale scale;

    LeadLine(LeadCard card) {
        this.card = card;
        this.scale = card.scale();
    }

    /** {@return the name of the end of a lead's line} */
    static String end(String lead, LeadEnd end) {
        return lead + " at " + end.plug();
    }

    private String measure() {
        return Lettering.printable(card.lengthWords()) + ", " + scale.words();
    }

    private static String label(LeadEnd end) {
        return Lettering.fit(Lettering.printable(end.label()), Lettering.SMALL, Weight.REGULAR, WIDEST_LABEL);
    }

    private static double width(String text) {
        return Lettering.width(text, Lettering.SMALL, Weight.REGULAR);
    }

    private String passedWords(int i) {
        Passed passed = card.passed().get(i);
        String far = passed.atMm().isPresent()
                ? ", about " + Math.round(passed.atMm().getAsDouble()) + " mm"
                : ", place not told";
        return (i + 1) + " " + Lettering.printable(passed.words()) + far;
    }

    double leastWidth() {
        double wide = width(measure());
        for (int i = 0; i < card.passed().size(); i++) {
            wide = Math.max(wide, Math.min(120, width(passedWords(i))));
        }
        return Math.max(wide, scale.drawnMm());
    }

    double height() {
        int n = card.passed().size();
        return LEVEL + FOOT + (n == 0 ? 0 : FOOT + n * NUMBERED);
    }

    List<Ink> draw(Point corner) {
        List<Ink> ink = new ArrayList<>();
        double y = corner.y() + LEVEL;
        double left = corner.x();
        double right = left + scale.drawnMm();
        addMeasure(ink, left, right, corner.y() + MEASURE, y);
        addCover(ink, left + PLUG + 2, right - PLUG - 2, y);
        ink.add(wire(left, right, y));
        ink.add(plug(card.from(), new Area(left, y - HALF_PLUG, PLUG, 2 * HALF_PLUG)));
        ink.add(plug(card.to(), new Area(right - PLUG, y - HALF_PLUG, PLUG, 2 * HALF_PLUG)));
        addFlag(ink, card.from(), left + PLUG + 3.4, y, true);
        addFlag(ink, card.to(), right - PLUG - 3.4, y, false);
        addFuse(ink, left, right, y);
        if (!scale.toScale()) {
            addBreak(ink, (left + right) / 2, y);
        }
        addPassed(ink, corner, left, y);
        return ink;
    }

    /** The measure, ending at the datum and at the far plug; the datum is the filled triangle. */
    private void addMeasure(List<Ink> ink, double left, double right, double y, double line) {
        Pen thin = Pen.solid(Palette.BLACK, Lines.THIN);
        List<Ink> parts = new ArrayList<>();
        parts.add(new Stroke(Tag.of("measure"), List.of(new Point(left, y), new Point(right, y)), thin));
        for (double x : List.of(left, right)) {
            List<Point> plumb = List.of(new Point(x, y - 1.5), new Point(x, line - HALF_PLUG));
            parts.add(new Stroke(Tag.of("extension"), plumb, thin));
        }
        List<Point> datum = List.of(new Point(left, y), new Point(left + 2.4, y - 1.2), new Point(left + 2.4, y + 1.2));
        parts.add(Patch.polygon("datum", datum, Paint.of(Palette.BLACK), Pen.NONE));
        List<Point> slash = List.of(new Point(right - 1, y + 1), new Point(right + 1, y - 1));
        parts.add(new Stroke(Tag.of("end"), slash, Pen.solid(Palette.BLACK, Lines.STRONG)));
        boolean inside = width(measure()) + 8 < right - left;
        double x = inside ? (left + right) / 2 : right + 2;
        Print.addInGap(parts, Print.small(measure(), inside ? x : left + 4, y, inside ? Align.MIDDLE : Align.START));
        Tag tag = Tag.of("dimension").with("of", card.id());
        ink.add(new Cluster(tag, parts));
    }

    private void addCover(List<Ink> ink, double left, double right, double y) {
        if (!card.cover().sleeve().isEmpty()) {
            Area area = Area.between(left, y - 1.7, right, y + 1.7);
            Tag tag = Tag.of("sleeve").with("sleeve", card.cover().sleeve());
            ink.add(new Patch(
                    tag,
                    new Patch.Rectangle(area),
                    Paint.of(Palette.LIGHT_GREY),
                    Pen.solid(Palette.DARK_GREY, Lines.THIN)));
        }
        if (card.cover().shield()) {
            Area area = Area.between(left, y - 2.5, right, y + 2.5);
            ink.add(new Patch(
                    Tag.of("shield"),
                    new Patch.Rectangle(area),
                    Paint.clear(),
                    Pen.dashed(Palette.BLACK, Lines.MEDIUM, 2.0, 1.2)));
        }
    }

    private Ink wire(double left, double right, double y) {
        List<Point> points = List.of(new Point(left + PLUG, y), new Point(right - PLUG, y));
        Tag tag = Tag.of("wire")
                .withId("wire", card.id())
                .with("wire", card.id())
                .with("from", end(card.id(), card.from()))
                .with("to", end(card.id(), card.to()));
        String words = "lead " + card.name() + ", " + card.from().plug() + " to "
                + card.to().plug();
        return new Cluster(tag.titled(words, ""), LineInk.draw(points, Lines.of(card.kind()), Presence.FITTED));
    }

    private Ink plug(LeadEnd end, Area area) {
        String name = end(card.id(), end);
        Tag tag = Tag.of("pin").withId("end", name).with("pin", name).with("plug", end.plug());
        Patch body = Patch.rectangle("cell", area, Paint.of(Palette.WHITE), Pen.solid(Palette.BLACK, Lines.STRONG));
        return new Cluster(tag.titled("plug " + end.plug() + " of lead " + card.name(), ""), List.of(body));
    }

    /** The label as a flag around the line; dashed and empty when none is told. */
    private void addFlag(List<Ink> ink, LeadEnd end, double x, double y, boolean rightwards) {
        String text = label(end);
        double wide = Math.max(5, width(text) + 2);
        double from = rightwards ? x : x - wide;
        Area area = new Area(from, y - HALF_FLAG, wide, 2 * HALF_FLAG);
        Pen pen = text.isEmpty()
                ? Pen.dashed(Palette.BLACK, Lines.MEDIUM, 1.0, 0.8)
                : Pen.solid(Palette.BLACK, Lines.MEDIUM);
        List<Ink> parts = new ArrayList<>();
        parts.add(Patch.rectangle("flag", area, Paint.of(Palette.WHITE), pen));
        Print.add(parts, Print.small(text, area.centre().x(), y, Align.MIDDLE));
        Tag tag = Tag.of("label").with("wire", card.id()).with("end", end.plug());
        ink.add(new Cluster(tag, parts));
    }

    private void addFuse(List<Ink> ink, double left, double right, double y) {
        card.fuse().ifPresent(fuse -> {
            double x = fuse.atStart() ? left + (right - left) / 2 - 4 : left + (right - left) / 2 + 4;
            double near = PLUG + WIDEST_LABEL + 9;
            if (right - left > 2 * near) {
                x = fuse.atStart() ? left + near : right - near;
            }
            List<Ink> parts = new ArrayList<>(
                    FittingInk.draw(new Fitting("", Fitting.Symbol.FUSE, "", Presence.FITTED), new Point(x, y)));
            ink.add(new Cluster(Tag.of("fuse").with("on", card.id()).with("rating", fuse.rating()), parts));
        });
    }

    /** Two short slanting strokes: the line is not as long as it looks. */
    private static void addBreak(List<Ink> ink, double x, double y) {
        Area gap = new Area(x - 0.9, y - 2.2, 1.8, 4.4);
        ink.add(Patch.rectangle("halo", gap, Paint.of(Palette.WHITE), Pen.NONE));
        Pen pen = Pen.solid(Palette.BLACK, Lines.MEDIUM);
        for (double dx : List.of(-0.9, 0.9)) {
            List<Point> slant = List.of(new Point(x + dx - 0.6, y + 2.2), new Point(x + dx + 0.6, y - 2.2));
            ink.add(new Stroke(Tag.of("break"), slant, pen));
        }
    }

    /** Numbered ticks on the line, and the list of what they are below. */
    private void addPassed(List<Ink> ink, Point corner, double left, double y) {
        double last = -TICK_APART;
        double perMm = card.lengthMm().isPresent() && scale.toScale()
                ? scale.drawnMm() / card.lengthMm().getAsDouble()
                : 0;
        Pen pen = Pen.solid(Palette.BLACK, Lines.MEDIUM);
        for (int i = 0; i < card.passed().size(); i++) {
            Passed passed = card.passed().get(i);
            double list = corner.y() + LEVEL + FOOT + FOOT + NUMBERED * (i + 0.5);
            List<Ink> parts = new ArrayList<>();
            if (passed.atMm().isPresent() && perMm > 0) {
                double along = Math.min(scale.drawnMm() - 1, passed.atMm().getAsDouble() * perMm);
                double at = Math.max(along, last + TICK_APART);
                last = at;
                List<Point> tick = List.of(
                        new Point(left + along, y + 2.8), new Point(left + along, y + 4), new Point(left + at, y + 5));
                parts.add(new Stroke(Tag.of("tick"), tick, pen));
                Print.add(parts, Print.bold(Integer.toString(i + 1), left + at, y + 7, Align.MIDDLE));
            }
            String words = Lettering.fit(passedWords(i), Lettering.SMALL, Weight.REGULAR, leastWidth());
            Print.add(parts, Print.small(words, left, list, Align.START));
            ink.add(new Cluster(Tag.of("passed").with("number", Integer.toString(i + 1)), parts));
        }
    }
}
