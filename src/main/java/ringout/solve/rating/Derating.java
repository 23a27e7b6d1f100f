package ringout.solve.rating;

/** Corrections of a wire's current and resistance for temperature and altitude (FAA AC 43.13-1B, chapter 11). */
public final class Derating {
    /** Zero of the resistance of copper below 20 degC: 234.5 degC under zero. */
    private static final double COPPER_ZERO = 234.5;

    private static final double REFERENCE_C = 20;

    /** Points of the altitude curve: 20,000 ft read, 60,000 ft from memory; in ft. */
    private static final double[] FEET = {0, 20_000, 60_000};

    private static final double[] ALTITUDE = {1.00, 0.91, 0.79};

    private Derating() {}

    /**
     * {@return the factor of altitude} Straight between the points of the curve that are known, flat beyond its end.
     *
     * @param feet altitude in ft
     */
    public static double altitude(double feet) {
        for (int i = 1; i < FEET.length; i++) {
            if (feet <= FEET[i]) {
                double part = Math.max(0, feet - FEET[i - 1]) / (FEET[i] - FEET[i - 1]);
                return ALTITUDE[i - 1] + part * (ALTITUDE[i] - ALTITUDE[i - 1]);
            }
        }
        return ALTITUDE[ALTITUDE.length - 1];
    }

    /**
     * {@return the factor on a current when the rise the insulation allows differs from that of the table} Heat goes with the
     * square of the current, so the current goes with the root of the rise.
     *
     * @param riseK rise allowed in K
     * @param tableRiseK rise the table was made for in K
     */
    public static double rise(double riseK, double tableRiseK) {
        return Math.sqrt(Math.max(0, riseK) / tableRiseK);
    }

    /**
     * {@return the temperature of the conductor in degC} {@code T2 = T1 + (TR - T1) sqrt(I2 / Imax)} as the circular has it.
     *
     * @param ambientC ambient in degC
     * @param ratedC rating of the insulation in degC
     * @param amps current in A
     * @param largestA current that brings the conductor to its rating, in A
     */
    public static double conductorC(double ambientC, double ratedC, double amps, double largestA) {
        return ambientC + (ratedC - ambientC) * Math.sqrt(amps / largestA);
    }

    /**
     * {@return the length that drops as much when warm as the given one at 20 degC} {@code L2 = 254.5 L1 / (234.5 + T2)}, in the unit
     * of the given length.
     *
     * @param length length at 20 degC
     * @param conductorC temperature of the conductor in degC
     */
    public static double lengthWarm(double length, double conductorC) {
        return length * (COPPER_ZERO + REFERENCE_C) / (COPPER_ZERO + conductorC);
    }
}
