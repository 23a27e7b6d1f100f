package ringout.draw.style;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;

/** The legend: what lines, badges and signs mean, only those that occur on the sheet. */
final class LegendInk {
    private static final double HEAD = 5.5;
    private static final double MARGIN = 2;
    private static final double GAP = 2;
    private static final double COLUMN_GAP = 5;

    private LegendInk() {}

    /** {@return the least height that holds the entries in columns within a width, not less than a given height} */
    static double height(List<LegendEntry> entries, double width, double least) {
        for (double height = least; ; height += LegendEntry.LOW) {
            if (columnsWidth(split(entries, height)) <= width) {
                return height;
            }
            if (height > 400) {
                return height;
            }
        }
    }

    static Cluster draw(List<LegendEntry> entries, Area area) {
        List<Ink> ink = new ArrayList<>();
        ink.add(Print.bold("legend", area.x() + MARGIN, area.y() + HEAD / 2 + 0.3, Align.START));
        double x = area.x() + MARGIN;
        for (List<LegendEntry> column : split(entries, area.height())) {
            double y = area.y() + HEAD;
            for (LegendEntry entry : column) {
                double middle = y + entry.height() / 2;
                List<Ink> line = new ArrayList<>(entry.sample().apply(new Point(x, middle)));
                line.add(Print.small(entry.words(), x + LegendEntry.SAMPLE + GAP, middle, Align.START));
                ink.add(new Cluster(Tag.of("legend-entry"), line));
                y += entry.height();
            }
            x += widthOf(column) + COLUMN_GAP;
        }
        return new Cluster(Tag.of("legend"), ink);
    }

    private static List<List<LegendEntry>> split(List<LegendEntry> entries, double height) {
        List<List<LegendEntry>> columns = new ArrayList<>();
        double used = Double.MAX_VALUE;
        for (LegendEntry entry : entries) {
            if (used + entry.height() > height - HEAD - 1) {
                columns.add(new ArrayList<>());
                used = 0;
            }
            columns.get(columns.size() - 1).add(entry);
            used += entry.height();
        }
        return columns;
    }

    private static double columnsWidth(List<List<LegendEntry>> columns) {
        return columns.stream().mapToDouble(c -> widthOf(c) + COLUMN_GAP).sum() + 2 * MARGIN - COLUMN_GAP;
    }

    private static double widthOf(List<LegendEntry> column) {
        double words = column.stream()
                .mapToDouble(e -> Lettering.width(e.words(), Lettering.SMALL, Weight.REGULAR))
                .max()
                .orElse(0);
        return LegendEntry.SAMPLE + GAP + words;
    }
}
