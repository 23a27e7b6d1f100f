package ringout.solve.rating;

import java.util.List;

/**
 * FAA AC 43.13-1B, table 11-6: the voltage that may drop between bus and equipment ground. The table is from memory; its continuous
 * column is that of tables 11-7 and 11-8, which were read.
 */
final class VoltageDropTable {
    private record Row(double systemV, double continuousV, double intermittentV) {}

    private static final List<Row> ROWS =
            List.of(new Row(14, 0.5, 1), new Row(28, 1, 2), new Row(115, 4, 8), new Row(200, 7, 14));

    private VoltageDropTable() {}

    /** {@return the drop allowed in V} A voltage between two rows goes by the lower one, in proportion. */
    static double allowedV(double systemV, boolean continuous) {
        Row best = ROWS.get(0);
        for (Row row : ROWS) {
            if (row.systemV <= systemV) {
                best = row;
            }
        }
        return (continuous ? best.continuousV : best.intermittentV) * systemV / best.systemV;
    }
}
