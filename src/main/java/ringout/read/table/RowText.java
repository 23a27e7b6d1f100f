package ringout.read.table;

import java.util.ArrayList;
import java.util.List;

/** One line of a table as its owner wrote it, whose cells can be changed one by one. */
final class RowText {
    private final char separator;
    private final String end;
    private String text;
    private boolean dropped;

    private RowText(String text, String end, char separator) {
        this.text = text;
        this.end = end;
        this.separator = separator;
    }

    /** All lines of a text; a cell that runs over several lines makes more lines than rows, which the reader then tells. */
    static List<RowText> all(String text, char separator) {
        List<RowText> lines = new ArrayList<>();
        int start = 0;
        while (start < text.length()) {
            int stop = start;
            while (stop < text.length() && text.charAt(stop) != '\n' && text.charAt(stop) != '\r') {
                stop++;
            }
            int next = stop;
            if (next < text.length()) {
                next += text.startsWith("\r\n", next) ? 2 : 1;
            }
            lines.add(new RowText(text.substring(start, stop), text.substring(stop, next), separator));
            start = next;
        }
        return lines;
    }

    /** An empty line in the manner of another. */
    static RowText blank(RowText like) {
        return new RowText("", like.end.isEmpty() ? "\n" : like.end, like.separator);
    }

    /** The lines as one text. */
    static String joined(List<RowText> lines) {
        StringBuilder all = new StringBuilder();
        for (RowText line : lines) {
            if (!line.dropped) {
                boolean open = all.length() > 0
                        && all.charAt(all.length() - 1) != '\n'
                        && all.charAt(all.length() - 1) != '\r';
                all.append(open ? "\n" : "").append(line.text).append(line.end);
            }
        }
        return all.toString();
    }

    /** Takes the line out. */
    void drop() {
        dropped = true;
    }

    /** Gives a cell another text; cells the line lacks are made. */
    void set(int index, String cell) {
        int start = 0;
        for (int i = 0; i < index; i++) {
            int stop = cellEnd(start);
            if (stop == text.length()) {
                text += separator;
            }
            start = stop + 1;
        }
        text = text.substring(0, start) + quoted(cell) + text.substring(cellEnd(start));
    }

    /** Where a cell ends; a quote that stands alone in it is a ditto mark and opens nothing. */
    private int cellEnd(int start) {
        int open = blanks(start);
        boolean quoted = open < text.length() && text.charAt(open) == '"' && !ends(blanks(open + 1));
        int i = quoted ? closing(open + 1) : start;
        while (!ends(i)) {
            i++;
        }
        return i;
    }

    private int closing(int inside) {
        int i = inside;
        while (i < text.length()) {
            boolean quote = text.charAt(i++) == '"';
            if (quote && (i == text.length() || text.charAt(i) != '"')) {
                return i;
            }
            i += quote ? 1 : 0;
        }
        return i;
    }

    private int blanks(int start) {
        int i = start;
        while (!ends(i) && (text.charAt(i) == ' ' || text.charAt(i) == '\t')) {
            i++;
        }
        return i;
    }

    private boolean ends(int i) {
        return i >= text.length() || text.charAt(i) == separator;
    }

    private String quoted(String cell) {
        boolean plain = cell.indexOf(separator) < 0 && cell.indexOf('"') < 0;
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
