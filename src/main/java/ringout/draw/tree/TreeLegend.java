package ringout.draw.tree;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.paper.Area;
import ringout.draw.style.LegendEntries;
import ringout.draw.style.LegendEntry;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** What the legend of a tree must explain. */
final class TreeLegend {
    private TreeLegend() {}

    static List<LegendEntry> of(TreeScene scene) {
        List<LegendEntry> entries = new ArrayList<>();
        Set<Girth> girths = EnumSet.noneOf(Girth.class);
        scene.links().forEach(link -> girths.add(link.girth()));
        for (Girth girth : girths) {
            entries.add(new LegendEntry(
                    girth.words(),
                    LegendEntry.LOW,
                    p -> List.of(new Stroke(
                            Tag.of("line"), List.of(p, p.plus(LegendEntry.SAMPLE, 0)), TreeInk.pen(girth)))));
        }
        entries.add(new LegendEntry(
                "bar: all lines from it are joined",
                LegendEntry.LOW,
                p -> List.of(Patch.rectangle(
                        "",
                        new Area(p.x() + 9, p.y() - 2, TreePlaced.BAR, 4),
                        Paint.of(Palette.BLACK),
                        Pen.solid(Palette.BLACK, Lines.THIN)))));
        if (scene.links().stream().anyMatch(TreeLink::fused)) {
            entries.add(new LegendEntry(
                    "fuse; % left is at peak", LegendEntry.LOW, p -> TreeInk.fuse(p.plus(10, 0), Girth.SUPPLY)));
        }
        if (scene.nodes().stream().anyMatch(node -> node.share().isPresent())) {
            entries.add(new LegendEntry(
                    "used of the rating: average, then peak",
                    LegendEntry.LOW,
                    p -> TreeInk.meter(new Area(p.x(), p.y() - 1.7, 18, 3.4), new TreeNode.Share(0.4, 0.7))));
        }
        if (!girths.contains(Girth.SUPPLY)) {
            entries.add(new LegendEntry(
                    "current at average, of what the lead may carry",
                    LegendEntry.LOW,
                    p -> List.of(Print.small("n of m A", p.x() + LegendEntry.SAMPLE / 2, p.y(), Align.MIDDLE))));
        }
        entries.add(new LegendEntry(
                "all loads at average / all at their peak at once",
                LegendEntry.LOW,
                p -> List.of(Print.small("a / b", p.x() + LegendEntry.SAMPLE / 2, p.y(), Align.MIDDLE))));
        entries.addAll(LegendEntries.badges(scene.marks()));
        return entries;
    }
}
