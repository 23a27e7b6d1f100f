package ringout.graph.power;

import java.util.OptionalDouble;

/**
 * A voltage at rest in V, from empty packs to full packs. It is positive when the first of two points is above the second.
 *
 * @param low at empty packs, or the least a regulator gives; minus infinity, or 0 where only the sign is known
 * @param nominal what the label says; never to be held against a limit
 * @param high at full packs, or the most a regulator gives; infinite when not known
 */
public record Volts(double low, OptionalDouble nominal, double high) {
    /** No difference. */
    public static final Volts ZERO = exactly(0);

    /** Somewhere above, by how much is not known. */
    public static final Volts POSITIVE = new Volts(0, OptionalDouble.empty(), Double.POSITIVE_INFINITY);

    /** Which way a voltage points. */
    public enum Sign {
        /** Above. */
        ABOVE,
        /** Not above: equal or below. */
        NOT_ABOVE,
        /** Not known. */
        UNKNOWN
    }

    /** A voltage that does not vary. */
    public static Volts exactly(double volts) {
        return new Volts(volts, OptionalDouble.of(volts), volts);
    }

    /** This voltage and another on top of it. */
    public Volts plus(Volts other) {
        return new Volts(low + other.low, sum(nominal, other.nominal, 1), high + other.high);
    }

    /** This voltage less another that varies on its own. */
    public Volts minus(Volts other) {
        return new Volts(low - other.high, sum(nominal, other.nominal, -1), high - other.low);
    }

    /** The same seen from the other side. */
    public Volts negated() {
        return ZERO.minus(this);
    }

    /** Either of two, not known which: a net with two sources. */
    public Volts or(Volts other) {
        return new Volts(Math.min(low, other.low), larger(nominal, other.nominal), Math.max(high, other.high));
    }

    /** The higher of two: behind a combiner of diodes. */
    public Volts max(Volts other) {
        return new Volts(Math.max(low, other.low), larger(nominal, other.nominal), Math.max(high, other.high));
    }

    private static OptionalDouble sum(OptionalDouble a, OptionalDouble b, int sign) {
        return a.isPresent() && b.isPresent()
                ? OptionalDouble.of(a.getAsDouble() + sign * b.getAsDouble())
                : OptionalDouble.empty();
    }

    private static OptionalDouble larger(OptionalDouble a, OptionalDouble b) {
        return a.isPresent() && b.isPresent()
                ? OptionalDouble.of(Math.max(a.getAsDouble(), b.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** Whether both ends are numbers. */
    public boolean isBounded() {
        return low > Double.NEGATIVE_INFINITY && high < Double.POSITIVE_INFINITY;
    }

    /** Which way it points, by the nominal value where there is one. */
    public Sign sign() {
        if (nominal.isPresent()) {
            return nominal.getAsDouble() > 0 ? Sign.ABOVE : Sign.NOT_ABOVE;
        }
        if (high <= 0) {
            return Sign.NOT_ABOVE;
        }
        return low >= 0 ? Sign.ABOVE : Sign.UNKNOWN;
    }
}
