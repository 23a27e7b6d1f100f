package ringout.draw.style;

import static ringout.draw.letter.Lettering.SMALL;

import java.util.List;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;

/** Lines of text set by the middle of their capitals, with or without a white ground. */
public final class Print {
    private static final double HALO = 0.3;

    private Print() {}

    /** {@return small black text, its capitals centred on a height} */
    public static Words small(String text, double x, double middle, Align align) {
        return line(text, x, middle, align, SMALL, Weight.REGULAR, Palette.BLACK);
    }

    /** {@return small bold text, its capitals centred on a height} */
    public static Words bold(String text, double x, double middle, Align align) {
        return line(text, x, middle, align, SMALL, Weight.BOLD, Palette.BLACK);
    }

    /** {@return any text, its capitals centred on a height} */
    public static Words line(
            String text, double x, double middle, Align align, double cap, Weight weight, String colour) {
        return Words.of(text, new Point(x, middle + cap / 2), align, cap, weight, colour);
    }

    /** Adds a text to some ink unless it is empty. */
    public static void add(List<Ink> ink, Words words) {
        if (!words.text().isEmpty()) {
            ink.add(words);
        }
    }

    /** Adds a text on a white ground that interrupts the line below it. */
    public static void addInGap(List<Ink> ink, Words words) {
        addOnGround(ink, words, HALO);
    }

    /** Adds a text on a white ground that is larger than the text by so many mm on every side. */
    public static void addOnGround(List<Ink> ink, Words words, double margin) {
        if (!words.text().isEmpty()) {
            Area ground = ground(words).grown(margin);
            ink.add(Patch.rectangle("halo", ground, Paint.of(Palette.WHITE), Pen.NONE));
            ink.add(words);
        }
    }

    /** {@return a text that runs upwards, read from the right, its capitals centred on a plumb line} */
    public static Words upright(String text, double x, double middle) {
        return new Words(
                Tag.NONE,
                text,
                new Point(x + SMALL / 2, middle),
                Align.MIDDLE,
                SMALL,
                Weight.REGULAR,
                Palette.BLACK,
                true);
    }

    private static Area ground(Words words) {
        double width = words.width();
        double cap = words.capHeight();
        double hang = Lettering.hangs(words.text()) ? Lettering.descentOf(cap) : 0;
        double up = cap + Lettering.riseOf(words.text(), cap);
        Point at = words.anchor();
        if (words.upright()) {
            return new Area(at.x() - up, at.y() - width / 2, up + hang, width);
        }
        double left =
                switch (words.align()) {
                    case START -> at.x();
                    case MIDDLE -> at.x() - width / 2;
                    case END -> at.x() - width;
                };
        return new Area(left, at.y() - up, width, up + hang);
    }
}
