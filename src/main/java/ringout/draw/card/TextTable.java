package ringout.draw.card;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import ringout.draw.ink.Cluster;
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
import ringout.draw.style.Insulation;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/**
 * A table of short texts with a head, as narrow as its texts allow.
 *
 * @param heads of the columns
 * @param rows from top to bottom, each with as many cells as there are heads
 * @param colours number of the column whose letters are shown by a strip of insulation as well; -1 for none
 */
public record TextTable(List<String> heads, List<List<String>> rows, int colours) {
    /** Height of a row, mm. */
    public static final double ROW = 4.4;

    private static final double HEAD = 5;
    private static final double GAP = 2.2;
    private static final double STRIP = 4;
    private static final double STRIP_HEIGHT = 1.6;
    private static final double WIDEST = 60;

    /** Keeps unmodifiable copies; a text too long for paper is cut with an ellipsis. */
    public TextTable {
        heads = List.copyOf(heads);
        rows = rows.stream()
                .map(row -> row.stream().map(TextTable::cut).toList())
                .toList();
    }

    private static String cut(String text) {
        return Lettering.fit(Lettering.printable(text), Lettering.SMALL, Weight.REGULAR, WIDEST);
    }

    /** {@return how wide it is, mm} */
    public double width() {
        double sum = GAP * (heads.size() - 1);
        for (int column = 0; column < heads.size(); column++) {
            sum += width(column);
        }
        return sum;
    }

    /** {@return how high it is, mm} */
    public double height() {
        return HEAD + rows.size() * ROW;
    }

    private double width(int column) {
        double wide = Lettering.width(heads.get(column), Lettering.SMALL, Weight.BOLD);
        for (List<String> row : rows) {
            wide = Math.max(wide, indent(column) + Lettering.width(row.get(column), Lettering.SMALL, Weight.REGULAR));
        }
        return wide;
    }

    private double indent(int column) {
        return column == colours
                        && rows.stream().anyMatch(row -> !row.get(column).isEmpty())
                ? STRIP + 1
                : 0;
    }

    /** {@return its ink from an upper left corner, each row under a tag of its own} */
    public List<Ink> draw(Point corner, IntFunction<Tag> tags) {
        List<Ink> ink = new ArrayList<>();
        double x = corner.x();
        for (int column = 0; column < heads.size(); column++) {
            Print.add(ink, Print.bold(heads.get(column), x, corner.y() + 1.8, Align.START));
            x += width(column) + GAP;
        }
        Point rule = corner.plus(0, HEAD - 0.9);
        ink.add(new Stroke(Tag.of("rule"), List.of(rule, rule.plus(width(), 0)), Pen.solid(Palette.BLACK, Lines.THIN)));
        for (int row = 0; row < rows.size(); row++) {
            double middle = corner.y() + HEAD + ROW * (row + 0.5);
            ink.add(new Cluster(tags.apply(row), row(rows.get(row), corner.x(), middle)));
        }
        return ink;
    }

    private List<Ink> row(List<String> cells, double left, double middle) {
        List<Ink> ink = new ArrayList<>();
        double x = left;
        for (int column = 0; column < cells.size(); column++) {
            String text = cells.get(column);
            if (column == colours) {
                ink.addAll(strip(text, new Area(x, middle - STRIP_HEIGHT / 2, STRIP, STRIP_HEIGHT)));
            }
            Print.add(ink, Print.small(text, x + indent(column), middle, Align.START));
            x += width(column) + GAP;
        }
        return ink;
    }

    /** {@return the insulation of a wire as a strip, two-tone for a striped one; nothing for letters that are no code} */
    static List<Ink> strip(String letters, Area area) {
        List<String> colours = Insulation.of(letters);
        if (colours.isEmpty()) {
            return List.of();
        }
        List<Ink> ink = new ArrayList<>();
        double part = area.height() / colours.size();
        for (int i = 0; i < colours.size(); i++) {
            Area band = new Area(area.x(), area.y() + i * part, area.width(), part);
            ink.add(Patch.rectangle("", band, Paint.of(colours.get(i)), Pen.NONE));
        }
        ink.add(Patch.rectangle("edge", area, Paint.clear(), Pen.solid(Palette.BLACK, Lines.THIN)));
        return ink;
    }
}
