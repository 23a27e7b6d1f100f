package ringout.draw.site;

import java.util.List;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.site.SiteScene.Place;

/**
 * One view of the aircraft on the sheet, nose up.
 *
 * @param name of the view
 * @param fromAbove whether it is seen from above; else from the right, with up to the left
 * @param scale mm on the sheet for a mm of the aircraft
 * @param origin where the hub lies
 * @param area what the view takes
 */
record View(String name, boolean fromAbove, double scale, Point origin, Area area) {
    /** Where a place lies on the sheet. */
    Point at(Place place) {
        double across = fromAbove ? place.right() : -place.up();
        return origin.plus(across * scale, -place.forward() * scale);
    }

    /** The view of some places in an area, their middle in its middle. */
    static View of(String name, boolean fromAbove, double scale, List<Place> places, Area area) {
        View zero = new View(name, fromAbove, scale, new Point(0, 0), area);
        Area extent = zero.extent(places);
        Point middle = extent.centre();
        Point centre = area.centre();
        return new View(name, fromAbove, scale, new Point(centre.x() - middle.x(), centre.y() - middle.y()), area);
    }

    /** What some places take on the sheet. */
    Area extent(List<Place> places) {
        double left = places.stream().mapToDouble(place -> at(place).x()).min().orElse(0);
        double right = places.stream().mapToDouble(place -> at(place).x()).max().orElse(0);
        double top = places.stream().mapToDouble(place -> at(place).y()).min().orElse(0);
        double bottom =
                places.stream().mapToDouble(place -> at(place).y()).max().orElse(0);
        return Area.between(left, top, right, bottom);
    }
}
