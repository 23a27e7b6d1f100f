package ringout.draw.style;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import ringout.draw.form.BadgeForm;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.paper.Point;
import ringout.draw.scene.BadgeKind;
import ringout.draw.scene.Mark;
import ringout.draw.scene.Presence;
import ringout.draw.scene.WireKind;

/** Lines of the legend that several kinds of sheet have. */
public final class LegendEntries {
    private static final double BADGE_AT = 5;
    private static final double CASING_FROM = 10.5;

    private LegendEntries() {}

    /** {@return a line for each shape of badge that occurs} */
    public static List<LegendEntry> badges(List<Mark> marks) {
        List<LegendEntry> entries = new ArrayList<>();
        Set<BadgeKind> open = EnumSet.noneOf(BadgeKind.class);
        marks.stream().filter(mark -> !mark.waived()).forEach(mark -> open.add(mark.kind()));
        for (BadgeKind kind : open) {
            String text = kind == BadgeKind.CANNOT_TELL ? "?n" : "n";
            String words = kind == BadgeKind.CANNOT_TELL ? "cannot tell" : "severity " + kind.word();
            entries.add(new LegendEntry(
                    words + ", line n of the list", LegendEntry.TALL, p -> badge(p, kind, false, text)));
        }
        if (marks.stream().anyMatch(Mark::waived)) {
            entries.add(
                    new LegendEntry("hatched, W: waived", LegendEntry.TALL, p -> badge(p, BadgeKind.S3, true, "Wn")));
        }
        return entries;
    }

    /** {@return the line for arrows} */
    public static LegendEntry move() {
        return low("belongs where the arrow ends", Presence.FITTED, true);
    }

    /** {@return the line for what is missing} */
    public static LegendEntry missing() {
        return low("missing: ought to be here", Presence.MISSING, false);
    }

    /** {@return the line for what is one too many} */
    public static LegendEntry extra() {
        return low("one too many", Presence.EXTRA, false);
    }

    private static LegendEntry low(String words, Presence presence, boolean arrow) {
        return new LegendEntry(words, LegendEntry.LOW, p -> {
            List<Point> level = List.of(p, p.plus(LegendEntry.SAMPLE, 0));
            return arrow ? MoveInk.arrow(level) : LineInk.draw(level, Lines.of(WireKind.OTHER), presence);
        });
    }

    private static List<Ink> badge(Point p, BadgeKind kind, boolean waived, String text) {
        List<Ink> ink = new ArrayList<>();
        if (kind.hasCasing() && !waived) {
            Pen casing = new Pen(Paint.of(Hatchings.of(kind)), Lines.CASING, List.of(), false);
            List<Point> line = List.of(p.plus(CASING_FROM, 0), p.plus(LegendEntry.SAMPLE, 0));
            ink.add(new Stroke(Tag.of("casing"), line, casing));
            ink.add(new Stroke(Tag.of("line"), line, Pen.solid(Palette.BLACK, Lines.MEDIUM)));
        }
        ink.add(Badges.draw(BadgeForm.of(kind, waived, text), p.plus(BADGE_AT, 0), ""));
        return ink;
    }
}
