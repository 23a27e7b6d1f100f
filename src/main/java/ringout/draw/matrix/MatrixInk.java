package ringout.draw.matrix;

import static ringout.draw.matrix.BlockPlaced.LINE;
import static ringout.draw.matrix.BlockPlaced.MARGIN;

import java.util.ArrayList;
import java.util.List;
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
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** The ink of one matrix. */
final class MatrixInk {
    private static final Pen THIN = Pen.solid(Palette.BLACK, Lines.THIN);
    private static final Pen FAINT = Pen.solid("#8c8c8c", 0.15);

    private final BlockPlaced placed;
    private final Block block;
    private final Point corner;
    private final List<Ink> ink = new ArrayList<>();

    MatrixInk(BlockPlaced placed, Point corner) {
        this.placed = placed;
        this.block = placed.block();
        this.corner = corner;
    }

    /** The name of a cell that is not empty: what the verifier looks for. */
    static String thing(Block block, Block.Row row, int column) {
        return row.name() + " / " + block.columns().get(column);
    }

    List<Ink> draw() {
        ink.add(Print.bold(block.title(), corner.x(), corner.y() + 1.8, Align.START));
        heads();
        double y = corner.y() + placed.top();
        for (int row = 0; row < block.rows().size(); row++) {
            row(row, y);
            y += placed.heights().get(row);
        }
        for (String line : placed.lines()) {
            ink.add(Print.small(line, corner.x(), y + 1 + LINE / 2, Align.START));
            y += LINE;
        }
        return ink;
    }

    private void heads() {
        double bottom = corner.y() + placed.top();
        Print.add(ink, Print.small(block.rowHead(), corner.x() + MARGIN, bottom - 2.4, Align.START));
        double x = corner.x() + placed.name();
        for (String column : block.columns()) {
            double wide = Lettering.width(column, Lettering.SMALL, Weight.REGULAR);
            ink.add(Print.upright(column, x + placed.pitch() / 2, bottom - MARGIN - wide / 2));
            x += placed.pitch();
        }
        for (int tail = 0; tail < block.tailHeads().size(); tail++) {
            String head = Lettering.fit(
                    block.tailHeads().get(tail),
                    Lettering.SMALL,
                    Weight.REGULAR,
                    placed.tails().get(tail) - 2 * MARGIN);
            ink.add(Print.small(head, x + MARGIN, bottom - 2.4, Align.START));
            x += placed.tails().get(tail);
        }
    }

    private void row(int number, double y) {
        Block.Row row = block.rows().get(number);
        double height = placed.heights().get(number);
        List<Ink> parts = new ArrayList<>();
        parts.add(Patch.rectangle("row", new Area(corner.x(), y, placed.grid(), height), Paint.clear(), THIN));
        lines(parts, placed.names().get(number), corner.x() + MARGIN, y + height / 2, Weight.BOLD);
        double x = corner.x() + placed.name();
        for (int column = 0; column < block.columns().size(); column++) {
            rule(parts, x, y, height, column == 0 ? THIN : FAINT);
            Glyph glyph = row.glyphs().get(column);
            if (!(glyph instanceof Glyph.None)) {
                Area cell = new Area(x, y, placed.pitch(), height);
                Tag tag = Tag.of("result")
                        .with("thing", thing(block, row, column))
                        .with("result", GlyphInk.name(glyph));
                parts.add(new Cluster(
                        tag.titled(thing(block, row, column) + ": " + GlyphInk.name(glyph), ""),
                        GlyphInk.draw(glyph, cell)));
            }
            x += placed.pitch();
        }
        for (int tail = 0; tail < block.tailHeads().size(); tail++) {
            rule(parts, x, y, height, THIN);
            boolean last = tail == block.tailHeads().size() - 1;
            List<String> texts =
                    last ? placed.lastTails().get(number) : List.of(row.tails().get(tail));
            lines(parts, texts, x + MARGIN, y + height / 2, Weight.REGULAR);
            x += placed.tails().get(tail);
        }
        ink.add(new Cluster(Tag.of("matrix-row").with("row", row.name()), parts));
    }

    private static void rule(List<Ink> parts, double x, double y, double height, Pen pen) {
        parts.add(new Stroke(Tag.NONE, List.of(new Point(x, y), new Point(x, y + height)), pen));
    }

    private static void lines(List<Ink> parts, List<String> lines, double x, double middle, Weight weight) {
        double y = middle - (lines.size() - 1) * LINE / 2;
        for (String line : lines) {
            Print.add(parts, Print.line(line, x, y, Align.START, Lettering.SMALL, weight, Palette.BLACK));
            y += LINE;
        }
    }
}
