package ringout.draw.map;

import static ringout.draw.letter.Lettering.LARGE;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.form.BadgeForm;
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
import ringout.draw.style.Badges;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/**
 * A table in lettering of 5 mm. A head of two words stands in two lines.
 *
 * @param heads of the columns
 * @param rows each with its cells, one a column
 * @param widths of the columns, mm
 */
record MapTable(List<String> heads, List<Row> rows, List<Double> widths) {
    static final double ROW = 8.6;
    private static final double MARGIN = 1.6;
    private static final double BADGE = 8;

    /**
     * A row.
     *
     * @param tag what it stands for
     * @param cells from left to right
     * @param badges after the last
     */
    record Row(Tag tag, List<String> cells, List<BadgeForm> badges) {}

    /** A table as wide as its texts. */
    static MapTable of(List<String> heads, List<Row> rows) {
        List<Double> widths = new ArrayList<>();
        for (int column = 0; column < heads.size(); column++) {
            double width = 0;
            for (String word : lines(heads.get(column))) {
                width = Math.max(width, Lettering.width(word, LARGE, Weight.REGULAR));
            }
            for (Row row : rows) {
                width = Math.max(width, Lettering.width(row.cells().get(column), LARGE, weight(column)));
            }
            widths.add(width + 2 * MARGIN);
        }
        return new MapTable(heads, rows, widths);
    }

    private static Weight weight(int column) {
        return column == 0 ? Weight.BOLD : Weight.REGULAR;
    }

    private static List<String> lines(String head) {
        return head.isEmpty() ? List.of() : List.of(head.split("\n"));
    }

    private int headLines() {
        return heads.stream().mapToInt(head -> lines(head).size()).max().orElse(0);
    }

    /** Without the badges beside it. */
    private double inner() {
        return widths.stream().mapToDouble(width -> width).sum();
    }

    double width() {
        int badges = rows.stream().mapToInt(row -> row.badges().size()).max().orElse(0);
        return rows.isEmpty() ? 0 : inner() + badges * BADGE;
    }

    double height() {
        return rows.isEmpty() ? 0 : headLines() * (ROW - 1.6) + rows.size() * ROW + 1.2;
    }

    /** The table with its upper left corner at a point. */
    List<Ink> draw(Point corner) {
        List<Ink> ink = new ArrayList<>();
        double y = corner.y();
        for (int line = 0; line < headLines(); line++) {
            double x = corner.x();
            for (int column = 0; column < heads.size(); column++) {
                List<String> words = lines(heads.get(column));
                if (line < words.size()) {
                    ink.add(Print.line(
                            words.get(line),
                            x + MARGIN,
                            y + (ROW - 1.6) / 2,
                            Align.START,
                            LARGE,
                            Weight.REGULAR,
                            Palette.DARK_GREY));
                }
                x += widths.get(column);
            }
            y += ROW - 1.6;
        }
        y += 0.6;
        for (Row row : rows) {
            ink.add(draw(row, new Point(corner.x(), y)));
            y += ROW;
        }
        return ink;
    }

    private Ink draw(Row row, Point corner) {
        List<Ink> ink = new ArrayList<>();
        Pen thin = Pen.solid(Palette.BLACK, Lines.THIN);
        ink.add(Patch.rectangle("body", new Area(corner.x(), corner.y(), inner(), ROW), Paint.clear(), thin));
        double x = corner.x();
        double middle = corner.y() + ROW / 2;
        for (int column = 0; column < heads.size(); column++) {
            if (column > 0) {
                ink.add(new Stroke(Tag.NONE, List.of(new Point(x, corner.y()), new Point(x, corner.y() + ROW)), thin));
            }
            String text = row.cells().get(column);
            Print.add(ink, Print.line(text, x + MARGIN, middle, Align.START, LARGE, weight(column), Palette.BLACK));
            x += widths.get(column);
        }
        for (BadgeForm badge : row.badges()) {
            x += BadgeForm.GAP + badge.width() / 2;
            ink.add(Badges.draw(badge, new Point(x, middle), row.cells().get(0)));
            x += badge.width() / 2;
        }
        return new Cluster(row.tag(), ink);
    }
}
