package ringout.model.shape;

import java.time.DateTimeException;
import java.time.LocalDate;
import ringout.model.Datum;
import ringout.model.Origin;

/**
 * A value with where it comes from and when, as one writes it in a cell: {@code 620 (measured 2026-03-01)}.
 *
 * @param text the value
 * @param origin where it comes from; the list when nothing is said
 * @param date when it was taken, YYYY-MM-DD, or empty
 */
public record Sourced(String text, Origin origin, String date) {
    /** Splits a cell; what stands in brackets and is neither origin nor date belongs to the value. */
    public static Sourced of(String cell) {
        int open = cell.lastIndexOf('(');
        if (open <= 0 || !cell.endsWith(")")) {
            return new Sourced(cell, Origin.LIST, "");
        }
        String value = cell.substring(0, open).strip();
        String inside = cell.substring(open + 1, cell.length() - 1).strip();
        int blank = inside.lastIndexOf(' ');
        String last = inside.substring(blank + 1);
        String date = isDate(last) ? last : "";
        String word = date.isEmpty()
                ? inside
                : inside.substring(0, Math.max(0, blank)).strip();
        if (!value.isEmpty() && word.isEmpty() && !date.isEmpty()) {
            return new Sourced(value, Origin.LIST, date);
        }
        return !value.isEmpty() && Words.parse(Origin.class, word) instanceof Parsed.Good good
                ? new Sourced(value, (Origin) good.value(), date)
                : new Sourced(cell, Origin.LIST, "");
    }

    /** Whether a text is a day as YYYY-MM-DD. */
    public static boolean isDate(String text) {
        if (text.length() != 10 || text.charAt(4) != '-') {
            return false;
        }
        try {
            return LocalDate.parse(text).getYear() >= 0;
        } catch (DateTimeException e) {
            return false;
        }
    }

    /** What is written behind a value to say its origin and date; empty when there is nothing to say. */
    static String suffix(Datum.Known<?> known) {
        if (known.origin() == Origin.LIST) {
            return known.date().isEmpty() ? "" : " (" + known.date() + ")";
        }
        return " (" + known.origin().word() + (known.date().isEmpty() ? "" : " " + known.date()) + ")";
    }
}
