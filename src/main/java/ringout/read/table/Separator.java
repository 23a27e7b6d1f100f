package ringout.read.table;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Finds out what separates the cells of a table. */
final class Separator {
    private static final char[] USUAL = {',', ';', '\t', '|'};
    private static final int LOOK_AT = 12;

    private Separator() {}

    /** The separator whose cells make the most known column heads in one of the first lines; else the most cells. */
    static char of(String text, Predicate<String> isHead) {
        List<String> lines =
                text.lines().filter(line -> !line.isBlank()).limit(LOOK_AT).toList();
        if (!lines.isEmpty() && lines.get(0).matches("(?i)\"?sep=[^\"\\w]\"?")) {
            return lines.get(0).replaceAll("(?i)\"?sep=(.)\"?", "$1").charAt(0);
        }
        char best = USUAL[0];
        long most = -1;
        for (char candidate : USUAL) {
            long score = 0;
            for (String line : lines) {
                List<String> cells = cells(line, candidate);
                long heads = cells.stream().filter(isHead).count();
                score = Math.max(score, heads * 1000 + Math.min(999, cells.size() - 1));
            }
            if (score > most) {
                most = score;
                best = candidate;
            }
        }
        return best;
    }

    /** The cells of one line, quotes taken away; only for looking at heads. */
    static List<String> cells(String line, char separator) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == separator && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
