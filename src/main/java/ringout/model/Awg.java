package ringout.model;

/**
 * A wire size by American wire gauge.
 *
 * @param gauge gauge number; 0 is 1/0, -1 is 2/0, -2 is 3/0, -3 is 4/0
 */
public record Awg(int gauge) {
    private static final double SMALLEST_INCH = 0.005;
    private static final double RATIO = 92;
    private static final double STEPS = 39;
    private static final double MM_PER_INCH = 25.4;
    private static final int THICKEST = -3;
    private static final int THINNEST = 40;

    /** Whether there is wire of such a gauge: 4/0 to 40. Beyond, another unit was meant. */
    public boolean isUsual() {
        return gauge >= THICKEST && gauge <= THINNEST;
    }

    /** Diameter of the solid conductor in mm (ASTM B258). */
    public double diameterMm() {
        return SMALLEST_INCH * Math.pow(RATIO, (36 - gauge) / STEPS) * MM_PER_INCH;
    }

    /** Cross-section in mm2 (ASTM B258). */
    public double areaMm2() {
        double d = diameterMm();
        return Math.PI / 4 * d * d;
    }

    /** The gauge nearest to a cross-section in mm2. */
    public static Awg nearest(double areaMm2) {
        double d = Math.sqrt(areaMm2 * 4 / Math.PI) / MM_PER_INCH;
        return new Awg((int) Math.round(36 - STEPS * Math.log(d / SMALLEST_INCH) / Math.log(RATIO)));
    }

    @Override
    public String toString() {
        return gauge > 0 ? Integer.toString(gauge) : (1 - gauge) + "/0";
    }

    @Override
    public boolean equals(Object other) {
        return this == other || (other instanceof Awg that && gauge == that.gauge);
    }

    @Override
    public int hashCode() {
        return gauge;
    }
}
