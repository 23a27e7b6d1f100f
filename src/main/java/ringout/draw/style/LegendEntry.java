package ringout.draw.style;

import java.util.List;
import java.util.function.Function;
import ringout.draw.ink.Ink;
import ringout.draw.paper.Point;

/**
 * A line of the legend.
 *
 * @param words what it means
 * @param height mm
 * @param sample draws the sample to the right of a point, level with it, within {@link #SAMPLE} mm
 */
public record LegendEntry(String words, double height, Function<Point, List<Ink>> sample) {
    /** Width of a sample, mm. */
    public static final double SAMPLE = 20;

    /** Height of a line with a badge or casing, mm. */
    public static final double TALL = 7;

    /** Height of any other line, mm. */
    public static final double LOW = 5;
}
