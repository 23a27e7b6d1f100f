package ringout.draw.ink;

import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Point;

/**
 * One line of text.
 *
 * @param tag what it stands for
 * @param text the text
 * @param anchor on the line the letters stand on: its beginning, middle or end
 * @param align which of these
 * @param capHeight height of capital letters, mm
 * @param weight how heavy
 * @param colour as {@code #rrggbb}
 * @param upright whether it runs upwards and is read from the right
 */
public record Words(
        Tag tag,
        String text,
        Point anchor,
        Align align,
        double capHeight,
        Weight weight,
        String colour,
        boolean upright)
        implements Ink {
    /** Where the anchor is. */
    public enum Align {
        /** At the beginning of the text. */
        START,
        /** In its middle. */
        MIDDLE,
        /** At its end. */
        END
    }

    /** {@return a line of text from left to right} */
    public static Words of(String text, Point anchor, Align align, double capHeight, Weight weight, String colour) {
        return new Words(Tag.NONE, text, anchor, align, capHeight, weight, colour, false);
    }

    /** {@return its width along the line, mm} */
    public double width() {
        return Lettering.width(text, capHeight, weight);
    }
}
