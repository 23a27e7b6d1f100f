package ringout.model.shape;

import java.math.BigDecimal;
import java.util.Locale;
import ringout.model.Awg;
import ringout.model.End;
import ringout.model.PinMap;
import ringout.model.Word;
import ringout.text.Characters;

/** Values of one cell: from text and to text. */
public final class Scalars {
    /** Numbers, words and pin maps are shorter; the limit keeps junk from being looked at for long. */
    private static final int LONGEST = 4000;

    private Scalars() {}

    /** Reads a value of a field from text; the text is not empty and not a mark such as "?". */
    public static Parsed parse(Slot slot, String text) {
        Class<?> type = slot.type();
        if (type == String.class || type == End.class) {
            return words(type, text);
        }
        if (text.length() > LONGEST) {
            return new Parsed.Bad("'" + text.substring(0, 40) + "...' is too long", "");
        }
        if (type == Double.class) {
            return Numbers.decimal(text, FieldUnit.of(slot.name()));
        }
        if (type == Integer.class) {
            return Numbers.whole(text);
        }
        if (type == Boolean.class) {
            return yesNo(text);
        }
        if (type == Awg.class) {
            return WireSizes.awg(text);
        }
        if (type == PinMap.class) {
            return PinMaps.parse(text);
        }
        return Words.parse(type, text);
    }

    private static Parsed words(Class<?> type, String text) {
        int bad = Characters.unprintable(text);
        if (bad >= 0) {
            return new Parsed.Bad(
                    "holds a character that cannot be printed, " + Characters.code(text.charAt(bad)) + ", as its "
                            + (bad + 1) + ". letter",
                    "take it out");
        }
        return new Parsed.Good(type == End.class ? new End(text) : text);
    }

    private static Parsed yesNo(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes", "y", "true", "x", "1", "on" -> new Parsed.Good(true);
            case "no", "n", "false", "0", "off", "-" -> new Parsed.Good(false);
            default -> new Parsed.Bad("'" + text + "' is neither yes nor no", "write yes, no or ?");
        };
    }

    /** Whether a text is a number without a unit of measure. */
    public static boolean isBareNumber(String text) {
        return text.length() <= LONGEST && Numbers.isBare(text);
    }

    /** The value as text, in the form {@link #parse} reads. */
    public static String write(Object value) {
        if (value instanceof Word word) {
            return word.word();
        }
        if (value instanceof Double number) {
            return number(number);
        }
        if (value instanceof Boolean flag) {
            return flag ? "yes" : "no";
        }
        return value.toString();
    }

    /** A number without trailing zeros and without an exponent. */
    public static String number(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            return Long.toString((long) value);
        }
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    /** The empty value of a required field. */
    static Object blank(Class<?> type) {
        if (type == End.class) {
            return new End("");
        }
        return type == PinMap.class ? new PinMap(java.util.List.of()) : "";
    }
}
