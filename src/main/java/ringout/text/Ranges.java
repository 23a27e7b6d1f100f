package ringout.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Ranges such as {@code ESC1..6}: a row, or an item of a list, for each. Also {@code ESC1..ESC6} and {@code W01..06}. */
public final class Ranges {
    /** More than this is taken for a slip of the pen. */
    public static final int MOST = 1000;

    private static final int LONGEST = 200;

    private static final Pattern RANGE =
            Pattern.compile("([A-Za-z_]*)(\\d{1,9})(?:\\.{2,3}|\u2026)([A-Za-z_]*)(\\d{1,9})");

    private Ranges() {}

    /** Whether a cell holds a range; a cell with blanks is a sentence and not a range. */
    public static boolean is(String cell) {
        return cell.length() <= LONGEST
                && (cell.contains("..") || cell.contains("\u2026"))
                && cell.chars().noneMatch(Character::isWhitespace)
                && matcher(cell) != null;
    }

    private static @org.jspecify.annotations.Nullable Matcher matcher(String cell) {
        Matcher matcher = RANGE.matcher(cell);
        while (matcher.find()) {
            String again = matcher.group(3).toLowerCase(Locale.ROOT);
            if (again.isEmpty() || again.equals(matcher.group(1).toLowerCase(Locale.ROOT))) {
                return matcher;
            }
        }
        return null;
    }

    /** How many things a cell names: 1 without a range, 0 when its ranges do not go in step or are too long. */
    public static int count(String cell) {
        int count = 1;
        String rest = cell;
        for (Matcher matcher = matcher(rest); is(cell) && matcher != null; matcher = matcher(rest)) {
            long steps = Math.abs(Long.parseLong(matcher.group(4)) - Long.parseLong(matcher.group(2))) + 1;
            if (steps > MOST || (count > 1 && steps != count)) {
                return 0;
            }
            count = (int) steps;
            rest = rest.substring(matcher.end());
        }
        return count;
    }

    /** What a cell says in one step of its range, from 0. */
    public static String step(String cell, int step) {
        if (!is(cell)) {
            return cell;
        }
        StringBuilder text = new StringBuilder();
        String rest = cell;
        for (Matcher matcher = matcher(rest); matcher != null; matcher = matcher(rest)) {
            text.append(rest, 0, matcher.start()).append(matcher.group(1)).append(number(matcher, step));
            rest = rest.substring(matcher.end());
        }
        return text.append(rest).toString();
    }

    private static String number(Matcher matcher, int step) {
        String first = matcher.group(2);
        long from = Long.parseLong(first);
        long to = Long.parseLong(matcher.group(4));
        String digits = Long.toString(to >= from ? from + step : from - step);
        boolean padded = first.startsWith("0") && first.length() > 1;
        return padded ? "0".repeat(Math.max(0, first.length() - digits.length())) + digits : digits;
    }

    /** The items of a list, each range replaced by what it names. */
    public static List<String> items(List<String> items) {
        List<String> all = new ArrayList<>();
        for (String item : items) {
            int count = count(item);
            for (int i = 0; i < Math.max(1, count); i++) {
                all.add(count == 0 ? item : step(item, i));
            }
        }
        return all;
    }
}
