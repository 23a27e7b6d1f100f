package ringout.draw.matrix;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Ink;
import ringout.draw.paper.SheetSize;
import ringout.draw.style.Drawn;
import ringout.draw.style.Margins;

/** Sets matrices on as many sheets as they need. */
public final class MatrixDrawing {
    private MatrixDrawing() {}

    /** {@return the sheets of a scene on paper of one size} */
    public static List<Drawn> of(MatrixScene scene, SheetSize size) {
        Margins margins = new Margins(size, scene.info(), MatrixLegend.of(scene), List.of(), scene.notes());
        List<List<MatrixPages.Set>> pages = MatrixPages.of(scene.blocks(), margins.drawing());
        List<Drawn> sheets = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            String title =
                    scene.info().title() + (pages.size() == 1 ? "" : ", part " + (i + 1) + " of " + pages.size());
            List<Ink> ink = new ArrayList<>();
            List<String> things = new ArrayList<>();
            for (MatrixPages.Set set : pages.get(i)) {
                ink.addAll(new MatrixInk(set.placed(), set.corner()).draw());
                things.addAll(things(set.placed().block()));
            }
            sheets.add(new Drawn(margins.titled(scene.info().entitled(title)), title, ink, List.of(), things));
        }
        return sheets;
    }

    private static List<String> things(Block block) {
        List<String> things = new ArrayList<>();
        for (Block.Row row : block.rows()) {
            for (int column = 0; column < block.columns().size(); column++) {
                if (!(row.glyphs().get(column) instanceof Glyph.None)) {
                    things.add(MatrixInk.thing(block, row, column));
                }
            }
        }
        return things;
    }
}
