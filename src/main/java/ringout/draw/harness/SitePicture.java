package ringout.draw.harness;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.draw.letter.Lettering;
import ringout.draw.site.SiteScene;
import ringout.draw.site.SiteScene.Place;
import ringout.draw.site.SiteScene.Ring;
import ringout.draw.site.SiteScene.Route;
import ringout.draw.site.SiteScene.Sign;
import ringout.draw.site.SiteScene.Thing;
import ringout.finding.Headline;
import ringout.graph.Circuit;
import ringout.graph.Directory;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.CurrentLoop;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.LoopLie;
import ringout.model.PointFlag;
import ringout.model.RoutePoint;
import ringout.model.Unit;
import ringout.model.UnitType;
import ringout.solve.field.CurrentRing;
import ringout.solve.field.Spot;

/** An aircraft as a plan: what has coordinates at its place, what has none by zone, routes, flags and the fields at compasses. */
final class SitePicture {
    private static final double FARTHEST = 2000;
    private static final int HALVINGS = 50;

    private final Circuit circuit;
    private final Wiring wiring;
    private final Directory directory;
    private final Ids ids = new Ids();
    private final List<Thing> things = new ArrayList<>();
    private final Map<String, List<String>> unplaced = new TreeMap<>();
    private final Map<String, Set<String>> ofUnit = new LinkedHashMap<>();
    private final List<Route> routes = new ArrayList<>();
    private final List<Ring> rings = new ArrayList<>();
    private final Map<String, List<String>> ringed = new LinkedHashMap<>();
    private final Map<String, List<Place>> bundles = new LinkedHashMap<>();
    private final Map<String, Set<String>> bundled = new LinkedHashMap<>();
    private final List<String> notes = new ArrayList<>();

    private SitePicture(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.directory = wiring.directory();
    }

    /** The scene with its title block. */
    static SiteScene of(Circuit circuit, List<Headline> headlines, SheetTitle title) {
        return new SitePicture(circuit).scene(headlines, title);
    }

    private SiteScene scene(List<Headline> headlines, SheetTitle title) {
        for (int unit = 0; unit < directory.count(); unit++) {
            if (circuit.aboard(unit) && !directory.isJoint(unit)) {
                unit(directory.unit(unit), directory.type(unit));
            }
        }
        flags();
        routes();
        bundles.forEach((name, ends) -> things.add(new Thing(
                ids.of("bundle " + name, name),
                "bundle " + name + ": " + String.join(" ", bundled.getOrDefault(name, Set.of())),
                Sign.BUNDLE,
                middle(ends))));
        wiring.aircraft().airframe().loops().forEach(this::rings);
        List<String> lines = new ArrayList<>();
        unplaced.forEach((zone, units) -> lines.add("no coordinates, "
                + (zone.isEmpty() ? "zone not given" : "zone " + Lettering.printable(zone)) + ": "
                + String.join(" ", units)));
        notes.add("distances between middles of units, as the list gives them; routes without points are straight and"
                + " show no way to lay a lead");
        UnitMarks marks = new UnitMarks(circuit, headlines, ofUnit);
        return new SiteScene(
                title.info(
                        "places and routes",
                        "location and route plan",
                        marks.lines().size()),
                things,
                routes,
                rings,
                lines,
                marks.marks(),
                marks.lines(),
                notes);
    }

    private static Optional<Place> place(Datum<Double> x, Datum<Double> y, Datum<Double> z) {
        return x.isKnown() && y.isKnown() && z.isKnown()
                ? Optional.of(new Place(x.or(0.0), y.or(0.0), z.or(0.0)))
                : Optional.empty();
    }

    private static Optional<Place> place(Unit unit) {
        return place(unit.xMm(), unit.yMm(), unit.zMm());
    }

    private static Optional<Place> place(RoutePoint point) {
        return place(point.xMm(), point.yMm(), point.zMm());
    }

    private void unit(Unit unit, UnitType type) {
        Optional<Place> place = place(unit);
        String name = Lettering.printable(unit.ref());
        if (place.isEmpty()) {
            unplaced.computeIfAbsent(unit.zone().or(""), key -> new ArrayList<>())
                    .add(name);
            return;
        }
        String id = ids.of("unit " + unit.ref(), name);
        boolean antenna = type.antenna().is(true)
                || !type.emits().isEmpty()
                || !type.receives().isEmpty();
        Sign sign = type.compass().is(true) ? Sign.COMPASS : antenna ? Sign.ANTENNA : Sign.UNIT;
        things.add(new Thing(id, name, sign, place.get()));
        ofUnit.computeIfAbsent(unit.ref(), key -> new LinkedHashSet<>()).add(id);
    }

    /** Points of routes that say what the lead meets there; one sign for all leads that meet the same there. */
    private void flags() {
        Map<String, Place> places = new LinkedHashMap<>();
        Map<String, Set<String>> leads = new LinkedHashMap<>();
        for (Lead lead : wiring.aircraft().leads()) {
            for (RoutePoint point : lead.route()) {
                Optional<Place> place = place(point);
                if (place.isPresent() && !point.flags().isEmpty()) {
                    String flags = point.flags().stream()
                            .map(PointFlag::words)
                            .map(words -> words.get(0))
                            .collect(Collectors.joining("+"));
                    String through =
                            point.through().known().map(name -> " " + name).orElse("");
                    String open = point.guarded().is(true) ? "" : ", bare";
                    String key = place.get() + flags + through + open;
                    places.put(key, place.get());
                    leads.computeIfAbsent(key, k -> new TreeSet<>()).add(lead.id());
                    leads.computeIfAbsent(key + "\n", k -> new LinkedHashSet<>())
                            .add(Lettering.printable(flags + through + open));
                }
            }
        }
        places.forEach((key, place) -> {
            String words = String.join("", leads.getOrDefault(key + "\n", Set.of())) + ": "
                    + String.join(" ", leads.getOrDefault(key, Set.of()));
            things.add(new Thing(ids.of("flag " + key, words), words, Sign.FLAG, place));
        });
    }

    /** One line for every pair of units that leads join, and one for every lead with a route. */
    private void routes() {
        Set<String> straight = new TreeSet<>();
        Set<Integer> seen = new TreeSet<>();
        for (Wire wire : wiring.wires()) {
            int from = wiring.unitOf(wire.fromPin());
            int to = wiring.unitOf(wire.toPin());
            if (!seen.add(wire.leadIndex()) || directory.isJoint(from) || directory.isJoint(to)) {
                continue;
            }
            Lead lead = wire.lead();
            Optional<Place> start = place(directory.unit(from));
            Optional<Place> end = place(directory.unit(to));
            if (start.isEmpty() || end.isEmpty() || !circuit.aboard(from) || !circuit.aboard(to)) {
                continue;
            }
            List<Place> points = new ArrayList<>();
            points.add(start.get());
            lead.route().stream().flatMap(point -> place(point).stream()).forEach(points::add);
            boolean known = points.size() > 1;
            points.add(end.get());
            String pair = Math.min(from, to) + " " + Math.max(from, to);
            if (known || straight.add(pair)) {
                routes.add(new Route(Lettering.printable(lead.id()), known, points));
            }
            lead.bundle().known().ifPresent(name -> {
                String bundle = Lettering.printable(name);
                bundles.computeIfAbsent(bundle, key -> new ArrayList<>()).addAll(points);
                bundled.computeIfAbsent(bundle, key -> new TreeSet<>()).add(Lettering.printable(lead.id()));
            });
        }
    }

    private static Place middle(List<Place> places) {
        return new Place(
                places.stream().mapToDouble(Place::forward).average().orElse(0),
                places.stream().mapToDouble(Place::right).average().orElse(0),
                places.stream().mapToDouble(Place::up).average().orElse(0));
    }

    /** How near a changing current may come to its compass until the field passes the limits of the check. */
    private void rings(CurrentLoop loop) {
        Optional<Place> compass = loop.compass()
                .known()
                .flatMap(directory::find)
                .filter(unit -> !directory.isJoint(unit))
                .flatMap(unit -> place(directory.unit(unit)));
        boolean known = loop.changeA().isKnown()
                && loop.spacingMm().isKnown()
                && loop.lengthMm().isKnown();
        if (compass.isEmpty() || !known) {
            notes.add("no field rings for " + Lettering.printable(loop.name())
                    + ": change of current, spacing or length of the pair, or place of its compass not given");
            return;
        }
        Situation at = new Situation(circuit);
        for (Threshold limit : List.of(at.limit(Thresholds.COMPASS_WARN), at.limit(Thresholds.COMPASS_FIELD))) {
            double distance = reach(loop, limit.value());
            String words = String.format(Locale.ROOT, "%s uT at %.0f mm", Figures.of(limit.value()), distance);
            String key = compass.get() + words;
            ringed.computeIfAbsent(key, k -> new ArrayList<>()).add(Lettering.printable(loop.name()));
            List<String> loops = ringed.getOrDefault(key, List.of());
            String names = loops.size() > 1 ? loops.size() + " pairs, each" : String.join("", loops);
            String id = ids.of("ring " + key, words);
            rings.removeIf(ring -> ring.id().equals(id));
            rings.add(new Ring(id, words + ": " + names, compass.get(), distance));
        }
        String below = loop.belowMm()
                .known()
                .map(mm -> String.format(Locale.ROOT, "%.0f mm away: %.2g uT", mm, field(loop, mm)))
                .orElse("distance not given");
        notes.add(String.format(
                Locale.ROOT,
                "%s, %.0f A more at full throttle, pair %.0f mm apart, %s; rings are for this pair, not twisted, square below the compass",
                Lettering.printable(loop.name()),
                loop.changeA().or(0.0),
                loop.spacingMm().or(0.0),
                below));
    }

    private static double field(CurrentLoop loop, double distance) {
        return CurrentRing.pair(
                        loop.lengthMm().or(0.0),
                        loop.spacingMm().or(0.0),
                        distance,
                        loop.changeA().or(0.0),
                        loop.lie().is(LoopLie.EDGE))
                .at(new Spot(0, 0, 0))
                .amount();
    }

    /** The distance at which the field of a pair is at a limit: it falls steadily from half the spacing on. */
    private static double reach(CurrentLoop loop, double limit) {
        double near = loop.spacingMm().or(0.0);
        double far = FARTHEST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (near + far) / 2;
            if (field(loop, middle) > limit) {
                near = middle;
            } else {
                far = middle;
            }
        }
        return far;
    }
}
