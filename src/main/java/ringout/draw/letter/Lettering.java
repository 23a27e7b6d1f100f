package ringout.draw.letter;

import java.util.ArrayList;
import java.util.List;

/**
 * Widths of texts in millimetres, and texts cut or wrapped to a width.
 *
 * <p>The widths are those of the font DejaVu Sans Condensed, which is bundled; a viewer that has another font is told
 * the width of each text and keeps to it. A letter the font lacks counts as a full em, which is never too narrow.
 */
public final class Lettering {
    /** Smallest capital height on paper, mm (ISO 3098 series, common practice for wiring drawings). */
    public static final double SMALL = 2.5;

    /** Capital height of names of units and of the title, mm. */
    public static final double MEDIUM = 3.5;

    /** Capital height of what must be read at arm's length, mm. */
    public static final double LARGE = 5.0;

    /** Families in order of preference, as style sheets write them. */
    public static final String FAMILIES = "'DejaVu Sans Condensed','Liberation Sans Narrow','Arial Narrow',sans-serif";

    private static final String CUT = "\u2026";
    private static final int REPLACEMENT = 0xFFFD;

    private Lettering() {}

    /** {@return the size as fonts count it (the em) for a capital height; both in mm} */
    public static double emOf(double capHeight) {
        return capHeight / AdvanceWidths.CAP_PER_EM;
    }

    /** {@return the capital height of lettering of an em size; both in mm} */
    public static double capOf(double em) {
        return em * AdvanceWidths.CAP_PER_EM;
    }

    /** {@return how far letters such as p hang below the line, mm} */
    public static double descentOf(double capHeight) {
        return emOf(capHeight) * AdvanceWidths.DESCENT_PER_EM;
    }

    /** {@return whether a text has letters that hang below the line, or may have, being outside ASCII} */
    public static boolean hangs(String text) {
        return text.codePoints().anyMatch(c -> "gjpqyQ,;()[]{}|_/@$".indexOf(c) >= 0 || isForeign(c));
    }

    private static boolean isForeign(int c) {
        return c > 127 && c != 0x2026 && c != 0xB7;
    }

    /** {@return how far marks on capitals outside ASCII may rise above them, mm; 0 for a text without such letters} */
    public static double riseOf(String text, double capHeight) {
        return text.codePoints().anyMatch(Lettering::isForeign) ? emOf(capHeight) * AdvanceWidths.RISE_PER_EM : 0;
    }

    /** {@return the width of one line of text, mm} */
    public static double width(String text, double capHeight, Weight weight) {
        double em = emOf(capHeight);
        return text.codePoints()
                        .mapToDouble(c -> AdvanceWidths.ofFace(weight).perEm(c))
                        .sum()
                * em;
    }

    /** {@return the text without control marks, direction marks and broken surrogates, and with single blanks} */
    public static String printable(String text) {
        StringBuilder kept = new StringBuilder();
        boolean blank = false;
        for (int c : text.codePoints().toArray()) {
            if (Character.isWhitespace(c) || c == 0xA0) {
                blank = true;
                continue;
            }
            if (blank && !kept.isEmpty()) {
                kept.append(' ');
            }
            blank = false;
            kept.appendCodePoint(isPrinted(c) ? c : REPLACEMENT);
        }
        return kept.toString();
    }

    private static boolean isPrinted(int c) {
        int type = Character.getType(c);
        return type != Character.CONTROL
                && type != Character.FORMAT
                && type != Character.SURROGATE
                && type != Character.PRIVATE_USE
                && type != Character.UNASSIGNED;
    }

    /** {@return the text if it is no wider than so many mm, or its beginning with an ellipsis} */
    public static String fit(String text, double capHeight, Weight weight, double widest) {
        if (width(text, capHeight, weight) <= widest) {
            return text;
        }
        double room = widest - width(CUT, capHeight, weight);
        StringBuilder kept = new StringBuilder();
        double used = 0;
        for (int c : text.codePoints().toArray()) {
            used += AdvanceWidths.ofFace(weight).perEm(c) * emOf(capHeight);
            if (used > room) {
                break;
            }
            kept.appendCodePoint(c);
        }
        return kept.toString().stripTrailing() + CUT;
    }

    /** {@return the text in lines no wider than so many mm; the last of at most so many lines is cut with an ellipsis} */
    public static List<String> wrap(String text, double capHeight, Weight weight, double widest, int most) {
        List<String> lines = new ArrayList<>();
        String rest = text;
        while (!rest.isEmpty() && lines.size() < most) {
            boolean last = lines.size() == most - 1;
            String line = last ? fit(rest, capHeight, weight, widest) : firstLine(rest, capHeight, weight, widest);
            lines.add(line.strip());
            rest = last ? "" : rest.substring(line.length()).strip();
        }
        return List.copyOf(lines);
    }

    /** As many whole words as fit, or, of a word that is too wide by itself, as many letters as fit (at least one). */
    private static String firstLine(String text, double capHeight, Weight weight, double widest) {
        double em = emOf(capHeight);
        double used = 0;
        int end = 0;
        int breakAt = 0;
        while (end < text.length()) {
            int c = text.codePointAt(end);
            used += AdvanceWidths.ofFace(weight).perEm(c) * em;
            if (used > widest && c != ' ') {
                int forced = Math.max(end, Character.charCount(c));
                return text.substring(0, breakAt > 0 ? breakAt : forced);
            }
            end += Character.charCount(c);
            if (c == ' ') {
                breakAt = end;
            }
        }
        return text;
    }
}
