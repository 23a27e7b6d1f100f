package ringout.draw.matrix;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;

/** Matrices set on sheets one after the other, those that are too large in parts. */
final class MatrixPages {
    private static final double GAP = 7;
    private static final double SLACK = 1e-6;

    private final Area area;
    private final List<List<Set>> pages = new ArrayList<>();
    private double x;
    private double y;
    private double shelf;

    /** A matrix with its place. */
    record Set(BlockPlaced placed, Point corner) {}

    private MatrixPages(Area area) {
        this.area = area;
    }

    static List<List<Set>> of(List<Block> blocks, Area area) {
        MatrixPages pages = new MatrixPages(area);
        pages.turn();
        blocks.forEach(block -> pages.parts(block).forEach(pages::add));
        return pages.pages;
    }

    private void turn() {
        pages.add(new ArrayList<>());
        x = area.x();
        y = area.y();
        shelf = 0;
    }

    /** Puts a matrix beside the last one, else below, else on a new sheet. */
    private void add(BlockPlaced placed) {
        boolean beside = x + placed.width() <= area.right() && y + placed.height() <= area.bottom();
        if (!beside) {
            x = area.x();
            y += shelf;
            shelf = 0;
            if (y + placed.height() > area.bottom() && y > area.y()) {
                turn();
            }
        }
        pages.get(pages.size() - 1).add(new Set(placed, new Point(x, y)));
        x += placed.width() + GAP;
        shelf = Math.max(shelf, placed.height() + GAP);
    }

    /** The matrix in as few parts as fit on a sheet each. */
    private List<BlockPlaced> parts(Block block) {
        BlockPlaced whole = BlockPlaced.of(block, area.width());
        if (block.rows().isEmpty()) {
            return List.of(whole);
        }
        int columns = block.columns().size();
        double tails = whole.tails().stream().mapToDouble(tail -> tail).sum();
        int wide = Math.max(1, (int) ((area.width() - whole.name() - tails) / whole.pitch() + SLACK));
        int bands = Math.max(1, (columns + wide - 1) / wide);
        List<BlockPlaced> parts = new ArrayList<>();
        for (int band = 0; band < bands; band++) {
            int from = band * columns / bands;
            int to = (band + 1) * columns / bands;
            int row = 0;
            while (row < block.rows().size()) {
                int end = rows(whole, row);
                boolean last = end == block.rows().size() && band == bands - 1;
                parts.add(BlockPlaced.of(block.part(from, to, row, end, last), area.width()));
                row = end;
            }
        }
        return parts;
    }

    /** The row after the last that still fits. */
    private int rows(BlockPlaced whole, int from) {
        double room = area.height() - whole.top() - whole.lines().size() * BlockPlaced.LINE - 1;
        double used = 0;
        int row = from;
        while (row < whole.heights().size() && used + whole.heights().get(row) <= room) {
            used += whole.heights().get(row);
            row++;
        }
        return Math.max(row, from + 1);
    }
}
