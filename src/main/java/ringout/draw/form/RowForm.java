package ringout.draw.form;

import java.util.List;
import ringout.draw.scene.Row;

/**
 * A line of a plug and its size.
 *
 * @param row the pin or fitting
 * @param number what is printed in the cell; empty for a fitting
 * @param text what is printed beside the cell
 * @param top steps from the top of the plug
 * @param height steps; more than one row's when several wires share the pin
 * @param lines steps from the top of the plug to each place for a wire end
 * @param badges inside the box
 */
public record RowForm(
        Row row, String number, String text, int top, int height, List<Integer> lines, List<BadgeForm> badges) {
    /** Keeps unmodifiable copies. */
    public RowForm {
        lines = List.copyOf(lines);
        badges = List.copyOf(badges);
    }
}
