package ringout.solve.rotor;

/**
 * A rotor as it lifts.
 *
 * @param number motor number
 * @param forwardM place forward of the hub in m
 * @param rightM place right of the hub in m
 * @param clockwise whether it turns clockwise seen from above
 * @param maxKgf largest thrust in kgf
 */
public record Thruster(int number, double forwardM, double rightM, boolean clockwise, double maxKgf) {
    private static final double MM = 1000;

    /** {@return the rotor at a bearing from the nose, right positive, and a distance from the hub} */
    public static Thruster at(int number, double bearingDeg, double radiusMm, boolean clockwise, double maxKgf) {
        double bearing = Math.toRadians(bearingDeg);
        return new Thruster(
                number, radiusMm / MM * Math.cos(bearing), radiusMm / MM * Math.sin(bearing), clockwise, maxKgf);
    }
}
