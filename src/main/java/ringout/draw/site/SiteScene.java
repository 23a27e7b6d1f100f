package ringout.draw.site;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Mark;
import ringout.draw.scene.SheetInfo;

/**
 * Units and routes at their places in the aircraft, ready to be drawn to scale.
 *
 * @param info the title block
 * @param things units and points of routes with known coordinates
 * @param routes ways of leads between them
 * @param rings how near a current may come to a compass
 * @param unplaced what has no coordinates, in lines by zone
 * @param marks badges on things
 * @param findings the finding list
 * @param notes lines below it
 */
public record SiteScene(
        SheetInfo info,
        List<Thing> things,
        List<Route> routes,
        List<Ring> rings,
        List<String> unplaced,
        List<Mark> marks,
        List<FindingLine> findings,
        List<String> notes) {
    /** What a thing is drawn as. */
    public enum Sign {
        /** Dot. */
        UNIT("unit"),
        /** Triangle. */
        ANTENNA("unit with an antenna"),
        /** Cross in a circle. */
        COMPASS("compass"),
        /** Diamond. */
        FLAG("edge, hinge, hole, clamp on a route"),
        /** Square. */
        BUNDLE("middle of a bundle");

        private final String words;

        Sign(String words) {
            this.words = words;
        }

        /** {@return the words of the legend} */
        public String words() {
            return words;
        }
    }

    /**
     * A place in the aircraft, mm from the hub.
     *
     * @param forward towards the nose
     * @param right to the right
     * @param up upwards
     */
    public record Place(double forward, double right, double up) {}

    /**
     * Something at a place.
     *
     * @param id identifier on the sheet
     * @param words its label
     * @param sign how it is drawn
     * @param at where it is
     */
    public record Thing(String id, String words, Sign sign, Place at) {}

    /**
     * The way of a lead.
     *
     * @param lead its name
     * @param known whether its points are given; else it is drawn straight from unit to unit
     * @param points at least two
     */
    public record Route(String lead, boolean known, List<Place> points) {
        /** Keeps an unmodifiable copy. */
        public Route {
            points = List.copyOf(points);
        }
    }

    /**
     * A distance round a compass.
     *
     * @param id identifier on the sheet
     * @param words what happens nearer than that
     * @param at the compass
     * @param radiusMm the distance
     */
    public record Ring(String id, String words, Place at, double radiusMm) {}

    /** Keeps unmodifiable copies and refuses a scene that contradicts itself. */
    public SiteScene {
        things = List.copyOf(things);
        routes = List.copyOf(routes);
        rings = List.copyOf(rings);
        unplaced = List.copyOf(unplaced);
        marks = List.copyOf(marks);
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
        Set<String> known = new HashSet<>();
        things.forEach(thing -> need(known.add(thing.id()), "identifier used twice: " + thing.id()));
        rings.forEach(ring -> need(known.add(ring.id()), "identifier used twice: " + ring.id()));
        marks.forEach(
                mark -> mark.targets().forEach(target -> need(known.contains(target), "mark on unknown " + target)));
    }

    private static void need(boolean kept, String breach) {
        if (!kept) {
            throw new IllegalArgumentException(breach);
        }
    }
}
