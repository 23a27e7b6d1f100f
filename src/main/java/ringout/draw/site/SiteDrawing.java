package ringout.draw.site;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringout.draw.form.BadgeForm;
import ringout.draw.form.BadgeIndex;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.paper.SheetSize;
import ringout.draw.site.SiteScene.Place;
import ringout.draw.site.SiteScene.Ring;
import ringout.draw.site.SiteScene.Sign;
import ringout.draw.site.SiteScene.Thing;
import ringout.draw.style.Drawn;
import ringout.draw.style.LegendEntries;
import ringout.draw.style.LegendEntry;
import ringout.draw.style.Lines;
import ringout.draw.style.Margins;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** Draws the plan to a plain scale: labels, view from above, labels, view from the side, labels. */
public final class SiteDrawing {
    private static final List<Double> SCALES =
            List.of(1.0, 2.0, 2.5, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 50.0, 100.0, 200.0, 500.0);

    private static final double WIDEST_LABEL = 60;
    private static final double EDGE = 7;
    private static final double LINE = 4.2;

    private final SiteScene scene;
    private final BadgeIndex badges;

    private SiteDrawing(SiteScene scene) {
        this.scene = scene;
        badges = new BadgeIndex(scene.marks());
    }

    /** {@return the plan on the first of some sizes that holds it; the finding list is left out before a size is skipped} */
    public static Optional<Drawn> of(SiteScene scene, List<SheetSize> sizes) {
        SiteDrawing drawing = new SiteDrawing(scene);
        for (Margins margins :
                Margins.inTurn(sizes, scene.info(), legend(scene), scene.findings(), scene.notes(), scene.notes())) {
            Optional<List<Ink>> ink = drawing.fill(margins.drawing());
            if (ink.isPresent()) {
                return Optional.of(new Drawn(margins, scene.info().title(), ink.get(), List.of(), drawing.things()));
            }
        }
        return Optional.empty();
    }

    /** Everything in both views, and its label beside each. */
    private List<String> things() {
        List<String> things = new ArrayList<>();
        List<String> ids = new ArrayList<>();
        scene.things().forEach(thing -> ids.add(thing.id()));
        scene.rings().forEach(ring -> ids.add(ring.id()));
        for (String id : ids) {
            for (String view : List.of(", top", ", side")) {
                things.add(id + view);
                things.add(id + view + " label");
            }
        }
        return things;
    }

    private Optional<List<Ink>> fill(Area whole) {
        List<String> lines = new ArrayList<>();
        scene.unplaced()
                .forEach(line -> lines.addAll(Lettering.wrap(line, Lettering.SMALL, Weight.REGULAR, whole.width(), 3)));
        double foot = lines.size() * LINE;
        Area area = new Area(whole.x(), whole.y(), whole.width(), whole.height() - foot);
        List<Ink> ink = new ArrayList<>();
        if (!scene.things().isEmpty()) {
            Optional<List<Ink>> views = views(area);
            if (views.isEmpty()) {
                return Optional.empty();
            }
            ink.addAll(views.get());
        }
        double y = area.bottom() + LINE / 2;
        for (String line : lines) {
            ink.add(Print.small(line, area.x(), y, Align.START));
            y += LINE;
        }
        return area.height() < 0 ? Optional.empty() : Optional.of(ink);
    }

    private Optional<List<Ink>> views(Area area) {
        List<Place> places = new ArrayList<>();
        scene.things().forEach(thing -> places.add(thing.at()));
        scene.routes().forEach(route -> places.addAll(route.points()));
        scene.rings().forEach(ring -> places.addAll(edges(ring)));
        double labels = labels();
        double room = area.width() - 3 * labels - 4 * EDGE;
        for (double one : SCALES) {
            Area top = View.of("", true, 1 / one, places, area).extent(places);
            Area side = View.of("", false, 1 / one, places, area).extent(places);
            if (top.width() + side.width() <= room && top.height() + 2 * EDGE <= area.height()) {
                double spare = (room - top.width() - side.width()) / 2;
                double left = area.x() + labels;
                double wide = top.width() + 2 * EDGE + spare;
                Area topArea = new Area(left, area.y(), wide, area.height());
                Area sideArea =
                        new Area(left + wide + labels, area.y(), side.width() + 2 * EDGE + spare, area.height());
                String scale = ", 1 : " + (one == Math.rint(one) ? Integer.toString((int) one) : Double.toString(one));
                View above = View.of("from above" + scale, true, 1 / one, places, topArea);
                View right = View.of("from the right, up is left" + scale, false, 1 / one, places, sideArea);
                return draw(above, right, area, labels);
            }
        }
        return Optional.empty();
    }

    private static List<Place> edges(Ring ring) {
        Place at = ring.at();
        double r = ring.radiusMm();
        return List.of(
                new Place(at.forward() + r, at.right() + r, at.up() + r),
                new Place(at.forward() - r, at.right() - r, at.up() - r));
    }

    private Optional<List<Ink>> draw(View above, View right, Area area, double labels) {
        LabelColumn one = new LabelColumn(badges);
        LabelColumn two = new LabelColumn(badges);
        LabelColumn three = new LabelColumn(badges);
        for (Thing thing : scene.things()) {
            Point at = above.at(thing.at());
            (at.x() < above.area().centre().x() ? one : two)
                    .add(thing.id(), SiteInk.thingOf(thing.id(), above) + " label", thing.words(), at);
            three.add(thing.id(), SiteInk.thingOf(thing.id(), right) + " label", thing.words(), right.at(thing.at()));
        }
        for (Ring ring : scene.rings()) {
            double r = ring.radiusMm() * above.scale() * Math.sqrt(0.5);
            two.add(
                    ring.id(),
                    SiteInk.thingOf(ring.id(), above) + " label",
                    ring.words(),
                    above.at(ring.at()).plus(r, -r));
            three.add(
                    ring.id(),
                    SiteInk.thingOf(ring.id(), right) + " label",
                    ring.words(),
                    right.at(ring.at()).plus(r, -r));
        }
        Optional<List<Ink>> left = one.draw(column(area, area.x(), labels), false);
        Optional<List<Ink>> middle = two.draw(column(area, above.area().right(), labels), true);
        Optional<List<Ink>> last = three.draw(column(area, right.area().right(), labels), true);
        if (left.isEmpty() || middle.isEmpty() || last.isEmpty()) {
            return Optional.empty();
        }
        List<Ink> ink = new ArrayList<>(left.get());
        ink.addAll(middle.get());
        ink.addAll(last.get());
        ink.addAll(SiteInk.draw(scene, above));
        ink.addAll(SiteInk.draw(scene, right));
        return Optional.of(ink);
    }

    /** As wide as the widest label, badges included. */
    private double labels() {
        double widest = 0;
        for (Thing thing : scene.things()) {
            double beside = badges.of(thing.id()).stream()
                    .mapToDouble(badge -> badge.width() + BadgeForm.GAP)
                    .sum();
            widest = Math.max(widest, wide(thing.words()) + beside);
        }
        for (Ring ring : scene.rings()) {
            widest = Math.max(widest, wide(ring.words()));
        }
        return Math.min(WIDEST_LABEL, widest) + 2;
    }

    private static double wide(String words) {
        return Lettering.width(words, Lettering.SMALL, Weight.REGULAR);
    }

    private static Area column(Area area, double x, double width) {
        return new Area(x, area.y(), width, area.height());
    }

    private static List<LegendEntry> legend(SiteScene scene) {
        List<LegendEntry> entries = new ArrayList<>();
        Set<Sign> signs = EnumSet.noneOf(Sign.class);
        scene.things().forEach(thing -> signs.add(thing.sign()));
        for (Sign sign : signs) {
            entries.add(new LegendEntry(sign.words(), LegendEntry.LOW, p -> SiteInk.sign(sign, p.plus(10, 0))));
        }
        for (boolean known : List.of(true, false)) {
            if (scene.routes().stream().anyMatch(route -> route.known() == known)) {
                entries.add(new LegendEntry(
                        known ? "lead along the points of its route" : "lead, route not given: straight",
                        LegendEntry.LOW,
                        p -> List.of(new Stroke(
                                Tag.of("way"), List.of(p, p.plus(LegendEntry.SAMPLE, 0)), SiteInk.pen(known)))));
            }
        }
        if (!scene.rings().isEmpty()) {
            entries.add(new LegendEntry("nearer than this the field is more", LegendEntry.LOW, p -> {
                Pen pen = Pen.dashed(Palette.BLUE, Lines.MEDIUM, 2.0, 1.0);
                return List.of(Patch.ellipse("", new Area(p.x() + 2, p.y() - 1.9, 16, 3.8), Paint.clear(), pen));
            }));
        }
        entries.addAll(LegendEntries.badges(scene.marks()));
        return entries;
    }
}
