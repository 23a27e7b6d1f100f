package ringout.solve.power;

import java.util.OptionalDouble;
import ringout.graph.power.PowerSource;
import ringout.model.InnerPart;
import ringout.model.Unit;

/**
 * How far the packs are charged.
 *
 * @param kind what is meant
 * @param cellV volts of one cell at rest, for {@link Kind#CELL} and {@link Kind#SUPPLY}; else 0
 */
public record PackCharge(Kind kind, double cellV) {
    /** What is meant. */
    public enum Kind {
        /** At the nominal voltage of the cells. */
        NOMINAL,
        /** At the voltage of a full cell. */
        FULL,
        /** At the voltage of an empty cell. */
        EMPTY,
        /** As measured at rest, where a pack says so; at nominal voltage elsewhere. */
        MEASURED,
        /** At a given voltage of each cell. */
        CELL,
        /** Not packs at all: a bench supply in their place gives that voltage for each cell and has no resistance. */
        SUPPLY
    }

    /** Nominal voltage. */
    public static final PackCharge NOMINAL = new PackCharge(Kind.NOMINAL, 0);

    /** Full packs. */
    public static final PackCharge FULL = new PackCharge(Kind.FULL, 0);

    /** Empty packs. */
    public static final PackCharge EMPTY = new PackCharge(Kind.EMPTY, 0);

    /** Packs as they were measured. */
    public static final PackCharge MEASURED = new PackCharge(Kind.MEASURED, 0);

    /** Every cell at a voltage: 4.0 V for twelve cells is a bench supply of 48 V. */
    public static PackCharge cell(double volts) {
        if (!(volts > 0) || !Double.isFinite(volts)) {
            throw new IllegalArgumentException("a cell of " + volts + " V");
        }
        return new PackCharge(Kind.CELL, volts);
    }

    /** A bench supply in place of the packs that gives a voltage for each of their cells. */
    public static PackCharge supply(double volts) {
        return new PackCharge(Kind.SUPPLY, cell(volts).cellV);
    }

    /** {@return the open-circuit voltage of a pack in V, if its type tells enough} */
    OptionalDouble volts(PowerSource source, InnerPart cells, Unit unit) {
        return switch (kind) {
            case NOMINAL -> source.volts().nominal();
            case FULL -> finite(source.volts().high());
            case EMPTY -> positive(source.volts().low());
            case MEASURED ->
                unit.restV().isKnown()
                        ? OptionalDouble.of(unit.restV().or(0.0))
                        : source.volts().nominal();
            case CELL, SUPPLY ->
                cells.rating().cells().isKnown()
                        ? OptionalDouble.of(cells.rating().cells().or(0) * cellV)
                        : OptionalDouble.empty();
        };
    }

    private static OptionalDouble finite(double volts) {
        return Double.isFinite(volts) ? OptionalDouble.of(volts) : OptionalDouble.empty();
    }

    private static OptionalDouble positive(double volts) {
        return volts > 0 ? OptionalDouble.of(volts) : OptionalDouble.empty();
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof PackCharge that && kind == that.kind && Double.compare(cellV, that.cellV) == 0);
    }

    @Override
    public int hashCode() {
        return 31 * kind.hashCode() + Double.hashCode(cellV);
    }
}
