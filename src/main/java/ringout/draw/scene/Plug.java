package ringout.draw.scene;

import java.util.List;

/**
 * A connector half on a box.
 *
 * @param id identifier, such as {@code FC-CAN1}
 * @param name what is printed, such as {@code CAN1}
 * @param rows its pins in plug order, then its fittings; at least one
 */
public record Plug(String id, String name, List<Row> rows) {
    /** Keeps an unmodifiable copy of the rows. */
    public Plug {
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("plug " + id + " has no rows");
        }
    }
}
