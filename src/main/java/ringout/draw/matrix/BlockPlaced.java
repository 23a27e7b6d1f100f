package ringout.draw.matrix;

import static ringout.draw.letter.Lettering.SMALL;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;

/**
 * A matrix with its measures, in mm.
 *
 * @param block what it says
 * @param pitch width of a column of cells
 * @param name width of the names of the rows
 * @param head height of the heads of the columns
 * @param tails widths of the columns of text
 * @param names names of the rows, wrapped
 * @param lastTails last text of every row, wrapped
 * @param heights of the rows
 * @param lines explanations, wrapped
 */
record BlockPlaced(
        Block block,
        double pitch,
        double name,
        double head,
        List<Double> tails,
        List<List<String>> names,
        List<List<String>> lastTails,
        List<Double> heights,
        List<String> lines) {
    static final double TITLE = 6;
    static final double LINE = 4.1;
    static final double MARGIN = 1.4;
    private static final double LONGEST_NAME = 58;
    private static final double SHORTEST_TAIL = 40;
    private static final double ROW = 6.6;
    private static final double LOW_ROW = 5.2;
    private static final double PITCH = 7.8;
    private static final double SLIM_PITCH = 4.6;
    private static final int MOST_LINES = 5;
    private static final double NARROWEST_LINES = 126;
    private static final double SLACK = 0.1;

    /** The measures in a width: names and last texts are wrapped so that it is kept, if that can be. */
    static BlockPlaced of(Block block, double width) {
        boolean results = block.rows().stream()
                .flatMap(row -> row.glyphs().stream())
                .anyMatch(glyph -> !(glyph instanceof Glyph.Dead || glyph instanceof Glyph.None));
        double pitch = results ? PITCH : SLIM_PITCH;
        double wanted = block.rows().stream()
                .mapToDouble(row -> wide(row.name(), Weight.BOLD))
                .max()
                .orElse(0);
        double name =
                Math.max(Math.min(wanted, LONGEST_NAME), wide(block.rowHead(), Weight.REGULAR)) + 2 * MARGIN + SLACK;
        double head = block.columns().stream()
                        .mapToDouble(column -> wide(column, Weight.REGULAR))
                        .max()
                        .orElse(0)
                + 2 * MARGIN;
        List<Double> tails = tails(block, width - name - pitch * block.columns().size());
        List<List<String>> names = new ArrayList<>();
        List<List<String>> last = new ArrayList<>();
        List<Double> heights = new ArrayList<>();
        for (Block.Row row : block.rows()) {
            List<String> lines = wrap(row.name(), Weight.BOLD, name - 2 * MARGIN);
            List<String> texts = tails.isEmpty()
                    ? List.of()
                    : wrap(row.tails().get(tails.size() - 1), Weight.REGULAR, tails.get(tails.size() - 1) - 2 * MARGIN);
            names.add(lines);
            last.add(texts);
            int most = Math.max(1, Math.max(lines.size(), texts.size()));
            heights.add(Math.max(results ? ROW : LOW_ROW, most * LINE + 1.2));
        }
        double grid = name
                + pitch * block.columns().size()
                + tails.stream().mapToDouble(tail -> tail).sum();
        double room = block.rows().isEmpty() ? width : Math.min(width, Math.max(grid, NARROWEST_LINES));
        List<String> below = new ArrayList<>();
        block.lines().forEach(line -> below.addAll(Lettering.wrap(line, SMALL, Weight.REGULAR, room, 2)));
        return new BlockPlaced(block, pitch, name, head, tails, names, last, heights, below);
    }

    private static List<String> wrap(String text, Weight weight, double width) {
        return Lettering.wrap(text, SMALL, weight, width, MOST_LINES);
    }

    /** Every column of text as wide as it must be, the last as wide as there is room. */
    private static List<Double> tails(Block block, double room) {
        List<Double> widths = new ArrayList<>();
        double left = room;
        for (int tail = 0; tail < block.tailHeads().size(); tail++) {
            double width = wide(block.tailHeads().get(tail), Weight.REGULAR);
            double least = Math.max(SHORTEST_TAIL, width + 2 * MARGIN + SLACK);
            for (Block.Row row : block.rows()) {
                width = Math.max(width, wide(row.tails().get(tail), Weight.REGULAR));
            }
            width += 2 * MARGIN + SLACK;
            boolean last = tail == block.tailHeads().size() - 1;
            widths.add(last ? Math.max(least, Math.min(width, left)) : width);
            left -= width;
        }
        return widths;
    }

    private static double wide(String text, Weight weight) {
        return Lettering.width(text, SMALL, weight);
    }

    double width() {
        double below = lines.stream()
                .mapToDouble(line -> wide(line, Weight.REGULAR))
                .max()
                .orElse(0);
        return Math.max(Math.max(below, grid()), wide(block.title(), Weight.BOLD));
    }

    /** Width of the matrix itself. */
    double grid() {
        return name
                + pitch * block.columns().size()
                + tails.stream().mapToDouble(tail -> tail).sum();
    }

    double height() {
        return top() + heights.stream().mapToDouble(height -> height).sum() + lines.size() * LINE + 1;
    }

    /** From the top of the title to the first row. */
    double top() {
        return TITLE + head;
    }
}
