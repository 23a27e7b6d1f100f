package ringout.read.cells;

import java.util.List;

/**
 * One table of a spreadsheet, every row of it: titles, blank rows and remarks too.
 *
 * @param name name of the worksheet; for a text file, that of the file without its ending
 * @param hidden whether the owner has hidden the worksheet
 * @param rows rows in order; one that holds nothing may be missing
 */
public record SheetCells(String name, boolean hidden, List<RowCells> rows) {}
