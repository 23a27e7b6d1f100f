package ringout.read.cells;

import java.util.List;

/**
 * One row of a spreadsheet.
 *
 * @param number 1-based number the spreadsheet shows for it
 * @param hidden whether the owner has hidden it
 * @param cells its cells from column A on
 */
public record RowCells(int number, boolean hidden, List<CellText> cells) {
    /** The texts of its cells. */
    public List<String> texts() {
        return cells.stream().map(CellText::text).toList();
    }

    /** Whether it holds nothing but blanks. */
    public boolean isBlank() {
        return cells.stream().allMatch(cell -> cell.text().isBlank());
    }

    /** Whether it is a remark of its owner: its first cell with anything in it starts with #, and is more than that. */
    public boolean isComment() {
        return cells.stream()
                .map(cell -> cell.text().strip())
                .filter(text -> !text.isEmpty())
                .findFirst()
                .filter(text -> text.length() > 1 && text.startsWith("#"))
                .isPresent();
    }
}
