package ringout.draw.map;

import static ringout.draw.letter.Lettering.LARGE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.draw.form.BadgeIndex;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.map.MapScene.MapRotor;
import ringout.draw.map.MapScene.SurfaceRow;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.paper.SheetSize;
import ringout.draw.style.Drawn;
import ringout.draw.style.Margins;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** Lays the map out on the smallest sheet that holds it in lettering of 5 mm: plan on the left, tables on the right. */
public final class MapDrawing {
    private static final double GAP = 6;
    private static final double LINE = 7.4;
    private static final List<String> WARNING = List.of("seen from above; propellers off before a motor is commanded");

    private final MapScene scene;
    private final BadgeIndex badges;

    private MapDrawing(MapScene scene) {
        this.scene = scene;
        badges = new BadgeIndex(scene.marks());
    }

    /** {@return the map on the first of some sizes that holds it; the finding list is left out before a size is skipped} */
    public static Optional<Drawn> of(MapScene scene, List<SheetSize> sizes) {
        MapDrawing drawing = new MapDrawing(scene);
        for (Margins margins : Margins.inTurn(
                sizes, scene.info(), MapLegend.of(scene), scene.findings(), scene.notes(), scene.notes())) {
            Optional<List<Ink>> ink = drawing.fill(margins.drawing());
            if (ink.isPresent()) {
                return Optional.of(new Drawn(margins, scene.info().title(), ink.get(), List.of(), drawing.things()));
            }
        }
        return Optional.empty();
    }

    /** Every rotor once on the plan, as far as its place is known, and once in the table. */
    private List<String> things() {
        List<String> things = new ArrayList<>();
        for (MapRotor rotor : scene.rotors()) {
            things.add(row(rotor.id()));
            if (rotor.spot().isPresent()) {
                things.add(rotor.id());
            }
        }
        scene.surfaces().forEach(surface -> things.add(row(surface.id())));
        return things;
    }

    private static String row(String id) {
        return id + " in the table";
    }

    private Optional<List<Ink>> fill(Area area) {
        MapTable motors = MapTable.of(
                scene.heads(), scene.rotors().stream().map(this::row).toList());
        MapTable surfaces = MapTable.of(
                scene.surfaceHeads(), scene.surfaces().stream().map(this::row).toList());
        List<String> words =
                new ArrayList<>(Lettering.wrap(scene.convention(), LARGE, Weight.REGULAR, area.width(), 2));
        words.addAll(WARNING);
        double foot = words.size() * LINE;
        double wide = Math.max(motors.width(), surfaces.width());
        boolean both = motors.height() > 0 && surfaces.height() > 0;
        double tall = motors.height() + surfaces.height() + (both ? GAP : 0);
        Area plan = new Area(area.x(), area.y(), area.width() - wide - GAP, area.height() - foot);
        boolean places = scene.rotors().stream().anyMatch(rotor -> rotor.spot().isPresent());
        Optional<MapPlaced> placed = places ? MapPlaced.place(scene.rotors(), plan) : Optional.empty();
        if (tall > plan.height() || plan.width() < 0 || (places && placed.isEmpty())) {
            return Optional.empty();
        }
        List<Ink> ink = new ArrayList<>();
        placed.ifPresent(map -> ink.addAll(new MapInk(map, badges).draw(scene.rotors())));
        double x = area.right() - wide;
        double top = area.y() + (plan.height() - tall) / 2;
        ink.addAll(motors.draw(new Point(x, top)));
        ink.addAll(surfaces.draw(new Point(x, top + motors.height() + (both ? GAP : 0))));
        double y = area.bottom() - foot + LINE / 2;
        for (String line : words) {
            boolean warns = WARNING.contains(line);
            Weight weight = warns ? Weight.BOLD : Weight.REGULAR;
            String text = Lettering.fit(line, LARGE, weight, area.width());
            ink.add(Print.line(text, area.x(), y, Align.START, LARGE, weight, Palette.BLACK));
            y += LINE;
        }
        return Optional.of(List.of(new Cluster(Tag.of("arms-length"), ink)));
    }

    private MapTable.Row row(MapRotor rotor) {
        List<String> cells = new ArrayList<>();
        cells.add(rotor.name());
        cells.addAll(rotor.cells());
        Tag tag = tag(rotor.id()).with("motor", rotor.name());
        boolean onPlan = rotor.spot().isPresent();
        return new MapTable.Row(tag, cells, onPlan ? List.of() : badges.of(rotor.id()));
    }

    private MapTable.Row row(SurfaceRow surface) {
        return new MapTable.Row(tag(surface.id()), surface.cells(), badges.of(surface.id()));
    }

    private static Tag tag(String id) {
        return Tag.of("row").withId("row", id).with("thing", row(id));
    }
}
