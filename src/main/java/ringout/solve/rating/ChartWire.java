package ringout.solve.rating;

import java.util.List;
import java.util.Optional;
import ringout.graph.Wire;
import ringout.model.Awg;

/**
 * One row of FAA AC 43.13-1B, table 11-9: tin-plated copper at 70 degC ambient, 33 or more wires in a bundle (9 from size 8 up) of
 * which not more than 20 % of the capacity is used, at 60,000 ft.
 *
 * @param gauge American wire gauge; 0 is 1/0, -3 is 4/0
 * @param amps105 current in A with insulation of 105 degC
 * @param amps150 current in A with insulation of 150 degC
 * @param amps200 current in A with insulation of 200 degC
 * @param ohmPer1000ft largest resistance in ohm per 1000 ft at 20 degC
 */
public record ChartWire(int gauge, double amps105, double amps150, double amps200, double ohmPer1000ft) {
    /** A size given in mm2 is a rounded one. */
    private static final double ROUNDING = 0.03;

    private static final List<ChartWire> ROWS = List.of(
            new ChartWire(24, 2.5, 4, 5, 28.40),
            new ChartWire(22, 3, 5, 6, 16.20),
            new ChartWire(20, 4, 7, 9, 9.88),
            new ChartWire(18, 6, 9, 12, 6.23),
            new ChartWire(16, 7, 11, 14, 4.81),
            new ChartWire(14, 10, 14, 18, 3.06),
            new ChartWire(12, 13, 19, 25, 2.02),
            new ChartWire(10, 17, 26, 32, 1.26),
            new ChartWire(8, 38, 57, 71, 0.70),
            new ChartWire(6, 50, 76, 97, 0.44),
            new ChartWire(4, 68, 103, 133, 0.28),
            new ChartWire(2, 95, 141, 179, 0.18),
            new ChartWire(1, 113, 166, 210, 0.15),
            new ChartWire(0, 128, 192, 243, 0.12),
            new ChartWire(-1, 147, 222, 285, 0.09),
            new ChartWire(-2, 172, 262, 335, 0.07),
            new ChartWire(-3, 204, 310, 395, 0.06));

    /** All rows, thinnest first. */
    public static List<ChartWire> rows() {
        return ROWS;
    }

    /** The row of a gauge; of a gauge between two rows, or of a cross-section, the thinner one. */
    public static Optional<ChartWire> of(Wire wire) {
        Optional<ChartWire> best = Optional.empty();
        double area = wire.areaMm2().or(0.0) * (1 + ROUNDING);
        for (ChartWire row : ROWS) {
            if (new Awg(row.gauge).areaMm2() <= area) {
                best = Optional.of(row);
            }
        }
        return best;
    }

    /** The row of exactly a gauge. */
    public static Optional<ChartWire> of(int gauge) {
        return ROWS.stream().filter(row -> row.gauge == gauge).findFirst();
    }
}
