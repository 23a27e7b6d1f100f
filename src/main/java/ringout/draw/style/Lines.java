package ringout.draw.style;

import ringout.draw.ink.Paint;
import ringout.draw.ink.Pen;
import ringout.draw.scene.WireKind;

/**
 * How the wires of each kind are drawn.
 *
 * @param outer the line
 * @param core a thinner line on top of it that makes it double; {@link Pen#NONE} for none
 * @param rings whether rings sit on the line, as for coaxial cable
 */
public record Lines(Pen outer, Pen core, boolean rings) {
    /** Thin, for outlines of lesser things, mm (series of ISO 128, from memory). */
    public static final double THIN = 0.25;

    /** Medium, mm. */
    public static final double MEDIUM = 0.35;

    /** Strong, mm. */
    public static final double STRONG = 0.5;

    /** Thick, mm. */
    public static final double THICK = 0.7;

    /** Width of a casing, mm: more than three thick lines. */
    public static final double CASING = 2.4;

    /** Width of the casing around a box or plug, mm: three strong lines. */
    public static final double BAND = 1.5;

    private static final double HEAVY = 1.1;
    private static final double FAINT_DOUBLE = 0.75;

    private static final Pen GHOST = Pen.dashed(Palette.DARK_GREY, 1.6, 2.6, 1.6);
    private static final Pen GHOST_CORE = Pen.solid(Palette.WHITE, 1.0);

    /** {@return the lines of a kind} */
    public static Lines of(WireKind kind) {
        return switch (kind) {
            case SUPPLY -> plain(Pen.solid(Palette.VERMILION, THICK));
            case RETURN -> plain(Pen.dashed(Palette.BLACK, STRONG, 7.0, 1.6));
            case BUS -> new Lines(Pen.solid(Palette.BLUE, 1.2), Pen.solid(Palette.WHITE, STRONG), false);
            case PULSE -> plain(Pen.dashed(Palette.VERMILION, STRONG, 4.5, 1.2, 0.6, 1.2));
            case SERIAL -> plain(Pen.dotted(Palette.BLUE, THICK, 0.01, 1.5));
            case I2C -> plain(Pen.dashed(Palette.BLUE, STRONG, 4.5, 1.1, 0.6, 1.1, 0.6, 1.1));
            case VIDEO -> new Lines(Pen.solid(Palette.DARK_GREY, MEDIUM), Pen.NONE, true);
            case PHASE -> plain(Pen.dashed(Palette.BLACK, THICK, 2.0, 0.9));
            case OTHER -> plain(Pen.solid(Palette.BLACK, MEDIUM));
        };
    }

    /** {@return the lines of a wire that ought to be there: a dashed outline} */
    public static Lines ghost() {
        return new Lines(GHOST, GHOST_CORE, false);
    }

    /** {@return these lines thin and grey: the dash still tells the kind} */
    public Lines faint() {
        Pen thin =
                new Pen(Paint.of(Palette.FAINT), core.width() > 0 ? FAINT_DOUBLE : THIN, outer.dash(), outer.round());
        return new Lines(thin, core.width() > 0 ? Pen.solid(Palette.WHITE, THIN) : Pen.NONE, rings);
    }

    /** {@return these lines much wider} */
    public Lines heavy() {
        double more = Math.max(HEAVY, outer.width() * 2);
        Pen wide = new Pen(outer.paint(), more, outer.dash(), outer.round());
        return new Lines(wide, core.width() > 0 ? Pen.solid(Palette.WHITE, core.width()) : Pen.NONE, rings);
    }

    private static Lines plain(Pen pen) {
        return new Lines(pen, Pen.NONE, false);
    }
}
