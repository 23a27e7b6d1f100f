package ringout.graph.route;

import java.util.List;

/**
 * The box around the points of a way: what lies apart from it lies apart from the way.
 *
 * @param least corner with the lowest coordinates
 * @param most corner with the highest coordinates
 */
public record Box(Spot least, Spot most) {
    private static final Spot FAR = new Spot(Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE);
    private static final Spot BACK = new Spot(-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE);

    /** The box around some points; around none it is near nothing. */
    static Box around(List<Spot> spots) {
        Spot least = FAR;
        Spot most = BACK;
        for (Spot spot : spots) {
            least = new Spot(
                    Math.min(least.xMm(), spot.xMm()),
                    Math.min(least.yMm(), spot.yMm()),
                    Math.min(least.zMm(), spot.zMm()));
            most = new Spot(
                    Math.max(most.xMm(), spot.xMm()),
                    Math.max(most.yMm(), spot.yMm()),
                    Math.max(most.zMm(), spot.zMm()));
        }
        return new Box(least, most);
    }

    /** Whether two boxes come within a distance in mm along every axis. */
    public boolean near(Box other, double withinMm) {
        return least.xMm() <= other.most.xMm() + withinMm
                && other.least.xMm() <= most.xMm() + withinMm
                && least.yMm() <= other.most.yMm() + withinMm
                && other.least.yMm() <= most.yMm() + withinMm
                && least.zMm() <= other.most.zMm() + withinMm
                && other.least.zMm() <= most.zMm() + withinMm;
    }
}
