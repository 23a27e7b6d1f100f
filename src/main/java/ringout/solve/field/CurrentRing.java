package ringout.solve.field;

import java.util.List;

/**
 * A current round a closed loop of straight pieces. The last corner is joined to the first: a current that ends
 * somewhere does not exist, and the sum over open pieces is far off.
 *
 * @param corners at least two places, in the order the current passes them
 * @param amps the current
 */
public record CurrentRing(List<Spot> corners, double amps) {
    /** Field constant over 4 pi, in microtesla times millimetre per ampere: 1e-7 T m/A. */
    private static final double CONSTANT = 100;

    /** Keeps its own copy. */
    public CurrentRing {
        corners = List.copyOf(corners);
        if (corners.size() < 2) {
            throw new IllegalArgumentException("a ring has two corners at least");
        }
    }

    /**
     * The ring of a pair of conductors below the middle of a compass at the hub: two long pieces and both ends.
     *
     * @param lengthMm length of the pair
     * @param spacingMm spacing of its conductors
     * @param belowMm distance of its middle below the compass
     * @param amps the current out and back
     * @param onEdge one conductor above the other, instead of side by side
     */
    public static CurrentRing pair(double lengthMm, double spacingMm, double belowMm, double amps, boolean onEdge) {
        double x = lengthMm / 2;
        double half = spacingMm / 2;
        double y = onEdge ? 0 : half;
        double z = onEdge ? half : 0;
        return new CurrentRing(
                List.of(
                        new Spot(-x, -y, -z - belowMm),
                        new Spot(x, -y, -z - belowMm),
                        new Spot(x, y, z - belowMm),
                        new Spot(-x, y, z - belowMm)),
                amps);
    }

    /** The field at a place: the sum over all pieces by the law of Biot and Savart. */
    public Field at(Spot place) {
        Field sum = Field.NONE;
        for (int i = 0; i < corners.size(); i++) {
            sum = sum.plus(piece(corners.get(i), corners.get((i + 1) % corners.size()), amps, place));
        }
        return sum;
    }

    /**
     * The share of a straight piece in the field, in the form that stays exact near its line: Hanson and Hirshman, Compact
     * expressions for the Biot-Savart fields of a filamentary segment, Physics of Plasmas 9 (2002) 4410, equation 9.
     */
    static Field piece(Spot from, Spot to, double amps, Spot place) {
        Spot way = to.minus(from);
        Spot start = place.minus(from);
        double length = way.length();
        double near = start.length();
        double far = place.distance(to);
        double both = near + far;
        double under = near * far * ((both * both) - (length * length));
        if (length < Double.MIN_NORMAL) {
            return Field.NONE;
        }
        // on the piece itself the field has no bound
        double factor = CONSTANT * amps * 2 * both / Math.max(under, Double.MIN_NORMAL);
        return new Field(
                factor * ((way.yMm() * start.zMm()) - (way.zMm() * start.yMm())),
                factor * ((way.zMm() * start.xMm()) - (way.xMm() * start.zMm())),
                factor * ((way.xMm() * start.yMm()) - (way.yMm() * start.xMm())));
    }
}
