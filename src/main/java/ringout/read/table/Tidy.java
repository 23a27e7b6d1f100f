package ringout.read.table;

import java.util.Map;
import java.util.TreeMap;

/**
 * Makes the habits of hand-kept tables fit the rules of CSV (RFC 4180) before the parser sees them: a quote that stands
 * alone in its cell is a ditto mark and not the start of a quoted cell; a line that starts with # is a comment, whatever
 * it holds. Row numbers stay as they are.
 */
final class Tidy {
    private final String text;
    private final char separator;
    private final StringBuilder out;
    private int row = 1;
    private int openedAt;
    private final Map<Integer, String> remarks = new TreeMap<>();

    private Tidy(String text, char separator) {
        this.text = text;
        this.separator = separator;
        this.out = new StringBuilder(text.length() + 64);
    }

    /**
     * The outcome.
     *
     * @param text what the parser shall see
     * @param openQuote row of a quote that never closes, or 0
     * @param remarks comments as they stand, by their row
     */
    record Result(String text, int openQuote, Map<Integer, String> remarks) {}

    /** Tidies a text. */
    static Result of(String text, char separator) {
        Tidy tidy = new Tidy(text, separator);
        tidy.run();
        return new Result(tidy.out.toString(), tidy.openedAt, tidy.remarks);
    }

    private void run() {
        int i = 0;
        boolean lineStart = true;
        while (i < text.length()) {
            int start = blanks(i);
            if (lineStart && start < text.length() && text.charAt(start) == '#' && !(row == 1 && heads(start))) {
                remarks.put(row, text.substring(i, lineEnd(i)));
                i = lineEnd(i);
            } else if (start < text.length() && text.charAt(start) == '"') {
                i = alone(start) ? ditto(start) : quoted(start);
            }
            i = plain(i);
            lineStart = i < text.length() && text.charAt(i) != separator;
            i = end(i);
        }
    }

    /** A first line such as {@code #;from;to} is a row of heads and not a comment. */
    private boolean heads(int start) {
        int next = blanks(start + 1);
        return next < text.length() && text.charAt(next) == separator;
    }

    private int blanks(int i) {
        int next = i;
        while (next < text.length()
                && (text.charAt(next) == ' ' || text.charAt(next) == '\t')
                && text.charAt(next) != separator) {
            next++;
        }
        return next;
    }

    private boolean ends(int i) {
        return i >= text.length() || text.charAt(i) == separator || text.charAt(i) == '\n' || text.charAt(i) == '\r';
    }

    private boolean alone(int quote) {
        return ends(blanks(quote + 1));
    }

    private int ditto(int quote) {
        out.append("\"\"\"\"");
        return blanks(quote + 1);
    }

    private int quoted(int quote) {
        int opened = row;
        out.append('"');
        int i = quote + 1;
        while (i < text.length()) {
            char c = text.charAt(i++);
            out.append(c);
            if (c == '"') {
                if (i >= text.length() || text.charAt(i) != '"') {
                    return after(i);
                }
                out.append(text.charAt(i++));
            }
        }
        out.append('"');
        openedAt = openedAt == 0 ? opened : openedAt;
        return i;
    }

    /** What stands between a closing quote and the end of the cell belongs to the cell; blanks do not. */
    private int after(int i) {
        int next = blanks(i);
        if (ends(next)) {
            return next;
        }
        out.setLength(out.length() - 1);
        for (next = i; !ends(next); next++) {
            out.append(text.charAt(next) == '"' ? "\"\"" : text.substring(next, next + 1));
        }
        out.append('"');
        return next;
    }

    private int plain(int i) {
        int next = i;
        while (!ends(next)) {
            out.append(text.charAt(next++));
        }
        return next;
    }

    private int end(int i) {
        if (i >= text.length()) {
            return i;
        }
        char c = text.charAt(i);
        if (c == separator) {
            out.append(c);
            return i + 1;
        }
        row++;
        out.append('\n');
        return c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n' ? i + 2 : i + 1;
    }

    private int lineEnd(int i) {
        int next = i;
        while (next < text.length() && text.charAt(next) != '\n' && text.charAt(next) != '\r') {
            next++;
        }
        return next;
    }
}
