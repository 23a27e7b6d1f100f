package ringout.draw.site;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.site.SiteScene.Ring;
import ringout.draw.site.SiteScene.Route;
import ringout.draw.site.SiteScene.Sign;
import ringout.draw.site.SiteScene.Thing;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** The ink of one view: rings, routes, signs, and the arrow to the nose. */
final class SiteInk {
    private static final double HALF = 1.2;

    private SiteInk() {}

    static List<Ink> draw(SiteScene scene, View view) {
        List<Ink> ink = new ArrayList<>();
        scene.rings().forEach(ring -> ink.add(ring(ring, view)));
        scene.routes().forEach(route -> ink.add(route(route, view)));
        scene.things().forEach(thing -> ink.add(thing(thing, view)));
        ink.addAll(head(view));
        return ink;
    }

    /** The name of a view and its arrow, in its upper left corner. */
    private static List<Ink> head(View view) {
        Point at = new Point(view.area().x() + 4, view.area().y() + 1);
        List<Point> arrow = List.of(
                at,
                at.plus(3, 4.5),
                at.plus(1.1, 4.5),
                at.plus(1.1, 8),
                at.plus(-1.1, 8),
                at.plus(-1.1, 4.5),
                at.plus(-3, 4.5));
        return List.of(
                Patch.polygon("nose", arrow, Paint.of(Palette.BLACK), Pen.NONE),
                Print.bold("nose", at.x() + 5, at.y() + 2.5, Align.START),
                Print.small(view.name(), at.x() + 5, at.y() + 6.8, Align.START));
    }

    private static Ink ring(Ring ring, View view) {
        Point middle = view.at(ring.at());
        double radius = ring.radiusMm() * view.scale();
        Area area = new Area(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius);
        Tag tag = Tag.of("ring").with("thing", thingOf(ring.id(), view)).with("ring", ring.id());
        Pen pen = Pen.dashed(Palette.BLUE, Lines.MEDIUM, 2.0, 1.0);
        return new Cluster(tag.titled(ring.words(), ""), List.of(Patch.ellipse("reach", area, Paint.clear(), pen)));
    }

    private static Ink route(Route route, View view) {
        List<Point> points = route.points().stream().map(view::at).toList();
        Tag tag = Tag.of("route").with("route", route.lead()).with("known", Boolean.toString(route.known()));
        return new Cluster(
                tag.titled(route.lead(), ""), List.of(new Stroke(Tag.of("way"), points, pen(route.known()))));
    }

    /** How a route is drawn. */
    static Pen pen(boolean known) {
        return known ? Pen.solid(Palette.BLACK, Lines.STRONG) : Pen.dashed(Palette.DARK_GREY, Lines.THIN, 1.2, 1.0);
    }

    private static Ink thing(Thing thing, View view) {
        Point at = view.at(thing.at());
        Tag tag = Tag.of("place")
                .with("thing", thingOf(thing.id(), view))
                .with("place", thing.id())
                .with("view", view.fromAbove() ? "top" : "side");
        return new Cluster(tag.titled(thing.words(), ""), sign(thing.sign(), at));
    }

    /** Name of something in a view, as the verifier looks for it. */
    static String thingOf(String id, View view) {
        return id + (view.fromAbove() ? ", top" : ", side");
    }

    /** A sign about a middle. */
    static List<Ink> sign(Sign sign, Point at) {
        Area box = new Area(at.x() - HALF, at.y() - HALF, 2 * HALF, 2 * HALF);
        Pen pen = Pen.solid(Palette.BLACK, Lines.MEDIUM);
        Paint black = Paint.of(Palette.BLACK);
        Paint white = Paint.of(Palette.WHITE);
        return switch (sign) {
            case UNIT -> List.of(Patch.ellipse("sign", box, black, Pen.NONE));
            case ANTENNA ->
                List.of(Patch.polygon(
                        "sign", List.of(at.plus(0, 1.6), at.plus(1.9, -1.4), at.plus(-1.9, -1.4)), white, pen));
            case COMPASS ->
                List.of(
                        Patch.ellipse("sign", box.grown(0.6), white, pen),
                        new Stroke(Tag.NONE, List.of(at.plus(-1.8, 0), at.plus(1.8, 0)), pen),
                        new Stroke(Tag.NONE, List.of(at.plus(0, -1.8), at.plus(0, 1.8)), pen));
            case FLAG ->
                List.of(Patch.polygon(
                        "sign",
                        List.of(at.plus(0, -1.7), at.plus(1.7, 0), at.plus(0, 1.7), at.plus(-1.7, 0)),
                        white,
                        pen));
            case BUNDLE -> List.of(Patch.rectangle("sign", box, white, pen));
        };
    }
}
