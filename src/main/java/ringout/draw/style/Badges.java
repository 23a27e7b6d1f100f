package ringout.draw.style;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.form.BadgeForm;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Hatch;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.BadgeKind;

/** Badges. */
public final class Badges {
    private static final double CORNER = 0.29;

    private Badges() {}

    /** {@return a badge about a middle; the target is what it is a badge of, empty in legends and lists} */
    public static Cluster draw(BadgeForm form, Point middle, String target) {
        List<Ink> ink = new ArrayList<>();
        Area area = new Area(
                middle.x() - form.width() / 2, middle.y() - BadgeForm.HEIGHT / 2, form.width(), BadgeForm.HEIGHT);
        Paint fill = form.waived() ? Paint.of(Hatch.WAIVED) : Paint.of(ground(form.kind()));
        ink.add(outline(form.kind(), area, fill, Pen.solid(Palette.BLACK, Lines.STRONG)));
        addText(ink, form, middle);
        String words = words(form) + (target.isEmpty() ? "" : " at " + target);
        Tag tag = Tag.of("badge").with("severity", form.kind().word()).with("number", number(form));
        tag = form.waived() ? tag.with("waived", "yes") : tag;
        tag = target.isEmpty() ? tag : tag.with("target", target);
        return new Cluster(tag.titled(words, ""), ink);
    }

    private static void addText(List<Ink> ink, BadgeForm form, Point middle) {
        double drop =
                form.kind() == BadgeKind.S2 ? BadgeForm.HEIGHT / 2 - BadgeForm.TRIANGLE_FOOT - Lettering.SMALL / 2 : 0;
        boolean light = form.kind() == BadgeKind.S1 && !form.waived();
        var words = Print.line(
                form.text(),
                middle.x(),
                middle.y() + drop,
                Align.MIDDLE,
                Lettering.SMALL,
                Weight.BOLD,
                light ? Palette.WHITE : Palette.BLACK);
        if (form.waived()) {
            Print.addOnGround(ink, words, 0.15);
        } else {
            Print.add(ink, words);
        }
    }

    /** {@return the colour a shape is filled with} */
    public static String ground(BadgeKind kind) {
        return switch (kind) {
            case S1 -> Palette.DEEP_RED;
            case S2 -> Palette.ORANGE;
            case S3 -> Palette.SKY;
            case S4 -> Palette.WHITE;
            case CANNOT_TELL -> Palette.YELLOW;
        };
    }

    /** {@return the shape of a severity in an area} */
    public static Patch outline(BadgeKind kind, Area a, Paint fill, Pen pen) {
        double cx = a.centre().x();
        double cy = a.centre().y();
        double c = a.height() * CORNER;
        return switch (kind) {
            case S1 ->
                Patch.polygon(
                        "shape",
                        List.of(
                                new Point(a.x() + c, a.y()),
                                new Point(a.right() - c, a.y()),
                                new Point(a.right(), a.y() + c),
                                new Point(a.right(), a.bottom() - c),
                                new Point(a.right() - c, a.bottom()),
                                new Point(a.x() + c, a.bottom()),
                                new Point(a.x(), a.bottom() - c),
                                new Point(a.x(), a.y() + c)),
                        fill,
                        pen);
            case S2 ->
                Patch.polygon(
                        "shape",
                        List.of(new Point(cx, a.y()), new Point(a.right(), a.bottom()), new Point(a.x(), a.bottom())),
                        fill,
                        pen);
            case S3 -> Patch.rectangle("shape", new Area(a.x(), a.y() + 0.2, a.width(), a.height() - 0.4), fill, pen);
            case S4 -> Patch.ellipse("shape", a, fill, pen);
            case CANNOT_TELL ->
                Patch.polygon(
                        "shape",
                        List.of(
                                new Point(cx, a.y()),
                                new Point(a.right(), cy),
                                new Point(cx, a.bottom()),
                                new Point(a.x(), cy)),
                        fill,
                        pen);
        };
    }

    private static String words(BadgeForm form) {
        String kind = form.kind() == BadgeKind.CANNOT_TELL
                ? "cannot tell"
                : "severity " + form.kind().word();
        return kind + (form.waived() ? ", waived, " : ", ") + "number " + number(form);
    }

    private static String number(BadgeForm form) {
        return form.text().replaceAll("[W?]", "");
    }
}
