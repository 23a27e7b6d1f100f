package ringout.draw.bus;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.BusLead;
import ringout.draw.scene.BusMember;
import ringout.draw.scene.BusScene;
import ringout.draw.scene.BusStub;
import ringout.draw.scene.Presence;
import ringout.draw.scene.Terminator;
import ringout.draw.style.LegendEntries;
import ringout.draw.style.LegendEntry;
import ringout.draw.style.LineInk;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;

/** What the legend of a bus diagram must explain. */
final class BusLegend {
    private static final double LENGTH = LegendEntry.SAMPLE;

    private BusLegend() {}

    static List<LegendEntry> of(BusScene scene) {
        List<LegendEntry> entries = new ArrayList<>();
        entries.add(low("bus leg, to scale", p -> LineInk.draw(level(p), BusInk.LEG, Presence.FITTED)));
        entries.add(low("member in the line", BusLegend::marker));
        entries.add(low(
                "leads to its box, no scale",
                p -> List.of(new Stroke(Tag.of("leader"), level(p), Pen.solid(Palette.DARK_GREY, Lines.THIN)))));
        Set<Terminator> shown = EnumSet.noneOf(Terminator.class);
        scene.members().forEach(m -> shown.add(m.terminator()));
        shown.remove(Terminator.NONE);
        shown.forEach(t -> entries.add(low(
                "terminator " + MemberInk.words(t), p -> MemberInk.resistor(t, p.plus(LENGTH / 2, 0), true))));
        if (!scene.moves().isEmpty()) {
            entries.add(LegendEntries.move());
        }
        List<Presence> all = new ArrayList<>();
        List<BusLead> leads = new ArrayList<>(scene.leads());
        scene.stubs().stream().map(BusStub::lead).forEach(leads::add);
        scene.ring().ifPresent(leads::add);
        boolean oneLeg = leads.stream().anyMatch(l -> l.legs() != BusLead.Legs.BOTH);
        leads.forEach(l -> all.add(l.presence()));
        scene.members().stream().map(BusMember::presence).forEach(all::add);
        if (oneLeg || all.contains(Presence.MISSING)) {
            entries.add(LegendEntries.missing());
        }
        if (all.contains(Presence.EXTRA)) {
            entries.add(LegendEntries.extra());
        }
        entries.addAll(LegendEntries.badges(scene.marks()));
        return entries;
    }

    private static List<Ink> marker(Point p) {
        List<Ink> ink = new ArrayList<>(LineInk.draw(level(p), BusInk.LEG, Presence.FITTED));
        Area cell = new Area(p.x() + LENGTH / 2 - BusScale.HALF_MARKER, p.y() - 1.8, 2 * BusScale.HALF_MARKER, 3.6);
        ink.add(Patch.rectangle("", cell, Paint.of(Palette.WHITE), Pen.solid(Palette.BLACK, Lines.STRONG)));
        return ink;
    }

    private static List<Point> level(Point p) {
        return List.of(p, p.plus(LENGTH, 0));
    }

    private static LegendEntry low(String words, java.util.function.Function<Point, List<Ink>> sample) {
        return new LegendEntry(words, LegendEntry.LOW, sample);
    }
}
