package ringout.present.pdf;

import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;

/** Gives words that are wider than their line places to break at. */
final class LongWords {
    private static final String HERE = "\u200B";

    /** The formatter counts the width of a letter in thousandths of the em, the font in 2048ths. */
    private static final double ROUNDED = 0.99;

    private LongWords() {}

    /** {@return a text that can be set in lines of a width in mm, whatever its words are} */
    static String broken(String text, double capHeight, Weight weight, double width) {
        String clean = Lettering.printable(text);
        if (Lettering.width(clean, capHeight, weight) <= width) {
            return clean;
        }
        double room = width * ROUNDED;
        StringBuilder out = new StringBuilder();
        double used = 0;
        for (int c : clean.codePoints().toArray()) {
            double letter = Lettering.width(Character.toString(c), capHeight, weight);
            used = c == ' ' ? 0 : used + letter;
            if (used > room) {
                out.append(HERE);
                used = letter;
            }
            out.appendCodePoint(c);
        }
        return out.toString();
    }
}
