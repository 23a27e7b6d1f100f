package ringout.text;

import java.util.Locale;

/** Characters that no file of names and values should hold: they cannot be printed, compared by eye or stored in XML. */
public final class Characters {
    private Characters() {}

    /** Position of the first character that cannot be printed, or -1; tab and line ends are fine. */
    public static int unprintable(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' ? (c != '\t' && c != '\n' && c != '\r') : c >= 0x7f && bad(text, i, c)) {
                return i;
            }
        }
        return -1;
    }

    private static boolean bad(String text, int i, char c) {
        if (c < 0xa0 || c >= 0xfffe) {
            return true;
        }
        if (Character.isHighSurrogate(c)) {
            return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
        }
        return Character.isLowSurrogate(c) && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
    }

    /** How to name a character: {@code U+0007}. */
    public static String code(char c) {
        return String.format(Locale.ROOT, "U+%04X", (int) c);
    }

    /** A text without blanks around it; blanks are also the ones that do not break and the ones without width. */
    public static String strip(String text) {
        int start = 0;
        int end = text.length();
        while (start < end && blank(text.charAt(start))) {
            start++;
        }
        while (end > start && blank(text.charAt(end - 1))) {
            end--;
        }
        return text.substring(start, end);
    }

    private static boolean blank(char c) {
        return c <= ' ' || (c >= 0xa0 && (Character.isSpaceChar(c) || c == 0x200b || c == 0xfeff));
    }

    /** A text fit for one line of a message: line ends become blanks, unprintable characters their code, the rest is cut. */
    public static String shown(String text, int most) {
        if (text.length() <= most && unprintable(text) < 0 && text.indexOf('\n') < 0 && text.indexOf('\r') < 0) {
            return text;
        }
        StringBuilder shown = new StringBuilder();
        for (int i = 0; i < text.length() && shown.length() < most; i++) {
            char c = text.charAt(i);
            boolean pair = Character.isHighSurrogate(c) && !bad(text, i, c);
            if (pair) {
                shown.append(c).append(text.charAt(++i));
            } else if (c == '\n' || c == '\r' || c == '\t') {
                shown.append(' ');
            } else {
                shown.append(unprintable(String.valueOf(c)) < 0 ? String.valueOf(c) : code(c));
            }
        }
        return shown + (text.length() > most ? "..." : "");
    }
}
