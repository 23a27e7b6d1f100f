package ringout.draw.verify;

import java.util.List;
import ringout.draw.letter.Lettering;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.verify.Flaw.Kind;
import ringout.draw.verify.Seen.Group;
import ringout.draw.verify.Seen.Line;
import ringout.draw.verify.Seen.Patch;
import ringout.draw.verify.Seen.Text;
import ringout.draw.verify.Seen.Way;

/** Texts against texts, wires, outlines and the ink above them. */
final class TextChecks {
    /** Class of what must be read at arm's length. */
    private static final String ARMS_LENGTH = "arms-length";

    private static final double SLACK = 0.05;
    private static final double SQUEEZE = 0.01;

    private final Seen seen;
    private final List<Flaw> flaws;
    private final List<Segment> pieces;

    TextChecks(Seen seen, List<Flaw> flaws) {
        this.seen = seen;
        this.flaws = flaws;
        this.pieces = Segment.of(seen.ways());
    }

    void run() {
        for (int i = 0; i < seen.texts.size(); i++) {
            Text text = seen.texts.get(i);
            checkSize(text);
            checkWires(text);
            checkEdges(text);
            checkCovers(text);
            for (int j = i + 1; j < seen.texts.size(); j++) {
                Text other = seen.texts.get(j);
                if (core(text).overlaps(core(other))) {
                    flaw(Kind.TEXT_ON_TEXT, "\"" + text.words() + "\" and \"" + other.words() + "\" overlap", text);
                }
            }
        }
        checkBadges();
    }

    private static Area core(Text text) {
        return text.area().grown(-SLACK);
    }

    private void flaw(Kind kind, String words, Text text) {
        flaws.add(new Flaw(kind, words, text.area().centre()));
    }

    private void checkSize(Text text) {
        boolean far = text.group().within(ARMS_LENGTH).isPresent()
                && text.group().within("badge").isEmpty();
        double least = far ? Lettering.LARGE : Lettering.SMALL;
        if (text.cap() < least - 0.005) {
            flaw(Kind.TEXT_TOO_SMALL, "\"" + text.words() + "\" is lower than " + least + " mm", text);
        }
        if (Math.abs(text.squeeze() - 1) > SQUEEZE) {
            flaw(Kind.TEXT_SQUEEZED, "\"" + text.words() + "\" is squeezed or stretched", text);
        }
    }

    private void checkWires(Text text) {
        for (Segment piece : pieces) {
            if (piece.ink().overlaps(core(text)) && !(belongs(text, piece.way()) && hasGround(text))) {
                flaw(
                        Kind.TEXT_ON_WIRE,
                        "\"" + text.words() + "\" lies on " + piece.way().id(),
                        text);
            }
        }
    }

    private static boolean belongs(Text text, Way way) {
        boolean label = text.group()
                .within("label")
                .map(g -> g.datum("wire").equals(way.id()))
                .orElse(false);
        return label
                || text.group()
                        .within("badge")
                        .map(g -> g.datum("target").equals(way.id()))
                        .orElse(false);
    }

    /** Whether the group of the text has an opaque patch below all of it. */
    private boolean hasGround(Text text) {
        for (Patch patch : seen.patches) {
            if (patch.order() < text.order()
                    && numberOf(patch.group()) == numberOf(text.group())
                    && !patch.fill().equals("none")
                    && patch.area().contains(core(text))) {
                return true;
            }
        }
        return false;
    }

    private static int numberOf(Group group) {
        return group.parent().map(Group::number).orElse(0);
    }

    /** An outline of a box, plug, cell or field must not run through a text. */
    private void checkEdges(Text text) {
        for (Patch patch : seen.patches) {
            boolean drawn =
                    patch.upright() && patch.width() > 0 && !patch.group().is("shape");
            Area outer = patch.area().grown(patch.width() / 2);
            Area inner = patch.area().grown(-patch.width() / 2);
            if (drawn && outer.overlaps(core(text)) && !inner.contains(core(text)) && !hasGround(text)) {
                flaw(Kind.TEXT_ACROSS_EDGE, "\"" + text.words() + "\" lies across an outline", text);
            }
        }
    }

    private void checkCovers(Text text) {
        for (Patch patch : seen.patches) {
            boolean opaque = !patch.fill().equals("none");
            if (patch.order() > text.order() && opaque && patch.area().overlaps(core(text))) {
                flaw(Kind.TEXT_COVERED, "\"" + text.words() + "\" lies below a " + nameOf(patch.group()), text);
            }
        }
        for (Line line : seen.lines) {
            if (line.order() > text.order() && touches(line, core(text))) {
                flaw(Kind.TEXT_COVERED, "\"" + text.words() + "\" lies below a line " + nameOf(line.group()), text);
            }
        }
    }

    private static String nameOf(Group group) {
        return group.classes() + group.parent().map(g -> " of " + g.classes()).orElse("");
    }

    private static boolean touches(Line line, Area area) {
        for (int i = 1; i < line.points().size(); i++) {
            Point a = line.points().get(i - 1);
            Point b = line.points().get(i);
            boolean aslant = Math.abs(a.x() - b.x()) > SLACK && Math.abs(a.y() - b.y()) > SLACK;
            Area ink = Area.between(a.x(), a.y(), b.x(), b.y()).grown(line.width() / 2);
            if (!aslant && ink.overlaps(area)) {
                return true;
            }
        }
        return false;
    }

    private void checkBadges() {
        List<Patch> shapes =
                seen.patches.stream().filter(p -> p.group().is("shape")).toList();
        for (int i = 0; i < shapes.size(); i++) {
            for (int j = i + 1; j < shapes.size(); j++) {
                if (shapes.get(i).area().overlaps(shapes.get(j).area())) {
                    flaws.add(new Flaw(
                            Kind.BADGE_ON_BADGE,
                            "two badges overlap",
                            shapes.get(i).area().centre()));
                }
            }
        }
    }
}
