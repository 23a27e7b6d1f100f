package ringout.draw.wiring;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.BadgeKind;
import ringout.draw.scene.Mark;
import ringout.draw.style.Hatchings;
import ringout.draw.style.Lines;

/** Thick hatched casings around what a severe, unwaived finding names; of several findings the most severe counts. */
final class Casings {
    private final Map<String, BadgeKind> worst = new HashMap<>();

    Casings(List<Mark> marks) {
        for (Mark mark : marks) {
            if (!mark.waived() && mark.kind().hasCasing()) {
                for (String target : mark.targets()) {
                    worst.merge(target, mark.kind(), (a, b) -> a.compareTo(b) <= 0 ? a : b);
                }
            }
        }
    }

    /** {@return the casing below a wire, if it has one} */
    Optional<Ink> along(String id, List<Point> points) {
        return Optional.ofNullable(worst.get(id)).map(kind -> new Stroke(tag(id, kind), points, pen(kind)));
    }

    /** {@return the casing around a box, plug or row, if it has one} */
    Optional<Ink> around(String id, Area area) {
        return Optional.ofNullable(worst.get(id))
                .map(kind -> new Patch(
                        tag(id, kind), new Patch.Rectangle(area.grown(Lines.BAND / 2)), Paint.clear(), band(kind)));
    }

    /** {@return the band along some edges of a plug} */
    Optional<Ink> band(String id, List<Point> points) {
        return Optional.ofNullable(worst.get(id)).map(kind -> new Stroke(tag(id, kind), points, band(kind)));
    }

    /** {@return the hatched ground of a row, if it has one} */
    Optional<Ink> below(String id, Area area) {
        return Optional.ofNullable(worst.get(id))
                .map(kind ->
                        new Patch(tag(id, kind), new Patch.Rectangle(area), Paint.of(Hatchings.of(kind)), Pen.NONE));
    }

    private static Tag tag(String id, BadgeKind kind) {
        return Tag.of("casing").with("severity", kind.word()).with("target", id);
    }

    private static Pen band(BadgeKind kind) {
        return new Pen(Paint.of(Hatchings.of(kind)), Lines.BAND, List.of(), false);
    }

    private static Pen pen(BadgeKind kind) {
        return new Pen(Paint.of(Hatchings.of(kind)), Lines.CASING, List.of(), false);
    }
}
