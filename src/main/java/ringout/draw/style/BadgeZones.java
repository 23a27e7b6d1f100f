package ringout.draw.style;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Tag;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.paper.SheetSize;
import ringout.draw.paper.ZoneGrid;

/** In which zones of a sheet the badges of each number stand: so that one can say "number 2 at C4" on the phone. */
final class BadgeZones {
    private final ZoneGrid grid;
    private final Map<String, List<String>> zones = new TreeMap<>();

    private BadgeZones(SheetSize size) {
        this.grid = new ZoneGrid(size);
    }

    /** {@return for each number its zones, in the order of the ink, each once} */
    static Map<String, List<String>> of(List<Ink> ink, SheetSize size) {
        BadgeZones found = new BadgeZones(size);
        ink.forEach(found::look);
        return found.zones;
    }

    private void look(Ink ink) {
        if (ink instanceof Cluster cluster && cluster.tag().classes().equals("badge")) {
            String number = cluster.tag().data().stream()
                    .filter(fact -> fact.name().equals("number"))
                    .map(Tag.Fact::value)
                    .findFirst()
                    .orElse("");
            cluster.parts().stream()
                    .filter(part ->
                            part instanceof Patch patch && patch.tag().classes().equals("shape"))
                    .forEach(part -> note(number, ((Patch) part).outline()));
        } else if (ink instanceof Cluster cluster) {
            cluster.parts().forEach(this::look);
        }
    }

    private void note(String number, Patch.Outline outline) {
        List<String> known = zones.computeIfAbsent(number, key -> new ArrayList<>());
        String zone = grid.zoneOf(around(outline).centre());
        if (!known.contains(zone)) {
            known.add(zone);
        }
    }

    private static Area around(Patch.Outline outline) {
        if (outline instanceof Patch.Rectangle rectangle) {
            return rectangle.area();
        }
        if (outline instanceof Patch.Ellipse ellipse) {
            return ellipse.area();
        }
        List<Point> corners = ((Patch.Polygon) outline).corners();
        return Area.between(
                corners.stream().mapToDouble(Point::x).min().orElse(0),
                corners.stream().mapToDouble(Point::y).min().orElse(0),
                corners.stream().mapToDouble(Point::x).max().orElse(0),
                corners.stream().mapToDouble(Point::y).max().orElse(0));
    }
}
