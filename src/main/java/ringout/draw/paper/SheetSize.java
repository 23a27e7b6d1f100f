package ringout.draw.paper;

import java.util.List;

/**
 * Sheets of the ISO A series, lying (long edge below). Sizes by ISO 5457:1999; borders of that edition, left 20 mm for
 * the binder and 10 mm elsewhere (from memory; the edition before it had 20 mm or 10 mm all round).
 */
public enum SheetSize {
    /** 297 mm by 210 mm. */
    A4(297, 210),
    /** 420 mm by 297 mm. */
    A3(420, 297),
    /** 594 mm by 420 mm. */
    A2(594, 420),
    /** 841 mm by 594 mm. */
    A1(841, 594);

    private static final double BINDING_EDGE = 20;
    private static final double OTHER_EDGE = 10;

    private final double width;
    private final double height;

    SheetSize(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** {@return the sizes a workshop prints, smallest first} */
    public static List<SheetSize> workshop() {
        return List.of(A4, A3);
    }

    /** {@return all sizes, smallest first; the two large ones are a last resort} */
    public static List<SheetSize> all() {
        return List.of(A4, A3, A2, A1);
    }

    /** {@return the long edge, mm} */
    public double width() {
        return width;
    }

    /** {@return the short edge, mm} */
    public double height() {
        return height;
    }

    /** {@return the whole sheet} */
    public Area sheet() {
        return new Area(0, 0, width, height);
    }

    /** {@return what the frame encloses} */
    public Area frame() {
        return new Area(BINDING_EDGE, OTHER_EDGE, width - BINDING_EDGE - OTHER_EDGE, height - 2 * OTHER_EDGE);
    }
}
