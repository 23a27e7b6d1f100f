package ringout.draw.bus;

import static ringout.draw.letter.Lettering.SMALL;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.scene.OhmsLine;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** The table of expected readings. */
final class OhmsInk {
    private static final List<Double> COLUMNS = List.of(30.0, 20.0, 36.0, 36.0);
    private static final List<String> HEADS = List.of("plug", "mated", "pulled: into lead", "pulled: into unit");
    private static final double WIDTH = 122;
    private static final double GAP = 6;
    private static final double TITLE = 5.5;
    private static final double ROW_PER_CAP = 1.92;
    private static final double MARGIN = 1.5;

    private final double cap;
    private final double scale;
    private final List<Ink> ink = new ArrayList<>();

    private OhmsInk(double cap) {
        this.cap = cap;
        this.scale = cap / SMALL;
    }

    private int blocks(double width) {
        return Math.max(1, (int) ((width + GAP) / (WIDTH * scale + GAP)));
    }

    private int rows(int lines, double width) {
        return (lines + blocks(width) - 1) / blocks(width);
    }

    private double row() {
        return cap * ROW_PER_CAP;
    }

    /**
     * {@return the area the table takes from a corner within a width, with capitals of a height; of no height when there
     * is nothing to print}
     */
    static Area area(List<OhmsLine> ohms, double cap, double x, double y, double width) {
        OhmsInk table = new OhmsInk(cap);
        double height = TITLE + (1 + table.rows(ohms.size(), width)) * table.row();
        return new Area(x, y, width, ohms.isEmpty() ? 0 : height);
    }

    static List<Ink> draw(List<OhmsLine> ohms, double cap, Area area) {
        if (ohms.isEmpty()) {
            return List.of();
        }
        OhmsInk table = new OhmsInk(cap);
        table.fill(ohms, area);
        return List.of(new Cluster(Tag.of("ohms"), table.ink));
    }

    private void fill(List<OhmsLine> ohms, Area area) {
        String title = "expected ohms between H and L, power off everywhere";
        ink.add(Print.bold(title, area.x() + MARGIN, area.y() + TITLE / 2 - 0.6, Align.START));
        int rows = rows(ohms.size(), area.width());
        for (int first = 0; first < ohms.size(); first += rows) {
            int before = first / rows;
            double x = area.x() + before * (WIDTH * scale + GAP);
            List<OhmsLine> block = ohms.subList(first, Math.min(ohms.size(), first + rows));
            addRow(x, area.y() + TITLE, HEADS, true);
            for (int i = 0; i < block.size(); i++) {
                OhmsLine line = block.get(i);
                List<String> cells = List.of(line.plug(), line.mated(), line.intoLead(), line.intoUnit());
                addRow(x, area.y() + TITLE + (i + 1) * row(), cells, false);
            }
        }
    }

    private void addRow(double left, double y, List<String> cells, boolean head) {
        double x = left;
        for (int c = 0; c < cells.size(); c++) {
            double width = COLUMNS.get(c) * scale;
            Area cell = new Area(x, y, width, row());
            Paint fill = head ? Paint.of(Palette.LIGHT_GREY) : Paint.clear();
            ink.add(Patch.rectangle("", cell, fill, Pen.solid(Palette.BLACK, Lines.THIN)));
            Weight weight = head || c == 0 ? Weight.BOLD : Weight.REGULAR;
            String text = Lettering.fit(Lettering.printable(cells.get(c)), cap, weight, width - 2 * MARGIN);
            double middle = cell.centre().y() - 0.2 + Lettering.riseOf(text, cap) / 6;
            Print.add(ink, Print.line(text, x + MARGIN, middle, Align.START, cap, weight, Palette.BLACK));
            x += width;
        }
    }
}
