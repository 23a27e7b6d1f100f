package ringout.sheet.document;

import java.util.List;

/**
 * Rows of a table that belong together: one plug, one zone, one wire size.
 *
 * @param title what they have in common; empty in a table that is not divided
 * @param details more about it, printed behind the title; may be empty
 * @param rows in the order they are worked through
 */
public record Group(String title, String details, List<Row> rows) {
    /** Keeps its own copy. */
    public Group {
        rows = List.copyOf(rows);
    }

    /** {@return title and details in one line} */
    public String words() {
        return details.isEmpty() ? title : title + ", " + details;
    }
}
