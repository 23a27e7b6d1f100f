package ringout.sheet.document;

import java.util.ArrayList;
import java.util.List;

/** Fills a table row by row. */
public final class TableBuilder {
    private final String name;
    private final List<Column> columns;
    private final List<Group> groups = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private String title = "";
    private String groupHead = "";
    private String group = "";
    private String details = "";

    TableBuilder(String name, List<Column> columns) {
        this.name = name;
        this.columns = columns;
    }

    /** Sets what the table lists. */
    public TableBuilder titled(String text) {
        title = text;
        return this;
    }

    /** Sets what the groups of the table are. */
    public TableBuilder by(String head) {
        groupHead = head;
        return this;
    }

    /** Starts a group; the rows that follow are in it. */
    public TableBuilder group(String text) {
        return group(text, "");
    }

    /** Starts a group with more to say about it. */
    public TableBuilder group(String text, String more) {
        close();
        group = text;
        details = more;
        return this;
    }

    /** Adds a row. */
    public TableBuilder row(String... cells) {
        return row(Row.Kind.LINE, cells);
    }

    /** Adds a row of a kind. */
    public TableBuilder row(Row.Kind kind, String... cells) {
        rows.add(new Row(List.of(cells), kind));
        return this;
    }

    /** {@return how many rows it has so far} */
    public int size() {
        return rows.size() + groups.stream().mapToInt(g -> g.rows().size()).sum();
    }

    private void close() {
        if (!rows.isEmpty()) {
            groups.add(new Group(group, details, rows));
            rows.clear();
        }
    }

    /** {@return the table as filled so far} */
    public Table table() {
        close();
        return new Table(name, title, groupHead, columns, groups);
    }
}
