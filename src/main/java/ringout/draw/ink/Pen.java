package ringout.draw.ink;

import java.util.List;

/**
 * How a line is drawn.
 *
 * @param paint colour or hatching
 * @param width mm
 * @param dash lengths of dashes and gaps in turn, mm; empty for a solid line
 * @param round whether dashes end round, so that a dash of no length is a dot
 */
public record Pen(Paint paint, double width, List<Double> dash, boolean round) {
    /** Draws nothing. */
    public static final Pen NONE = new Pen(Paint.clear(), 0, List.of(), false);

    /** Keeps an unmodifiable copy of the dashes. */
    public Pen {
        dash = List.copyOf(dash);
    }

    /** {@return a solid line of one colour} */
    public static Pen solid(String hex, double width) {
        return new Pen(Paint.of(hex), width, List.of(), false);
    }

    /** {@return a dashed line of one colour} */
    public static Pen dashed(String hex, double width, Double... dash) {
        return new Pen(Paint.of(hex), width, List.of(dash), false);
    }

    /** {@return a line of round dots and dashes of one colour} */
    public static Pen dotted(String hex, double width, Double... dash) {
        return new Pen(Paint.of(hex), width, List.of(dash), true);
    }
}
