package ringout.draw.map;

import static ringout.draw.letter.Lettering.LARGE;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.form.BadgeForm;
import ringout.draw.form.BadgeIndex;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Weight;
import ringout.draw.map.MapScene.MapRotor;
import ringout.draw.map.MapScene.Tier;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.style.Badges;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** The ink of the plan: hub with its arrow, arms, discs with their names and arrows. */
final class MapInk {
    private static final double NAME = 7;
    private static final double LINE = 7.2;

    /** Where the first badge stands on the edge of a disc, from the right downwards: clear of the arrow above. */
    private static final double BADGE_FROM = Math.toRadians(15);

    private final MapPlaced placed;
    private final BadgeIndex badges;

    MapInk(MapPlaced placed, BadgeIndex badges) {
        this.placed = placed;
        this.badges = badges;
    }

    List<Ink> draw(List<MapRotor> rotors) {
        List<Ink> ink = new ArrayList<>();
        Pen arm = Pen.solid(Palette.DARK_GREY, Lines.MEDIUM);
        placed.middles()
                .values()
                .forEach(middle -> ink.add(new Stroke(Tag.of("arm"), List.of(placed.hub(), middle), arm)));
        ink.addAll(hub(placed.hub()));
        List<MapRotor> there = rotors.stream()
                .filter(rotor -> placed.middles().containsKey(rotor.id()))
                .toList();
        there.forEach(rotor -> ink.addAll(disc(rotor, middle(rotor))));
        there.forEach(rotor -> ink.add(words(rotor, middle(rotor))));
        return ink;
    }

    /** The hub: an arrow to the nose. */
    private static List<Ink> hub(Point at) {
        List<Point> arrow = List.of(
                at.plus(0, -12),
                at.plus(6, -3),
                at.plus(2.4, -3),
                at.plus(2.4, 2),
                at.plus(-2.4, 2),
                at.plus(-2.4, -3),
                at.plus(-6, -3));
        Area ground = new Area(at.x() - 10, at.y() - 12.6, 20, 23.6);
        List<Ink> ink = new ArrayList<>();
        ink.add(Patch.rectangle("hub", ground, Paint.of(Palette.WHITE), Pen.NONE));
        ink.add(Patch.polygon("nose", arrow, Paint.of(Palette.BLACK), Pen.NONE));
        ink.add(Print.line("nose", at.x(), at.y() + 6.2, Align.MIDDLE, LARGE, Weight.BOLD, Palette.BLACK));
        return ink;
    }

    private Point middle(MapRotor rotor) {
        return placed.middles().getOrDefault(rotor.id(), placed.hub());
    }

    private List<Ink> disc(MapRotor rotor, Point middle) {
        List<Ink> ink = new ArrayList<>();
        double radius = placed.radius();
        Area area = new Area(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius);
        Pen pen = rotor.tier() == Tier.LOWER
                ? Pen.dashed(Palette.BLACK, Lines.THICK, 3.0, 1.6)
                : Pen.solid(Palette.BLACK, Lines.THICK);
        ink.add(Patch.ellipse("disc", area, Paint.of(Palette.WHITE), pen));
        rotor.turn().ifPresent(turn -> ink.addAll(Rounds.draw(middle, radius, turn)));
        return ink;
    }

    private Ink words(MapRotor rotor, Point middle) {
        List<Ink> ink = new ArrayList<>();
        double radius = placed.radius();
        double top = middle.y() - (NAME + 2 + LINE) / 2 + 0.6;
        ink.add(Print.line(rotor.name(), middle.x(), top + NAME / 2, Align.MIDDLE, NAME, Weight.BOLD, Palette.BLACK));
        double y = top + NAME + 2 + LINE / 2 - 0.6;
        ink.add(Print.line(below(rotor), middle.x(), y, Align.MIDDLE, LARGE, Weight.REGULAR, Palette.BLACK));
        double angle = BADGE_FROM;
        for (BadgeForm badge : badges.of(rotor.id())) {
            Point at = middle.plus(radius * Math.cos(angle), radius * Math.sin(angle));
            ink.add(Badges.draw(badge, at, rotor.id()));
            angle += (badge.width() + BadgeForm.GAP) / radius;
        }
        Tag tag = Tag.of("rotor")
                .withId("rotor", rotor.id())
                .with("thing", rotor.id())
                .with("rotor", rotor.name())
                .with("turn", rotor.turn().map(Enum::name).orElse("?"))
                .with("bearing", bearing(rotor))
                .with("tier", rotor.tier().name());
        return new Cluster(tag.titled(rotor.name() + ", bearing " + bearing(rotor), ""), ink);
    }

    private static String bearing(MapRotor rotor) {
        return rotor.bearingDeg().isPresent() ? Math.round(rotor.bearingDeg().getAsDouble()) + "\u00b0" : "?";
    }

    /** Two rotors above each other have one bearing: it stands in the upper one. */
    private static String below(MapRotor rotor) {
        return rotor.tier() == Tier.LOWER ? "lower" : bearing(rotor);
    }
}
