package ringout.model.seal;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** The one form of a number and of a string by RFC 8785, sections 3.2.2.2 and 3.2.2.3. */
final class JsonForm {
    /** A double is told from its neighbours by 17 digits at most (IEEE 754). */
    private static final int MOST_DIGITS = 17;

    private JsonForm() {}

    static String string(String text) {
        StringBuilder json = new StringBuilder(text.length() + 2).append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> json.append("\\\"");
                case '\\' -> json.append("\\\\");
                case '\b' -> json.append("\\b");
                case '\t' -> json.append("\\t");
                case '\n' -> json.append("\\n");
                case '\f' -> json.append("\\f");
                case '\r' -> json.append("\\r");
                default -> {
                    if (c < ' ') {
                        json.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
                    } else {
                        json.append(c);
                    }
                }
            }
        }
        return json.append('"').toString();
    }

    /**
     * The shortest digits that give the number back, laid out as ECMAScript does (ECMA-262, Number::toString): plain
     * between 1e-6 and 1e21, with an exponent beyond. Not by {@code Double.toString}, whose digits differ between releases
     * of the platform.
     */
    static String number(double value) {
        if (value == 0) {
            return "0";
        }
        BigDecimal shortest = shortest(value).stripTrailingZeros();
        int exponent = shortest.precision() - shortest.scale() - 1;
        if (exponent >= -6 && exponent < 21) {
            return shortest.toPlainString();
        }
        String digits = shortest.unscaledValue().abs().toString();
        String mantissa = digits.length() == 1 ? digits : digits.charAt(0) + "." + digits.substring(1);
        return (value < 0 ? "-" : "") + mantissa + "e" + (exponent < 0 ? "-" : "+") + Math.abs(exponent);
    }

    private static BigDecimal shortest(double value) {
        BigDecimal exact = new BigDecimal(value);
        for (int digits = 1; digits < MOST_DIGITS; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (rounded.doubleValue() == value) {
                return rounded;
            }
        }
        return exact.round(new MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN));
    }
}
