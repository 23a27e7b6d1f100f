package ringout.draw.matrix;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.form.BadgeForm;
import ringout.draw.ink.Hatch;
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
import ringout.draw.scene.BadgeKind;
import ringout.draw.style.Badges;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** What stands in a cell. */
final class GlyphInk {
    private GlyphInk() {}

    /** The ink of a glyph in its cell. */
    static List<Ink> draw(Glyph glyph, Area cell) {
        Point middle = cell.centre();
        List<Ink> ink = new ArrayList<>();
        switch (name(glyph)) {
            case "none" -> {}
            case "self" -> {
                Area own = cell.grown(-0.3);
                ink.add(Patch.rectangle("self", own, Paint.of(Palette.LIGHT_GREY), Pen.NONE));
                ink.add(new Stroke(
                        Tag.NONE,
                        List.of(new Point(own.x(), own.y()), new Point(own.right(), own.bottom())),
                        Pen.solid(Palette.BLACK, Lines.THIN)));
            }
            case "dead" ->
                ink.add(Patch.rectangle(
                        "dead", cell.grown(-0.6), Paint.of(Hatch.DIAGONAL), Pen.solid(Palette.BLACK, Lines.MEDIUM)));
            case "same" -> ink.add(Print.small("=", middle.x(), middle.y(), Align.MIDDLE));
            case "no harm" -> ink.add(Print.small("\u2013", middle.x(), middle.y(), Align.MIDDLE));
            case "open" -> ink.addAll(shape(BadgeKind.CANNOT_TELL, "?", middle));
            default -> ink.addAll(shape(((Glyph.Result) glyph).kind(), ((Glyph.Result) glyph).letter(), middle));
        }
        return ink;
    }

    /** One word for a glyph, as facts of the sheet say it. */
    static String name(Glyph glyph) {
        if (glyph instanceof Glyph.None) {
            return "none";
        }
        if (glyph instanceof Glyph.Self) {
            return "self";
        }
        if (glyph instanceof Glyph.Dead) {
            return "dead";
        }
        if (glyph instanceof Glyph.Same) {
            return "same";
        }
        if (glyph instanceof Glyph.NoHarm) {
            return "no harm";
        }
        return glyph instanceof Glyph.Result result ? result.words() : "open";
    }

    /** The shape of a severity with a letter. */
    static List<Ink> shape(BadgeKind kind, String letter, Point middle) {
        double width =
                kind == BadgeKind.S2 || kind == BadgeKind.CANNOT_TELL ? BadgeForm.HEIGHT * 1.2 : BadgeForm.HEIGHT;
        Area area = new Area(middle.x() - width / 2, middle.y() - BadgeForm.HEIGHT / 2, width, BadgeForm.HEIGHT);
        double drop = kind == BadgeKind.S2 ? BadgeForm.HEIGHT / 2 - BadgeForm.TRIANGLE_FOOT - Lettering.SMALL / 2 : 0;
        return List.of(
                Badges.outline(kind, area, Paint.of(Badges.ground(kind)), Pen.solid(Palette.BLACK, Lines.STRONG)),
                Print.line(
                        letter,
                        middle.x(),
                        middle.y() + drop,
                        Align.MIDDLE,
                        Lettering.SMALL,
                        Weight.BOLD,
                        kind == BadgeKind.S1 ? Palette.WHITE : Palette.BLACK));
    }
}
