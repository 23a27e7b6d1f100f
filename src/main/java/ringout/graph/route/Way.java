package ringout.graph.route;

import java.util.ArrayList;
import java.util.List;
import ringout.model.Lead;
import ringout.model.RoutePoint;

/**
 * The points of the way of a lead whose place is known, in order, joined by straight pieces. A lead is at least as long.
 *
 * @param spots the points
 */
public record Way(List<Spot> spots) {
    private static final int HALVINGS = 50;

    /** The way of a lead by its points; those without a place are left out. */
    public static Way of(Lead lead) {
        return of(lead.route());
    }

    /** The way along some points; those without a place are left out. */
    public static Way of(List<RoutePoint> points) {
        if (points.isEmpty()) {
            return new Way(List.of());
        }
        List<Spot> spots = new ArrayList<>();
        for (RoutePoint point : points) {
            if (point.xMm().isKnown() && point.yMm().isKnown() && point.zMm().isKnown()) {
                spots.add(new Spot(
                        point.xMm().or(0.0), point.yMm().or(0.0), point.zMm().or(0.0)));
            }
        }
        return new Way(List.copyOf(spots));
    }

    /** Length along the points in mm; 0 with fewer than two. */
    public double lengthMm() {
        double length = 0;
        for (int i = 1; i < spots.size(); i++) {
            length += spots.get(i - 1).to(spots.get(i));
        }
        return length;
    }

    /** The box around it. */
    public Box box() {
        return Box.around(spots);
    }

    /**
     * {@return the length in mm of this way that lies within a distance in mm of another way} The distance to a straight piece
     * is convex along a straight piece, so what lies near it is one stretch; the stretches near several pieces are
     * counted once where they overlap.
     */
    public double besideMm(Way other, double withinMm) {
        double beside = 0;
        for (int i = 1; i < spots.size(); i++) {
            List<double[]> stretches = new ArrayList<>();
            for (int j = 1; j < other.spots.size(); j++) {
                double[] near =
                        near(spots.get(i - 1), spots.get(i), other.spots.get(j - 1), other.spots.get(j), withinMm);
                if (near.length > 0) {
                    stretches.add(near);
                }
            }
            beside += covered(stretches) * spots.get(i - 1).to(spots.get(i));
        }
        return beside;
    }

    /** Part of a piece that stretches cover together. */
    private static double covered(List<double[]> stretches) {
        stretches.sort((a, b) -> Double.compare(a[0], b[0]));
        double covered = 0;
        double end = 0;
        for (double[] stretch : stretches) {
            covered += Math.max(0, stretch[1] - Math.max(end, stretch[0]));
            end = Math.max(end, stretch[1]);
        }
        return covered;
    }

    /** Where on the piece from a to b the piece from c to d is near: parts of it from 0 to 1, or nothing. */
    private static double[] near(Spot a, Spot b, Spot c, Spot d, double withinMm) {
        double nearest = nearest(a, b, c, d);
        if (a.towards(b, nearest).to(c, d) > withinMm) {
            return new double[0];
        }
        return new double[] {edge(a, b, c, d, nearest, 0, withinMm), edge(a, b, c, d, nearest, 1, withinMm)};
    }

    /** Where the distance is least: halving the piece by the slope of a convex function. */
    private static double nearest(Spot a, Spot b, Spot c, Spot d) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double third = (high - low) / 3;
            double first = a.towards(b, low + third).to(c, d);
            double second = a.towards(b, high - third).to(c, d);
            if (first <= second) {
                high -= third;
            }
            if (first >= second) {
                low += third;
            }
        }
        return (low + high) / 2;
    }

    private static double edge(Spot a, Spot b, Spot c, Spot d, double inside, double end, double withinMm) {
        if (a.towards(b, end).to(c, d) <= withinMm) {
            return end;
        }
        double in = inside;
        double out = end;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (in + out) / 2;
            if (a.towards(b, middle).to(c, d) <= withinMm) {
                in = middle;
            } else {
                out = middle;
            }
        }
        return in;
    }
}
