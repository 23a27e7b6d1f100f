package ringout.compare.fleet;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A straight line through readings over flight hours by ordinary least squares, and how well it is known (Draper and Smith,
 * Applied Regression Analysis, chapter 1; inverse prediction by the delta method).
 *
 * @param slope change an hour
 * @param start value at 0 h
 * @param scatter standard deviation of the readings about the line; not known from two readings
 * @param meanHours mean of the hours
 * @param spread sum of the squared distances of the hours from their mean
 * @param count number of readings
 */
record Line(double slope, double start, OptionalDouble scatter, double meanHours, double spread, int count) {
    /** Fewest readings that say something about their scatter. */
    private static final int SCATTERED = 3;

    /** The line; the hours must differ. */
    static Line of(List<Trend.Point> points) {
        int n = points.size();
        double h = points.stream().mapToDouble(Trend.Point::hours).sum() / n;
        double v = points.stream().mapToDouble(Trend.Point::value).sum() / n;
        double spread = 0;
        double product = 0;
        for (Trend.Point point : points) {
            spread += (point.hours() - h) * (point.hours() - h);
            product += (point.hours() - h) * (point.value() - v);
        }
        double slope = product / spread;
        double start = v - slope * h;
        double squares = 0;
        for (Trend.Point point : points) {
            double off = point.value() - start - slope * point.hours();
            squares += off * off;
        }
        OptionalDouble scatter =
                n < SCATTERED ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(squares / (n - 2)));
        return new Line(slope, start, scatter, h, spread, n);
    }

    /** The hours at which it comes to a value; nothing when it is level. */
    OptionalDouble reaches(double value) {
        return slope == 0 ? OptionalDouble.empty() : OptionalDouble.of((value - start) / slope);
    }

    /** Standard error of these hours; nothing from two readings. */
    OptionalDouble error(double hours) {
        if (scatter.isEmpty() || slope == 0) {
            return OptionalDouble.empty();
        }
        double off = hours - meanHours;
        return OptionalDouble.of(scatter.getAsDouble() / Math.abs(slope) * Math.sqrt(1.0 / count + off * off / spread));
    }
}
