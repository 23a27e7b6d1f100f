package ringout.compare.fleet;

import java.util.List;
import java.util.OptionalDouble;
import ringout.finding.Severity;
import ringout.text.Span;

/**
 * One reading taken again and again, over the flight hours.
 *
 * @param at row of the latest reading
 * @param where where it is taken
 * @param quantity in what: mV, ohm, V
 * @param points the readings by hours
 * @param limit the limit it runs towards, of the latest reading
 * @param upper whether the limit is the largest value allowed
 * @param slope change an hour, by the straight line of least squares
 * @param scatter standard deviation about that line, in the quantity; not known from two readings
 * @param crossing hours at which the line comes to the limit; nothing when it runs away from it
 * @param error standard error of these hours; not known from two readings
 * @param bends whether the last step is half as steep again as the line, or more: it no longer is a straight line
 * @param amps current at which a voltage drop was read; nothing when it is not on record
 * @param severity what the reading means now
 */
public record Trend(
        Span at,
        String where,
        String quantity,
        List<Point> points,
        double limit,
        boolean upper,
        double slope,
        OptionalDouble scatter,
        OptionalDouble crossing,
        OptionalDouble error,
        boolean bends,
        OptionalDouble amps,
        Severity severity) {
    /** Keeps its own copy. */
    public Trend {
        points = List.copyOf(points);
    }

    /**
     * One reading.
     *
     * @param hours flight hours
     * @param value what the meter said
     */
    public record Point(double hours, double value) {}

    /** The latest reading. */
    public Point last() {
        return points.get(points.size() - 1);
    }

    /** Whether a value is outside the limit. */
    public boolean outside(double value) {
        return upper ? value > limit : value < limit;
    }

    /** Whether the latest reading is outside the limit. */
    public boolean over() {
        return outside(last().value());
    }

    /** Hours of the first reading outside the limit, from which on all were. */
    public OptionalDouble overSince() {
        OptionalDouble since = OptionalDouble.empty();
        for (int i = points.size() - 1; i >= 0 && outside(points.get(i).value()); i--) {
            since = OptionalDouble.of(points.get(i).hours());
        }
        return since;
    }

    /** Hours at which the straight line between the last reading inside and the first one outside meets the limit. */
    public OptionalDouble crossed() {
        for (int i = points.size() - 1; i > 0; i--) {
            Point now = points.get(i);
            Point earlier = points.get(i - 1);
            if (outside(now.value()) && !outside(earlier.value())) {
                double share = (limit - earlier.value()) / (now.value() - earlier.value());
                return OptionalDouble.of(earlier.hours() + share * (now.hours() - earlier.hours()));
            }
        }
        return OptionalDouble.empty();
    }

    /** A voltage drop in mV as the resistance it stands for, in milliohm. */
    public OptionalDouble milliohm(Point point) {
        return amps.isPresent() && amps.getAsDouble() > 0
                ? OptionalDouble.of(point.value() / amps.getAsDouble())
                : OptionalDouble.empty();
    }
}
