package ringout.text;

/**
 * A place in one of the user's files, as the user would count it.
 *
 * @param file file name as given by the user, empty when the place is not in a file
 * @param line 1-based line of a text file, or row of a table
 * @param column 1-based column of a text file, or cell of a table row; 0 for the whole row
 * @param cell head of the table column, empty when there is none
 */
public record Span(String file, int line, int column, String cell) implements Comparable<Span> {
    private static final String SHEET = ", sheet ";

    /** No place at all: something the program itself added. */
    public static final Span NONE = new Span("", 0, 0, "");

    /** A place in a text file. */
    public static Span at(String file, int line, int column) {
        return new Span(file, line, column, "");
    }

    /** A whole row of a table. */
    public static Span row(String file, int row) {
        return new Span(file, row, 0, "");
    }

    /** How a worksheet of a workbook is called as a file: {@code list.xlsx, sheet Leads}. */
    public static String sheet(String workbook, String sheet) {
        return workbook + SHEET + sheet;
    }

    /** The file itself, without the worksheet. */
    public String workbook() {
        int at = file.indexOf(SHEET);
        return at < 0 ? file : file.substring(0, at);
    }

    /** Name of the worksheet; empty when the place is not in a workbook. */
    public String sheet() {
        int at = file.indexOf(SHEET);
        return at < 0 ? "" : file.substring(at + SHEET.length());
    }

    /** Letters of a column as a spreadsheet shows them: 1 is A, 27 is AA. */
    public static String letters(int column) {
        StringBuilder letters = new StringBuilder();
        for (int rest = column; rest > 0; rest = (rest - 1) / 26) {
            letters.insert(0, (char) ('A' + (rest - 1) % 26));
        }
        return letters.toString();
    }

    /** Address of the cell as a spreadsheet shows it: D14; empty for a whole row. */
    public String address() {
        return column == 0 || line == 0 ? "" : letters(column) + line;
    }

    /** One cell of this row. */
    public Span cell(int number, String head) {
        return new Span(file, line, number, head);
    }

    /** Whether this is a place in a file. */
    public boolean known() {
        return line > 0;
    }

    /** The place in words: {@code leads.csv row 34, `to`} for a table, {@code list.xlsx, sheet Leads, cell D14} for a workbook, {@code aircraft.json line 12, column 5} else. */
    public String words() {
        if (!known()) {
            return file.isEmpty() ? "(added by the program)" : file;
        }
        if (!sheet().isEmpty()) {
            return file
                    + (column == 0
                            ? ", row " + line
                            : ", cell " + address() + (cell.isEmpty() ? "" : ", `" + cell + "`"));
        }
        if (!cell.isEmpty()) {
            return file + " row " + line + ", `" + cell + "`";
        }
        return column == 0 ? file + " row " + line : file + " line " + line + ", column " + column;
    }

    @Override
    public int compareTo(Span other) {
        int byFile = file.compareTo(other.file);
        int byLine = byFile != 0 ? byFile : Integer.compare(line, other.line);
        return byLine != 0 ? byLine : Integer.compare(column, other.column);
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof Span that
                        && line == that.line
                        && column == that.column
                        && file.equals(that.file)
                        && cell.equals(that.cell));
    }

    @Override
    public int hashCode() {
        return 31 * (31 * line + column) + file.hashCode();
    }
}
