package ringout.read.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The row of column heads, below any title; two rows where the upper one holds groups: "from" over "unit", "plug", "pin".
 *
 * @param last position of the last row of heads among the rows
 * @param row the heads, those of two rows made one
 */
record HeadRow(int last, Grid.Row row) {
    private static final int TITLE_ROWS = 12;

    /** The heads of a table: the row that knows most, the upper one of equals; two rows where they know more together. */
    static HeadRow of(List<Grid.Row> rows, Heads heads) {
        int top = top(rows, heads);
        HeadRow best = new HeadRow(top, rows.get(top));
        for (int i = Math.max(0, top - 1); i <= top && i + 1 < rows.size(); i++) {
            Grid.Row both = joined(rows.get(i), rows.get(i + 1), heads);
            if (known(both, heads) > Math.max(known(best.row, heads), known(rows.get(i + 1), heads))) {
                best = new HeadRow(i + 1, both);
            }
        }
        return best;
    }

    /** How many heads the best row of a table knows. */
    static long known(Grid.Row row, Heads heads) {
        return row.cells().stream().filter(heads::knows).count();
    }

    /** Whether the owner wants a column left out. */
    static boolean isLeftOut(String head) {
        String lower = head.toLowerCase(Locale.ROOT);
        return lower.equals("leave out") || lower.equals("-");
    }

    /** The first row, unless it knows less than two heads and a row below knows more (a title above). */
    private static int top(List<Grid.Row> rows, Heads heads) {
        int best = 0;
        long most = Math.max(1, known(rows.get(0), heads));
        for (int i = 1; i < Math.min(TITLE_ROWS, rows.size()) && most < 2; i++) {
            long known = known(rows.get(i), heads);
            if (known > most) {
                most = known;
                best = i;
            }
        }
        return best;
    }

    /** A group stands over its own column and the empty ones behind it, as a merged cell does. */
    private static Grid.Row joined(Grid.Row upper, Grid.Row lower, Heads heads) {
        List<String> both = new ArrayList<>();
        String group = "";
        for (int i = 0; i < Math.max(upper.cells().size(), lower.cells().size()); i++) {
            String below = lower.cell(i);
            group = upper.cell(i).isEmpty() ? (below.isEmpty() ? "" : group) : upper.cell(i);
            String whole = (group + " " + below).strip();
            both.add(heads.knows(whole) || !heads.knows(below) ? whole : below);
        }
        return lower.with(both);
    }
}
