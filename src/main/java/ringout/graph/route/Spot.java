package ringout.graph.route;

/**
 * A point in the axes of the airframe.
 *
 * @param xMm forward of the hub
 * @param yMm right of the hub
 * @param zMm above the hub
 */
public record Spot(double xMm, double yMm, double zMm) {
    /** Distance to another point in mm. */
    public double to(Spot other) {
        double x = other.xMm - xMm;
        double y = other.yMm - yMm;
        double z = other.zMm - zMm;
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** The point a part of the way towards another: 0 is here, 1 is there. */
    Spot towards(Spot other, double part) {
        return new Spot(xMm + part * (other.xMm - xMm), yMm + part * (other.yMm - yMm), zMm + part * (other.zMm - zMm));
    }

    /** Distance in mm to the straight piece between two points. */
    double to(Spot start, Spot end) {
        double long2 = start.to(end) * start.to(end);
        if (long2 == 0) {
            return to(start);
        }
        double along = (xMm - start.xMm) * (end.xMm - start.xMm)
                + (yMm - start.yMm) * (end.yMm - start.yMm)
                + (zMm - start.zMm) * (end.zMm - start.zMm);
        return to(start.towards(end, Math.max(0, Math.min(1, along / long2))));
    }
}
