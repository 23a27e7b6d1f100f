package ringout.graph.wire;

import java.util.List;
import java.util.Optional;
import ringout.model.Awg;

/**
 * Copper conductors by gauge: cross-section and resistance follow ASTM B258 and IEC 60028; the free-air current is common
 * practice without a published source; breaker and fuse are table 11-3 of FAA AC 43.13-1B, meant for bundles. The columns have
 * different bases and must not be held against each other.
 */
public final class WireTable {
    /** Where the free-air column comes from. */
    public static final String FREE_AIR_SOURCE = "single wire in free air, common practice, no source";

    /** Where the protector columns come from. */
    public static final String PROTECTOR_SOURCE = "FAA AC 43.13-1B, table 11-3";

    /** A size given in mm2 is a rounded one: 0.05 is the 30 AWG of 0.0509. */
    private static final double ROUNDING = 0.03;

    private static final double NONE = 0;
    private static final List<Row> ROWS = List.of(
            new Row(30, 0.86, NONE, NONE),
            new Row(28, 1.4, NONE, NONE),
            new Row(26, 2.2, NONE, NONE),
            new Row(24, 3.5, NONE, NONE),
            new Row(22, 7, 5, 5),
            new Row(20, 11, 7.5, 5),
            new Row(18, 16, 10, 10),
            new Row(16, 22, 15, 10),
            new Row(14, 32, 20, 15),
            new Row(12, 41, 30, 20),
            new Row(10, 55, 40, 30),
            new Row(8, 73, 50, 50),
            new Row(6, 101, 80, 70),
            new Row(4, 135, 100, 70));

    /**
     * One gauge.
     *
     * @param gauge American wire gauge
     * @param freeAirA current of a single wire in free air in A
     * @param breakerA largest breaker in A; 0 where the chart has none
     * @param fuseA largest fuse in A; 0 where the chart has none
     */
    public record Row(int gauge, double freeAirA, double breakerA, double fuseA) {}

    private WireTable() {}

    /** All rows, thinnest first. */
    public static List<Row> rows() {
        return ROWS;
    }

    /** The row of a gauge, if the table has it. */
    public static Optional<Row> row(Awg awg) {
        for (Row row : ROWS) {
            if (row.gauge() == awg.gauge()) {
                return Optional.of(row);
            }
        }
        return Optional.empty();
    }

    /**
     * {@return the free-air current in A of a cross-section in mm2} Between two rows the current goes with a power of the
     * cross-section; outside the table nothing is said.
     */
    public static Optional<Double> freeAirA(double areaMm2) {
        for (int i = 0; i + 1 < ROWS.size(); i++) {
            double thin = area(i);
            double thick = area(i + 1);
            if (areaMm2 >= thin * (1 - ROUNDING) && areaMm2 <= thick * (1 + ROUNDING)) {
                double part = Math.log(areaMm2 / thin) / Math.log(thick / thin);
                double ratio = ROWS.get(i + 1).freeAirA() / ROWS.get(i).freeAirA();
                return Optional.of(ROWS.get(i).freeAirA() * Math.pow(ratio, Math.max(0, Math.min(part, 1))));
            }
        }
        return Optional.empty();
    }

    private static double area(int row) {
        return new Awg(ROWS.get(row).gauge()).areaMm2();
    }
}
