package ringout.draw.wiring;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.Fitting;
import ringout.draw.scene.Presence;
import ringout.draw.scene.Row;
import ringout.draw.scene.WireKind;
import ringout.draw.scene.WiringScene;
import ringout.draw.style.FittingInk;
import ringout.draw.style.LegendEntries;
import ringout.draw.style.LegendEntry;
import ringout.draw.style.LineInk;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;

/** What the legend of a wiring diagram must explain. */
final class Legend {
    private static final double LENGTH = LegendEntry.SAMPLE;

    private Legend() {}

    static List<LegendEntry> of(WiringScene scene) {
        List<LegendEntry> entries = new ArrayList<>();
        Set<WireKind> kinds = EnumSet.noneOf(WireKind.class);
        scene.wires().stream().filter(w -> !w.presence().ghost()).forEach(w -> kinds.add(w.kind()));
        kinds.forEach(kind ->
                entries.add(low(kind.words(), p -> LineInk.draw(level(p), Lines.of(kind), Presence.FITTED))));
        addSigns(scene, entries);
        addPresences(scene, entries);
        entries.addAll(LegendEntries.badges(scene.marks()));
        return entries;
    }

    private static void addSigns(WiringScene scene, List<LegendEntry> entries) {
        if (scene.wires().size() > 1) {
            entries.add(low("crossing, not joined", Legend::crossing));
        }
        if (!scene.splices().isEmpty()) {
            entries.add(low("dot: joined", Legend::dot));
        }
        if (scene.wires().stream().anyMatch(wire -> wire.fuse().isPresent())) {
            entries.add(sign(Fitting.Symbol.FUSE));
        }
        rows(scene).stream()
                .filter(r -> r.presence() != Presence.MISSING && r instanceof Fitting)
                .map(r -> ((Fitting) r).symbol())
                .distinct()
                .sorted()
                .forEach(symbol -> entries.add(sign(symbol)));
        if (!scene.moves().isEmpty()) {
            entries.add(LegendEntries.move());
        }
    }

    private static LegendEntry sign(Fitting.Symbol symbol) {
        return low(wordsOf(symbol), p -> FittingInk.draw(new Fitting("", symbol, ""), p.plus(LENGTH / 2, 0)));
    }

    private static List<Row> rows(WiringScene scene) {
        return scene.boxes().stream()
                .flatMap(b -> b.plugs().stream())
                .flatMap(p -> p.rows().stream())
                .toList();
    }

    private static String wordsOf(Fitting.Symbol symbol) {
        return switch (symbol) {
            case TERMINATOR_ON -> "terminator on";
            case TERMINATOR_OFF -> "terminator off";
            case FUSE -> "fuse";
            case LABEL -> "label";
        };
    }

    private static void addPresences(WiringScene scene, List<LegendEntry> entries) {
        List<Presence> all = new ArrayList<>();
        scene.boxes().forEach(b -> all.add(b.presence()));
        rows(scene).forEach(r -> all.add(r.presence()));
        scene.wires().forEach(w -> all.add(w.presence()));
        if (all.contains(Presence.MISSING)) {
            entries.add(LegendEntries.missing());
        }
        if (all.contains(Presence.AS_BEFORE)) {
            entries.add(low("added", p -> LineInk.draw(level(p), Lines.of(WireKind.OTHER), Presence.ADDED)));
            entries.add(low("removed", p -> LineInk.draw(level(p), Lines.of(WireKind.OTHER), Presence.REMOVED)));
            entries.add(low("unchanged", p -> LineInk.draw(level(p), Lines.of(WireKind.OTHER), Presence.AS_BEFORE)));
        }
        if (all.contains(Presence.EXTRA)) {
            entries.add(low("one too many", p -> LineInk.draw(level(p), Lines.of(WireKind.OTHER), Presence.EXTRA)));
        }
    }

    private static List<Ink> crossing(Point p) {
        Pen pen = Pen.solid(Palette.BLACK, Lines.MEDIUM);
        Point middle = p.plus(LENGTH / 2, 0);
        return List.of(
                new Stroke(Tag.of("line"), level(p), pen),
                new Stroke(Tag.of("line"), List.of(middle.plus(0, -2), middle.plus(0, 2)), pen));
    }

    private static List<Ink> dot(Point p) {
        Pen pen = Pen.solid(Palette.BLACK, Lines.MEDIUM);
        Point middle = p.plus(LENGTH / 2, 0);
        Area dot = new Area(middle.x() - 0.75, middle.y() - 0.75, 1.5, 1.5);
        return List.of(
                new Stroke(Tag.of("line"), level(p), pen),
                new Stroke(Tag.of("line"), List.of(middle, middle.plus(0, 2)), pen),
                Patch.ellipse("", dot, Paint.of(Palette.BLACK), Pen.NONE));
    }

    private static List<Point> level(Point p) {
        return List.of(p, p.plus(LENGTH, 0));
    }

    private static LegendEntry low(String words, Function<Point, List<Ink>> sample) {
        return new LegendEntry(words, LegendEntry.LOW, sample);
    }
}
