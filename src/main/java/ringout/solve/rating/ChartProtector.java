package ringout.solve.rating;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.graph.Wire;
import ringout.graph.wire.WireTable;
import ringout.model.Awg;

/** The largest breaker and fuse of a wire by FAA AC 43.13-1B, table 11-3; the sizes above 4 stand here only. */
final class ChartProtector {
    private static final double ROUNDING = 0.03;
    private static final double NONE = 0;
    /** Breakers fill sizes 22 to 2 in their order (from memory); sizes 1 and 0 have a fuse only. */
    private static final List<WireTable.Row> THICK = List.of(
            new WireTable.Row(2, Double.NaN, 125, 100),
            new WireTable.Row(1, Double.NaN, NONE, 150),
            new WireTable.Row(0, Double.NaN, NONE, 150));

    private ChartProtector() {}

    /** {@return the largest protector in A of a wire, if the chart has one} A size between two rows counts as the thinner one. */
    static OptionalDouble largest(Wire wire, Protector kind) {
        Optional<WireTable.Row> best = Optional.empty();
        double area = wire.areaMm2().or(0.0) * (1 + ROUNDING);
        for (List<WireTable.Row> rows : List.of(WireTable.rows(), THICK)) {
            for (WireTable.Row row : rows) {
                if (new Awg(row.gauge()).areaMm2() <= area) {
                    best = Optional.of(row);
                }
            }
        }
        double amps = best.map(row -> kind == Protector.FUSE ? row.fuseA() : row.breakerA())
                .orElse(NONE);
        return amps > 0 ? OptionalDouble.of(amps) : OptionalDouble.empty();
    }
}
