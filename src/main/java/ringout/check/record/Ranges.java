package ringout.check.record;

import java.util.Map;

/** What values are usual on aircraft that a person can lift; outside, the unit of measure is in doubt. */
final class Ranges {
    private static final double[] FACTORS = {10, 25.4, 1000};
    private static final double TOLERANCE = 0.1;
    private static final double SHORTEST_WAY_MM = 200;
    private static final double FAR = 5;

    /** Lowest and highest usual value by kind. Zero is usual everywhere: a load may be idle. */
    private record Range(double low, double high) {}

    private static final Map<String, Range> USUAL = Map.of(
            "length", new Range(10, 100_000),
            "cross-section", new Range(0.01, 120),
            "current", new Range(0, 1000),
            "position", new Range(-50_000, 50_000),
            "capacity", new Range(0.01, 1000),
            "cell voltage", new Range(1, 5),
            "cell resistance", new Range(0.05, 100),
            "bit rate", new Range(1, 100_000));

    /** Whether a value is outside its usual range. */
    boolean isDoubtful(String kind, double value) {
        Range range = USUAL.get(kind);
        return range != null && (value < range.low() || value > range.high());
    }

    /** Whether a lead cannot span its way even where places are rough: less than a fifth of a way of at least 0.2 m. */
    boolean isFarTooShort(double lengthMm, double wayMm) {
        return wayMm >= SHORTEST_WAY_MM && lengthMm < wayMm / FAR;
    }

    /** Whether one value is another in a different unit: a factor of 10, 25.4 or 1000 apart. */
    boolean isFactor(double a, double b) {
        if (a <= 0 || b <= 0) {
            return false;
        }
        double ratio = Math.max(a, b) / Math.min(a, b);
        for (double factor : FACTORS) {
            if (Math.abs(ratio / factor - 1) < TOLERANCE) {
                return true;
            }
        }
        return false;
    }
}
