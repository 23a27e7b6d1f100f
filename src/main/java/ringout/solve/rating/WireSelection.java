package ringout.solve.rating;

import java.util.Optional;

/**
 * The choice of a wire size by voltage drop, with the largest resistances of FAA AC 43.13-1B, table 11-9. The length of the run
 * is that of the wire the current passes: where the return is a wire it counts too.
 */
public final class WireSelection {
    private static final double FEET = 1000;

    private WireSelection() {}

    /** {@return the drop in V at 20 degC of a run} Length in ft, current in A. */
    public static double dropV(ChartWire wire, double feet, double amps) {
        return wire.ohmPer1000ft() / FEET * feet * amps;
    }

    /** {@return the longest run in ft at 20 degC} Current in A, drop in V. */
    public static double longestFt(ChartWire wire, double amps, double dropV) {
        return dropV * FEET / (wire.ohmPer1000ft() * amps);
    }

    /** The thinnest wire of the chart that drops no more than allowed over a run at 20 degC. */
    public static Optional<ChartWire> thinnest(double feet, double amps, double allowedV) {
        return ChartWire.rows().stream()
                .filter(row -> dropV(row, feet, amps) <= allowedV)
                .findFirst();
    }
}
