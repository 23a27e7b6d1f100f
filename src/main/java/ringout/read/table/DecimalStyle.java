package ringout.read.table;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Whether the numbers of a table have a decimal comma or a decimal point, told by those that can only be read one way.
 * {@code 1,250} is 1250 beside {@code 0.5} and 1.25 beside {@code 0,5}; alone it is doubtful, and is asked about.
 */
enum DecimalStyle {
    /** Decimal comma. */
    COMMA,
    /** Decimal point. */
    POINT,
    /** No number tells, or numbers of both kinds. */
    UNTOLD;

    private static final int LONGEST = 60;

    private static final Pattern ONLY_COMMA =
            Pattern.compile("(?<![\\d.,])[+-]?(0,\\d+|\\d+,(\\d{1,2}|\\d{4,})|\\d{1,3}(\\.\\d{3})+,\\d+)(?![\\d.,])");
    private static final Pattern ONLY_POINT = Pattern.compile(
            "(?<![\\d.,])[+-]?(0?\\.\\d+|\\d+\\.(\\d{1,2}|\\d{4,})|\\d{1,3}(,\\d{3})+\\.\\d+)(?![\\d.,])");
    private static final Pattern DOUBTFUL = Pattern.compile("^([+-]?[1-9]\\d{0,2})([.,])(\\d{3})(?![\\d.,])(.*)$");

    /** The style of a table's numbers. */
    static DecimalStyle of(List<String> cells) {
        boolean comma = cells.stream()
                .anyMatch(cell -> holds(cell, ',') && ONLY_COMMA.matcher(cell).find());
        boolean point = cells.stream()
                .anyMatch(cell -> holds(cell, '.') && ONLY_POINT.matcher(cell).find());
        return comma == point ? UNTOLD : comma ? COMMA : POINT;
    }

    private static boolean holds(String cell, char mark) {
        return cell.length() <= LONGEST && cell.indexOf(mark) >= 0;
    }

    /** Whether a number can be read in two ways. */
    boolean doubtful(String cell) {
        var matcher = DOUBTFUL.matcher(cell);
        if (!matcher.matches()) {
            return false;
        }
        boolean comma = matcher.group(2).equals(",");
        return this == UNTOLD ? comma : this == COMMA && !comma;
    }

    /** A number with a decimal point, so that it can be read one way only. */
    String plain(String cell) {
        var matcher = DOUBTFUL.matcher(cell);
        if (!matcher.matches() || matcher.group(2).equals(".")) {
            return cell;
        }
        return matcher.group(1) + (this == POINT ? "" : ".") + matcher.group(3) + matcher.group(4);
    }

    /** The two ways to read a doubtful number, for the question. */
    static String question(String cell) {
        return DOUBTFUL.matcher(cell).replaceFirst("write $1$3 or $1.$3");
    }
}
