package ringout.read.cells;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import ringout.model.shape.Scalars;

/** A cell of a workbook as its owner reads it. */
final class CellForms {
    /** A spreadsheet keeps fifteen digits of a number. */
    private static final double MOST = 1e15;

    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
    private static final LocalDate DAY_ZERO_1904 = LocalDate.of(1904, 1, 1);

    /** A unit of measure that the format puts behind the number: {@code 0" mm"}. */
    private static final Pattern UNIT = Pattern.compile("\"\\s*(\\p{L}[\\p{L}\\d\u00b2/]*)\\s*\"\\s*$");

    private CellForms() {}

    static CellText of(Cell cell, boolean since1904) {
        String raw = Objects.requireNonNullElse(cell.getRawValue(), "");
        return switch (cell.getType()) {
            case EMPTY -> CellText.EMPTY;
            case ERROR -> new CellText(raw.isEmpty() ? "#error" : raw, CellText.Kind.NO_VALUE);
            case BOOLEAN -> CellText.of(raw.equals("1") || raw.equalsIgnoreCase("true") ? "yes" : "no");
            case STRING -> CellText.of(Objects.requireNonNullElse(cell.getText(), ""));
            case NUMBER, FORMULA -> valued(cell, raw, since1904);
        };
    }

    private static CellText valued(Cell cell, String raw, boolean since1904) {
        boolean number = raw.matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
        if (!number || cell.getValue() instanceof String) {
            boolean missing = cell.getType() == CellType.FORMULA && (raw.isEmpty() || raw.startsWith("#"));
            return missing
                    ? new CellText(raw.isEmpty() ? "(formula without a value)" : raw, CellText.Kind.NO_VALUE)
                    : CellText.of(raw);
        }
        String format = Objects.requireNonNullElse(cell.getDataFormatString(), "");
        return number(Double.parseDouble(raw), format, since1904);
    }

    private static CellText number(double value, String format, boolean since1904) {
        if (isDay(format) && value >= 0 && value < 2_958_466) {
            return new CellText(day(value, since1904), CellText.Kind.DAY);
        }
        if (Math.abs(value) >= MOST) {
            return new CellText(Scalars.number(value), CellText.Kind.CUT);
        }
        if (format.endsWith("%")) {
            return new CellText(Scalars.number(rounded(value * 100)) + " %", CellText.Kind.TEXT);
        }
        Matcher unit = UNIT.matcher(format);
        return unit.find()
                ? new CellText(Scalars.number(value) + " " + unit.group(1), CellText.Kind.TEXT)
                : new CellText(Scalars.number(value), CellText.Kind.NUMBER);
    }

    private static double rounded(double value) {
        return Double.parseDouble(String.format(Locale.ROOT, "%.12g", value));
    }

    /** The day, and the time only when there is one. */
    private static String day(double value, boolean since1904) {
        LocalDate day = (since1904 ? DAY_ZERO_1904 : DAY_ZERO).plusDays((long) Math.floor(value));
        long minutes = Math.round((value - Math.floor(value)) * 24 * 60);
        return minutes == 0
                ? day.toString()
                : String.format(Locale.ROOT, "%s %02d:%02d", day, minutes / 60 % 24, minutes % 60);
    }

    /** Whether a number format shows days (ECMA-376 part 1, 18.8.30): y, m or d outside of quotes, brackets and escapes. */
    private static boolean isDay(String format) {
        String bare = format.toLowerCase(Locale.ROOT)
                .replaceAll("\"[^\"]*\"", "")
                .replaceAll("\\[[^\\]]*\\]", "")
                .replaceAll("\\\\.", "");
        return !bare.contains("general") && (bare.indexOf('d') >= 0 || bare.indexOf('y') >= 0 || bare.contains("mmm"));
    }
}
