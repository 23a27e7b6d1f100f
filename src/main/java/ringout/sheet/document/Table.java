package ringout.sheet.document;

import java.util.List;

/**
 * A table of a document.
 *
 * @param name for a file or a leaf of a workbook: lower case, words joined by a dash, no other table of the pack has it
 * @param title what it lists; empty when the section says it
 * @param groupHead what the groups are: plug, zone; empty when the table is not divided
 * @param columns from left to right
 * @param groups its rows, at least one group
 */
public record Table(String name, String title, String groupHead, List<Column> columns, List<Group> groups)
        implements Block {
    /** Keeps its own copies, and sees that every row has a cell a column. */
    public Table {
        columns = List.copyOf(columns);
        groups = List.copyOf(groups);
        for (Group group : groups) {
            for (Row row : group.rows()) {
                if (row.cells().size() != columns.size()) {
                    throw new IllegalArgumentException("table " + name + " has " + columns.size()
                            + " columns and a row of " + row.cells().size() + ": " + row.cells());
                }
            }
        }
    }

    /** {@return a table to be filled row by row} */
    public static TableBuilder named(String name, Column... columns) {
        return new TableBuilder(name, List.of(columns));
    }

    /** {@return all its rows, group after group} */
    public List<Row> rows() {
        return groups.stream().flatMap(group -> group.rows().stream()).toList();
    }

    /** {@return whether more is said about a group than its title} */
    public boolean detailed() {
        return groups.stream().anyMatch(group -> !group.details().isEmpty());
    }

    /** {@return whether its rows are divided into groups} */
    public boolean divided() {
        return !groupHead.isEmpty();
    }

    /** {@return the number of a column by its head} */
    public int column(String head) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).head().equals(head)) {
                return i;
            }
        }
        throw new IllegalArgumentException("table " + name + " has no column " + head);
    }

    /** {@return the cells of a column, top to bottom} */
    public List<String> cells(String head) {
        int column = column(head);
        return rows().stream().map(row -> row.cells().get(column)).toList();
    }
}
