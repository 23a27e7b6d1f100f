package ringout.draw.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * The reference grid on the margin: fields of 50 mm counted from the middle of the sheet, an even number each way, the
 * outermost reaching to the frame; letters downwards without I and O, numbers to the right (ISO 5457:1999, from memory:
 * A4 has 6 by 4 fields, A3 8 by 6, A2 12 by 8, A1 16 by 12).
 */
public final class ZoneGrid {
    private static final double FIELD = 50;
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private final SheetSize size;

    /** The grid of a sheet size. */
    public ZoneGrid(SheetSize size) {
        this.size = size;
    }

    /** {@return how many fields lie side by side} */
    public int columns() {
        return evenFields(size.width());
    }

    /** {@return how many fields lie one below the other} */
    public int rows() {
        return evenFields(size.height());
    }

    private static int evenFields(double edge) {
        return 2 * (int) Math.round(edge / (2 * FIELD));
    }

    /** {@return the zone a point lies in, letter then number, such as {@code C4}} */
    public String zoneOf(Point point) {
        int row = field(point.y(), size.height() / 2, rows());
        int column = field(point.x(), size.width() / 2, columns());
        return LETTERS.charAt(row) + Integer.toString(column + 1);
    }

    private static int field(double at, double middle, int count) {
        int field = count / 2 + (int) Math.floor((at - middle) / FIELD);
        return Math.max(0, Math.min(count - 1, field));
    }

    /** {@return the name of a row, counted from 0 at the top} */
    public String rowName(int row) {
        return LETTERS.substring(row, row + 1);
    }

    /** {@return the edges of the fields from left to right, mm, one more than there are fields} */
    public List<Double> columnEdges() {
        Area frame = size.frame();
        return edges(frame.x(), frame.right(), size.width() / 2, columns());
    }

    /** {@return the edges of the fields from top to bottom, mm, one more than there are fields} */
    public List<Double> rowEdges() {
        Area frame = size.frame();
        return edges(frame.y(), frame.bottom(), size.height() / 2, rows());
    }

    private static List<Double> edges(double from, double to, double middle, int count) {
        List<Double> edges = new ArrayList<>();
        edges.add(from);
        for (int i = 1; i < count; i++) {
            edges.add(middle + (i - count / 2) * FIELD);
        }
        edges.add(to);
        return List.copyOf(edges);
    }
}
