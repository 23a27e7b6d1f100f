package ringout.present.csv;

import java.util.List;

/**
 * One row of a table.
 *
 * @param keys which records it belongs to, outermost first
 * @param texts text of each possible column
 */
record SheetRow(List<String> keys, List<String> texts) {}
