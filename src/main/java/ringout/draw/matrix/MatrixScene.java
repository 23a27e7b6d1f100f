package ringout.draw.matrix;

import java.util.List;
import ringout.draw.scene.SheetInfo;

/**
 * Matrices that belong together, ready to be laid out.
 *
 * @param info the title block
 * @param blocks from the gravest to the least
 * @param letters what the letters in results mean, for the legend: the letter, a blank, the words
 * @param notes below them, on every sheet
 */
public record MatrixScene(SheetInfo info, List<Block> blocks, List<String> letters, List<String> notes) {
    /** Keeps unmodifiable copies. */
    public MatrixScene {
        blocks = List.copyOf(blocks);
        letters = List.copyOf(letters);
        notes = List.copyOf(notes);
    }
}
