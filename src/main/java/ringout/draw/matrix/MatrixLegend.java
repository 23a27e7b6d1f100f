package ringout.draw.matrix;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Words.Align;
import ringout.draw.paper.Area;
import ringout.draw.scene.BadgeKind;
import ringout.draw.style.LegendEntry;
import ringout.draw.style.Print;

/** What the legend of matrices must explain. */
final class MatrixLegend {
    private MatrixLegend() {}

    static List<LegendEntry> of(MatrixScene scene) {
        Set<BadgeKind> kinds = EnumSet.noneOf(BadgeKind.class);
        Set<String> others = new LinkedHashSet<>();
        for (Block block : scene.blocks()) {
            for (Block.Row row : block.rows()) {
                for (Glyph glyph : row.glyphs()) {
                    if (glyph instanceof Glyph.Result result) {
                        kinds.add(result.kind());
                    } else {
                        others.add(GlyphInk.name(glyph));
                    }
                }
            }
        }
        List<LegendEntry> entries = new ArrayList<>();
        for (BadgeKind kind : kinds) {
            entries.add(new LegendEntry(
                    "the worst is " + kind.word(), LegendEntry.TALL, p -> GlyphInk.shape(kind, "x", p.plus(10, 0))));
        }
        add(entries, others, "dead", new Glyph.Dead(), "dead: no supply, or cut off its bus");
        add(entries, others, "open", new Glyph.Open(), "not tried: cannot tell");
        if (!kinds.isEmpty() || others.contains("same")) {
            entries.add(words("\u2013  =", "no harm found, same points"));
            entries.add(words("", "blank: does not fit or reach"));
        }
        if (!scene.letters().isEmpty()) {
            entries.add(words(
                    scene.letters().stream()
                            .map(letter -> letter.substring(0, 1))
                            .collect(Collectors.joining(" ")),
                    scene.letters().stream().map(letter -> letter.substring(2)).collect(Collectors.joining(", "))));
        }
        return entries;
    }

    private static LegendEntry words(String sample, String words) {
        return new LegendEntry(words, LegendEntry.LOW, p -> {
            List<Ink> ink = new ArrayList<>();
            Print.add(ink, Print.small(sample, p.x() + LegendEntry.SAMPLE / 2, p.y(), Align.MIDDLE));
            return ink;
        });
    }

    private static void add(List<LegendEntry> entries, Set<String> others, String name, Glyph glyph, String words) {
        if (others.contains(name) && !words.isEmpty()) {
            double height = glyph instanceof Glyph.Open ? LegendEntry.TALL : LegendEntry.LOW;
            entries.add(new LegendEntry(
                    words, height, p -> GlyphInk.draw(glyph, new Area(p.x() + 6, p.y() - 2.2, 8, 4.4))));
        }
    }
}
