package ringout.draw.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ringout.draw.map.MapScene.MapRotor;
import ringout.draw.map.MapScene.Spot;
import ringout.draw.map.MapScene.Tier;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;

/**
 * Rotors at their places around the hub, nose up. Rotors above each other stand side by side along their arm, the upper one
 * outside.
 *
 * @param hub middle of the airframe
 * @param radius of every disc, mm
 * @param middles of the discs by identifier
 */
record MapPlaced(Point hub, double radius, Map<String, Point> middles) {
    /** Free around the hub, mm. */
    static final double HUB = 14;

    private static final List<Double> RADII = List.of(16.0, 15.0, 14.0, 13.0);
    private static final double CLEAR = Rounds.REACH + 0.6;

    /** {@return the rotors in an area, the largest discs that do not meet; nothing when the area is too small} */
    static Optional<MapPlaced> place(List<MapRotor> rotors, Area area) {
        for (double radius : RADII) {
            Optional<MapPlaced> placed = place(rotors, area, radius);
            if (placed.isPresent()) {
                return placed;
            }
        }
        return Optional.empty();
    }

    private static Optional<MapPlaced> place(List<MapRotor> rotors, Area area, double radius) {
        double scale = Double.MAX_VALUE;
        double edge = radius + CLEAR;
        for (MapRotor rotor : rotors) {
            Spot spot = rotor.spot().orElse(new Spot(0, 0));
            double out = out(rotor, radius);
            double far = Math.hypot(spot.forwardMm(), spot.rightMm());
            double roomX = area.width() / 2 - edge;
            double roomY = area.height() / 2 - edge;
            double shareX = far == 0 ? 0 : Math.abs(spot.rightMm()) / far;
            double shareY = far == 0 ? 0 : Math.abs(spot.forwardMm()) / far;
            double mostX = shareX < 1e-9 ? Double.MAX_VALUE : roomX / shareX;
            double mostY = shareY < 1e-9 ? Double.MAX_VALUE : roomY / shareY;
            if (far > 0) {
                scale = Math.min(scale, (Math.min(mostX, mostY) - out) / far);
            }
        }
        if (scale <= 0) {
            return Optional.empty();
        }
        Point hub = area.centre();
        Map<String, Point> middles = new TreeMap<>();
        for (MapRotor rotor : rotors) {
            Optional<Spot> spot = rotor.spot();
            if (spot.isPresent()) {
                middles.put(rotor.id(), middle(rotor, spot.get(), hub, scale, radius));
            }
        }
        boolean fits = apart(new ArrayList<>(middles.values()), radius)
                && middles.values().stream()
                        .allMatch(middle -> area.contains(around(middle, edge)) && middle.distance(hub) > radius + HUB);
        return fits ? Optional.of(new MapPlaced(hub, radius, middles)) : Optional.empty();
    }

    private static Area around(Point middle, double half) {
        return new Area(middle.x() - half, middle.y() - half, 2 * half, 2 * half);
    }

    /** How far out of its place along its arm a rotor is drawn. */
    private static double out(MapRotor rotor, double radius) {
        double step = radius + CLEAR / 2;
        return rotor.tier() == Tier.UPPER ? step : rotor.tier() == Tier.LOWER ? -step : 0;
    }

    private static Point middle(MapRotor rotor, Spot spot, Point hub, double scale, double radius) {
        double far = Math.hypot(spot.forwardMm(), spot.rightMm());
        if (far == 0) {
            return hub;
        }
        double at = far * scale + out(rotor, radius);
        return hub.plus(at * spot.rightMm() / far, -at * spot.forwardMm() / far);
    }

    private static boolean apart(List<Point> middles, double radius) {
        for (int i = 0; i < middles.size(); i++) {
            for (Point other : middles.subList(i + 1, middles.size())) {
                if (middles.get(i).distance(other) < 2 * radius + CLEAR) {
                    return false;
                }
            }
        }
        return true;
    }
}
