package ringout.sheet.document;

import java.util.List;

/**
 * A part of a document under a heading.
 *
 * @param title the heading; empty in a document of one section
 * @param blocks what stands under it, in order
 */
public record Section(String title, List<Block> blocks) {
    /** Keeps its own copy. */
    public Section {
        blocks = List.copyOf(blocks);
    }
}
