package ringout.sheet.document;

import java.util.List;

/**
 * A row of a table.
 *
 * @param cells one a column; empty where nothing is printed
 * @param kind what the row is
 */
public record Row(List<String> cells, Kind kind) {
    /** What a row is. */
    public enum Kind {
        /** An ordinary row. */
        LINE,
        /** A sum of rows above it. */
        SUM,
        /** A row to be looked at first: what is out of its band, open or severe. */
        GRAVE
    }

    /** Keeps its own copy. */
    public Row {
        cells = List.copyOf(cells);
    }
}
