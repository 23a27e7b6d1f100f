package ringout.draw.matrix;

import java.util.List;

/**
 * One matrix.
 *
 * @param title above it
 * @param rowHead what the rows are
 * @param columns heads of the columns, written upwards
 * @param tailHeads heads of the columns of text on the right
 * @param rows from the top
 * @param lines explanations below
 */
public record Block(
        String title,
        String rowHead,
        List<String> columns,
        List<String> tailHeads,
        List<Row> rows,
        List<String> lines) {
    /**
     * A row.
     *
     * @param name what it is; wrapped when long
     * @param glyphs one for each column
     * @param tails texts on the right; the last is wrapped when long
     */
    public record Row(String name, List<Glyph> glyphs, List<String> tails) {
        /** Keeps unmodifiable copies. */
        public Row {
            glyphs = List.copyOf(glyphs);
            tails = List.copyOf(tails);
        }
    }

    /** Keeps unmodifiable copies and refuses rows of another length. */
    public Block {
        columns = List.copyOf(columns);
        tailHeads = List.copyOf(tailHeads);
        rows = List.copyOf(rows);
        lines = List.copyOf(lines);
        for (Row row : rows) {
            if (row.glyphs().size() != columns.size() || row.tails().size() != tailHeads.size()) {
                throw new IllegalArgumentException("row " + row.name() + " does not fit its heads");
            }
        }
    }

    /** The same matrix with some of its columns and rows, and its explanations only if wanted. */
    Block part(int fromColumn, int toColumn, int fromRow, int toRow, boolean withLines) {
        List<Row> some = rows.subList(fromRow, toRow).stream()
                .map(row -> new Row(row.name(), row.glyphs().subList(fromColumn, toColumn), row.tails()))
                .toList();
        boolean whole = fromRow == 0 && fromColumn == 0;
        return new Block(
                whole ? title : title + ", continued",
                rowHead,
                columns.subList(fromColumn, toColumn),
                tailHeads,
                some,
                withLines ? lines : List.of());
    }
}
