package ringout.draw.scene;

import java.util.List;

/**
 * Where a box or splice stood in an earlier drawing, to be held so that paper on the wall still matches. What is new
 * since then finds its own place around what is held.
 *
 * @param id the box or splice
 * @param column its column, from 0 at the left
 * @param rank its place in the column, ascending downwards; any numbers, only their order counts
 * @param left plugs of the box, or wires of the splice, that stood on the left side, from top to bottom
 * @param right those that stood on the right side
 */
public record Spot(String id, int column, int rank, List<String> left, List<String> right) {
    /** Keeps unmodifiable copies. */
    public Spot {
        left = List.copyOf(left);
        right = List.copyOf(right);
    }
}
