package ringout.model.shape;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as people type them: decimal comma, unit behind the number, a space or apostrophe between thousands. */
final class Numbers {
    private static final Pattern START =
            Pattern.compile("[+-]?(\\d([\\d ',.]*\\d)?\\.?|[.,]\\d+)([eE][+-]?\\d{1,3}(?![A-Za-z\\d]))?");

    /** Inches as a rule shows them: {@code 11 1/2}, {@code 3/4}. */
    private static final Pattern FRACTION =
            Pattern.compile("(?:(\\d{1,4})[ -])?(\\d{1,2})/(2|4|8|16|32|64)(?=\\s*(?:in|\"))(.*)");

    private Numbers() {}

    /** A number in the unit of its field. */
    static Parsed decimal(String text, FieldUnit unit) {
        String plain = fraction(text.strip().replace('\u2212', '-').replace("\u00a0", " "));
        int end = end(plain);
        String suffix = plain.substring(end).strip().toLowerCase(Locale.ROOT);
        if (plain.substring(0, end).matches("[+-]?[1-9]\\d{0,2},\\d{3}")) {
            String digits = plain.substring(0, end);
            return new Parsed.Bad(
                    "'" + text + "' can be read in two ways",
                    "write " + digits.replace(",", "") + " or " + digits.replace(',', '.'));
        }
        Optional<Double> number = number(plain.substring(0, end));
        if (number.isEmpty()) {
            return new Parsed.Bad("'" + text + "' is not a number", "write a number or ?");
        }
        if (suffix.isEmpty()) {
            return new Parsed.Good(number.get());
        }
        Optional<Double> factor = unit.factor(suffix);
        return factor.<Parsed>map(f -> new Parsed.Good(f == 1.0 ? number.get() : exact(number.get() * f)))
                .orElseGet(() -> new Parsed.Bad(
                        "'" + text + "': unit '" + suffix + "' does not fit here",
                        unit.symbol().isEmpty() ? "this field has no unit" : "this field is in " + unit.symbol()));
    }

    private static String fraction(String text) {
        Matcher inches = FRACTION.matcher(text);
        if (text.length() > 30 || !inches.matches()) {
            return text;
        }
        double whole = inches.group(1) == null ? 0 : Double.parseDouble(inches.group(1));
        double value = whole + Double.parseDouble(inches.group(2)) / Double.parseDouble(inches.group(3));
        return value + inches.group(4);
    }

    private static double exact(double value) {
        return Double.parseDouble(String.format(Locale.ROOT, "%.12g", value));
    }

    /** Where the number ends and its unit begins; the unit may end in a digit, as mm2 does. */
    private static int end(String plain) {
        Matcher matcher = START.matcher(plain);
        return matcher.lookingAt() ? matcher.end() : 0;
    }

    /** Whether a text is a number without a unit. */
    static boolean isBare(String text) {
        String plain = text.strip().replace('\u2212', '-').replace("\u00a0", " ");
        return !plain.isEmpty() && end(plain) == plain.length();
    }

    private static Optional<Double> number(String text) {
        String plain = text.strip();
        boolean comma = plain.indexOf(',') >= 0;
        boolean point = plain.indexOf('.') >= 0;
        if (comma && point) {
            plain = plain.lastIndexOf(',') > plain.lastIndexOf('.')
                    ? plain.replace(".", "").replace(',', '.')
                    : plain.replace(",", "");
        } else if (comma) {
            plain = plain.replace(',', '.');
        }
        plain = plain.replaceAll("(?<=\\d)[ '](?=\\d{3})", "");
        if (!plain.matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?")) {
            return Optional.empty();
        }
        double value = Double.parseDouble(plain);
        return Double.isFinite(value) ? Optional.of(value + 0.0) : Optional.empty();
    }

    /** A whole number, also hexadecimal with 0x. */
    static Parsed whole(String text) {
        String plain = text.strip();
        try {
            if (plain.toLowerCase(Locale.ROOT).startsWith("0x")) {
                return new Parsed.Good(Integer.parseInt(plain.substring(2), 16));
            }
            if (plain.matches("[+-]?\\d+([.,]0+)?")) {
                return new Parsed.Good(Integer.parseInt(plain.replaceAll("[.,]0+$", "")));
            }
        } catch (NumberFormatException tooLarge) {
            return new Parsed.Bad("'" + text + "' is too large for a whole number", "");
        }
        return new Parsed.Bad("'" + text + "' is not a whole number", "write a whole number or ?");
    }
}
