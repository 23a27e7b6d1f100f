package ringout.solve.field;

/**
 * A place in the aircraft, in millimetres from the hub. The axes are those of the list (forward, right, up), which are
 * left-handed: fields computed from them point the other way round, by the same amount and at the same slope.
 *
 * @param xMm forward
 * @param yMm right
 * @param zMm up
 */
public record Spot(double xMm, double yMm, double zMm) {
    /** How far it is to another place, mm. */
    public double distance(Spot other) {
        return minus(other).length();
    }

    /** The way from another place to this one. */
    Spot minus(Spot other) {
        return new Spot(xMm - other.xMm, yMm - other.yMm, zMm - other.zMm);
    }

    double length() {
        return Math.sqrt((xMm * xMm) + (yMm * yMm) + (zMm * zMm));
    }
}
