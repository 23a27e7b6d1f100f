package ringout.read.table;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import ringout.model.shape.Slot;
import ringout.read.cells.CellText;

/**
 * What a spreadsheet makes of a cell without asking: a pin map 1-2 becomes a day, a serial number a power of ten whose last
 * digits are gone, a formula an error. What was meant can only be asked.
 */
final class Damage {
    private static final Set<String> FREE = Set.of(
            "note",
            "what",
            "title",
            "reason",
            "conditions",
            "measure",
            "designation",
            "printedName",
            "face",
            "message");
    private static final Set<String> DAYS = Set.of("date", "asOf", "done", "ends");

    private static final String MONTH =
            "(jan|feb|m\u00e4r|mar|mrz|avr|apr|mai|may|jun|jul|aug|sep|okt|oct|nov|dez|dec)";
    private static final Pattern DAY = Pattern.compile(
            "(?iu)\\d{1,2}[-. ] ?" + MONTH + "\\p{L}*\\.?([-. ]\\d{2,4})?|" + MONTH + "\\p{L}*[-. ]\\d{1,4}"
                    + "|\\d{4}-\\d{2}-\\d{2}([ T]\\d{2}:\\d{2}(:\\d{2})?)?|\\d{1,2}[./]\\d{1,2}[./](19|20)\\d{2}");
    private static final Pattern POWER = Pattern.compile("[+-]?\\d([.,]\\d+)?E\\+\\d{2,3}");

    private Damage() {}

    /** What happened to a cell, in words; nothing when it can stand as it is. */
    static Optional<String> of(Column column, String text, CellText.Kind kind) {
        boolean day = isDay(column);
        if (kind == CellText.Kind.NO_VALUE) {
            return Optional.of("the formula here has no value: " + text);
        }
        if (day || isFree(column) || text.length() > 40) {
            return Optional.empty();
        }
        if (kind == CellText.Kind.DAY
                || (!column.isNumber() && DAY.matcher(text).matches())) {
            return Optional.of("the spreadsheet made a day of this: " + text);
        }
        if (kind == CellText.Kind.CUT
                || (!column.isNumber() && POWER.matcher(text).matches())) {
            return Optional.of("the spreadsheet cut the last digits of this: " + text);
        }
        return Optional.empty();
    }

    private static boolean isDay(Column column) {
        return slot(column)
                .map(Slot::name)
                .filter(name -> DAYS.contains(name) || name.endsWith("Date") || name.endsWith("Until"))
                .isPresent();
    }

    private static boolean isFree(Column column) {
        return slot(column).map(Slot::name).filter(FREE::contains).isPresent();
    }

    private static Optional<Slot> slot(Column column) {
        if (column.target() instanceof Column.Target.Own own) {
            return Optional.of(own.slot());
        }
        return column.target() instanceof Column.Target.Inner inner ? Optional.of(inner.slot()) : Optional.empty();
    }
}
