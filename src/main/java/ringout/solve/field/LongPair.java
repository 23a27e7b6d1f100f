package ringout.solve.field;

/**
 * Fields of conductors so long that their ends do not matter, in microtesla. Field constant over 2 pi: 0.2 microtesla
 * times metre per ampere.
 */
public final class LongPair {
    private static final double CONSTANT = 0.2;
    private static final double MM_IN_M = 1000;

    private LongPair() {}

    /**
     * One long wire with no return near it.
     *
     * @param amps its current
     * @param distanceMm distance from its line
     */
    public static double wire(double amps, double distanceMm) {
        return CONSTANT * amps / (distanceMm / MM_IN_M);
    }

    /**
     * Two long wires side by side, out and back: the same amount all round, level or upright depending on where one stands.
     *
     * @param amps current in each
     * @param spacingMm spacing of their lines
     * @param distanceMm distance from their middle, much more than the spacing
     */
    public static double pair(double amps, double spacingMm, double distanceMm) {
        return wire(amps, distanceMm) * spacingMm / distanceMm;
    }
}
