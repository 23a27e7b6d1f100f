package ringout.present.svg;

import java.util.Locale;
import java.util.stream.Collectors;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Hatch;
import ringout.draw.ink.HatchTile;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.StyledSheet;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Point;

/** Spells out a styled sheet; computes nothing. */
public final class SvgWriter {
    private final Markup markup = new Markup();

    private SvgWriter() {}

    /** {@return the sheet as SVG, the same bytes for the same sheet} */
    public static SvgText write(StyledSheet sheet) {
        SvgWriter writer = new SvgWriter();
        writer.document(sheet);
        return new SvgText(writer.markup.toString(), sheet.promised());
    }

    private void document(StyledSheet sheet) {
        double width = sheet.size().width();
        double height = sheet.size().height();
        markup.declare();
        markup.open("svg")
                .attribute("xmlns", "http://www.w3.org/2000/svg")
                .attribute("version", "1.1")
                .attribute("width", Numbers.of(width) + "mm")
                .attribute("height", Numbers.of(height) + "mm")
                .attribute("viewBox", "0 0 " + Numbers.of(width) + " " + Numbers.of(height))
                .attribute("font-family", Lettering.FAMILIES)
                .attribute("role", "img")
                .nest();
        words(Tag.NONE.titled(sheet.title(), sheet.description()));
        if (!sheet.hatches().isEmpty()) {
            markup.open("defs").nest();
            sheet.hatches().forEach(this::hatch);
            markup.close("defs");
        }
        markup.open("rect")
                .attribute("class", "paper")
                .attribute("width", width)
                .attribute("height", height)
                .attribute("fill", "#ffffff")
                .empty();
        sheet.ink().forEach(this::ink);
        markup.close("svg");
    }

    private void hatch(HatchTile tile) {
        markup.open("pattern")
                .attribute("id", nameOf(tile.hatch()))
                .attribute("patternUnits", "userSpaceOnUse")
                .attribute("width", tile.size())
                .attribute("height", tile.size())
                .nest();
        markup.open("rect")
                .attribute("width", tile.size())
                .attribute("height", tile.size())
                .attribute("fill", tile.ground())
                .empty();
        tile.ink().forEach(this::ink);
        markup.close("pattern");
    }

    private static String nameOf(Hatch hatch) {
        return "hatch-" + hatch.name().toLowerCase(Locale.ROOT);
    }

    private void ink(Ink ink) {
        if (ink instanceof Cluster cluster) {
            markup.open("g");
            tag(cluster.tag());
            markup.nest();
            words(cluster.tag());
            cluster.parts().forEach(this::ink);
            markup.close("g");
        } else if (ink instanceof Stroke stroke) {
            markup.open("polyline");
            tag(stroke.tag());
            markup.attribute("points", corners(stroke.points())).attribute("fill", "none");
            pen(stroke.pen());
            end("polyline", stroke.tag());
        } else if (ink instanceof Patch patch) {
            patch(patch);
        } else if (ink instanceof Words words) {
            text(words);
        }
    }

    private void patch(Patch patch) {
        String name;
        if (patch.outline() instanceof Patch.Rectangle rectangle) {
            name = "rect";
            markup.open(name)
                    .attribute("x", rectangle.area().x())
                    .attribute("y", rectangle.area().y())
                    .attribute("width", rectangle.area().width())
                    .attribute("height", rectangle.area().height());
        } else if (patch.outline() instanceof Patch.Ellipse ellipse) {
            name = "ellipse";
            markup.open(name)
                    .attribute("cx", ellipse.area().centre().x())
                    .attribute("cy", ellipse.area().centre().y())
                    .attribute("rx", ellipse.area().width() / 2)
                    .attribute("ry", ellipse.area().height() / 2);
        } else {
            name = "polygon";
            markup.open(name).attribute("points", corners(((Patch.Polygon) patch.outline()).corners()));
        }
        tag(patch.tag());
        markup.attribute("fill", paint(patch.fill()));
        pen(patch.pen());
        end(name, patch.tag());
    }

    private void text(Words words) {
        Point at = words.anchor();
        markup.open("text");
        tag(words.tag());
        markup.attribute("x", at.x())
                .attribute("y", at.y())
                .attribute("font-size", Lettering.emOf(words.capHeight()))
                .attribute("fill", words.colour());
        if (words.weight() == Weight.BOLD) {
            markup.attribute("font-weight", "bold");
        }
        if (words.align() != Words.Align.START) {
            markup.attribute("text-anchor", words.align() == Words.Align.MIDDLE ? "middle" : "end");
        }
        if (words.upright()) {
            markup.attribute("transform", "rotate(-90 " + Numbers.of(at.x()) + " " + Numbers.of(at.y()) + ")");
        }
        markup.attribute("textLength", words.width()).attribute("lengthAdjust", "spacingAndGlyphs");
        markup.text(words.text(), "text");
    }

    private void tag(Tag tag) {
        if (!tag.classes().isEmpty()) {
            markup.attribute("class", tag.classes());
        }
        if (!tag.id().isEmpty()) {
            markup.attribute("id", tag.id());
        }
        tag.data().forEach(fact -> markup.attribute("data-" + fact.name(), fact.value()));
    }

    private void words(Tag tag) {
        if (!tag.title().isEmpty()) {
            markup.open("title").text(tag.title(), "title");
        }
        if (!tag.description().isEmpty()) {
            markup.open("desc").text(tag.description(), "desc");
        }
    }

    private void end(String name, Tag tag) {
        if (tag.title().isEmpty() && tag.description().isEmpty()) {
            markup.empty();
        } else {
            markup.nest();
            words(tag);
            markup.close(name);
        }
    }

    private void pen(Pen pen) {
        if (pen.width() <= 0) {
            return;
        }
        markup.attribute("stroke", paint(pen.paint())).attribute("stroke-width", pen.width());
        if (!pen.dash().isEmpty()) {
            markup.attribute(
                    "stroke-dasharray", pen.dash().stream().map(Numbers::of).collect(Collectors.joining(" ")));
        }
        if (pen.round()) {
            markup.attribute("stroke-linecap", "round");
        }
    }

    private static String paint(Paint paint) {
        if (paint instanceof Paint.Colour colour) {
            return colour.hex();
        }
        return paint instanceof Paint.Hatched hatched ? "url(#" + nameOf(hatched.hatch()) + ")" : "none";
    }

    private static String corners(java.util.List<Point> points) {
        return points.stream()
                .map(p -> Numbers.of(p.x()) + "," + Numbers.of(p.y()))
                .collect(Collectors.joining(" "));
    }
}
