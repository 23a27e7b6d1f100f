package ringout.read.table;

import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Marks for "same as above". */
public final class Ditto {
    private static final Set<String> MARKS = Set.of(
            "\"",
            "''",
            "'",
            "-\"-",
            "- \" -",
            "-''-",
            "ditto",
            "do.",
            "\u3003",
            "\u2033",
            "\u201d",
            "\u201e",
            "\u201c",
            "-\u201d-");

    private Ditto() {}

    /** Whether a cell is such a mark. */
    public static boolean is(String cell) {
        return cell.length() <= 6 && MARKS.contains(cell.toLowerCase(Locale.ROOT));
    }

    /** A row with its marks replaced by what stands above; a mark with nothing above stays. */
    static List<String> resolve(List<String> row, List<String> above) {
        List<String> cells = new java.util.ArrayList<>(row);
        for (int i = 0; i < cells.size(); i++) {
            if (is(cells.get(i))
                    && i < above.size()
                    && !is(above.get(i))
                    && !above.get(i).isEmpty()) {
                cells.set(i, above.get(i));
            }
        }
        return cells;
    }
}
