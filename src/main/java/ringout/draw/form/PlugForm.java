package ringout.draw.form;

import java.util.List;
import ringout.draw.scene.Plug;

/**
 * A plug and its size. A plug of one row has no head; its name is printed in the row.
 *
 * @param plug the plug
 * @param name what the head says
 * @param head steps of the head, 0 for none
 * @param badges in the head
 * @param rows its lines
 * @param cell width of the cells at the edge of the box, mm
 * @param width over all, mm
 * @param height over all, steps
 */
public record PlugForm(
        Plug plug,
        String name,
        int head,
        List<BadgeForm> badges,
        List<RowForm> rows,
        double cell,
        double width,
        int height) {
    /** Keeps unmodifiable copies. */
    public PlugForm {
        badges = List.copyOf(badges);
        rows = List.copyOf(rows);
    }
}
