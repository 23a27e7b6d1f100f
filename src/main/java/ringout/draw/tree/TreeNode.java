package ringout.draw.tree;

import java.util.List;
import java.util.Optional;

/**
 * A thing of a tree.
 *
 * @param id identifier within the sheet
 * @param kind what it is: {@code pack}, {@code regulator}, {@code board}, {@code load}, {@code unit}
 * @param title its name
 * @param lines what its box says; of a leaf, the cells of its row
 * @param brief the same where there is little room
 * @param leaf whether it stands in the last column as one row
 * @param share what part of its rating it gives, if it has one
 */
public record TreeNode(
        String id,
        String kind,
        String title,
        List<String> lines,
        List<String> brief,
        boolean leaf,
        Optional<Share> share) {
    /**
     * The part of a rating that is used, 1 for all of it.
     *
     * @param average of the continuous rating
     * @param peak of the peak rating
     */
    public record Share(double average, double peak) {}

    /** Keeps unmodifiable copies of the lines. */
    public TreeNode {
        lines = List.copyOf(lines);
        brief = List.copyOf(brief);
    }
}
