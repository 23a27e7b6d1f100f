package ringout.draw.form;

import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.scene.BadgeKind;
import ringout.draw.scene.Mark;

/**
 * A badge and its size.
 *
 * @param kind the shape
 * @param waived hatched
 * @param text what it says
 * @param width mm, enough for the text in that shape
 */
public record BadgeForm(BadgeKind kind, boolean waived, String text, double width) {
    /** Height of every badge, mm: two in neighbouring lines do not touch. */
    public static final double HEIGHT = 6.0;

    /** Clear width between badges side by side, mm. */
    public static final double GAP = 0.8;

    private static final double MARGIN = 0.6;

    /** {@return the badge of a mark} */
    public static BadgeForm of(Mark mark) {
        return of(mark.kind(), mark.waived(), mark.text());
    }

    /** {@return a badge with a text} */
    public static BadgeForm of(BadgeKind kind, boolean waived, String text) {
        return new BadgeForm(kind, waived, text, widthFor(kind, Lettering.width(text, Lettering.SMALL, Weight.BOLD)));
    }

    /** Each shape is as wide as it must be where the corners of the text touch it. */
    private static double widthFor(BadgeKind kind, double text) {
        double half = Lettering.SMALL / 2 / (HEIGHT / 2);
        return switch (kind) {
            case S1 -> Math.max(HEIGHT, text + 2 * MARGIN + 1.6);
            case S2 -> Math.max(HEIGHT * 1.2, (text + MARGIN) / (1 - (Lettering.SMALL + TRIANGLE_FOOT) / HEIGHT));
            case S3 -> Math.max(HEIGHT * 0.94, text + 2 * MARGIN);
            case S4 -> Math.max(HEIGHT, (text + MARGIN) / Math.sqrt(1 - half * half));
            case CANNOT_TELL -> Math.max(HEIGHT * 1.2, (text + MARGIN) / (1 - half));
        };
    }

    /** Clear height below the text in a triangle, mm. */
    public static final double TRIANGLE_FOOT = 0.6;
}
