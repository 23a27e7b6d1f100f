package ringout.draw.block;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import ringout.draw.block.BlockScene.BlockLead;
import ringout.draw.block.BlockScene.BlockUnit;
import ringout.draw.block.BlockScene.BlockZone;
import ringout.draw.form.BadgeForm;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.Mark;
import ringout.draw.scene.Presence;
import ringout.draw.style.Badges;
import ringout.draw.style.Hatchings;
import ringout.draw.style.LineInk;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** The ink of a block diagram. */
final class BlockInk {
    private static final double MARGIN = 1.6;

    private final BlockPlaced placed;
    private final BlockScene scene;

    BlockInk(BlockPlaced placed) {
        this.placed = placed;
        this.scene = placed.scene();
    }

    /** {@return the name of the end of a lead at a unit} */
    static String end(BlockLead lead, boolean first) {
        return (first ? lead.from() : lead.to()) + " " + lead.id() + (first ? " from" : " to");
    }

    List<Ink> draw() {
        List<Ink> ink = new ArrayList<>();
        placed.frames().forEach(frame -> ink.add(zone(frame.name(), frame.area())));
        for (BlockZone zone : scene.zones()) {
            zone.units().forEach(unit -> addBand(ink, unit));
            zone.units().forEach(unit -> ink.add(unit(unit)));
        }
        scene.leads().forEach(lead -> ink.add(line(lead)));
        scene.leads().forEach(lead -> addEnds(ink, lead));
        return ink;
    }

    private List<Point> way(BlockLead lead) {
        return Objects.requireNonNull(placed.ways().get(lead.id()));
    }

    private Area box(BlockUnit unit) {
        return Objects.requireNonNull(placed.units().get(unit.id()));
    }

    /** The frame of a zone; its name stands below its units, between the lines that come from there. */
    private Ink zone(String name, Area frame) {
        List<Ink> ink = new ArrayList<>();
        Pen pen = Pen.dashed(Palette.DARK_GREY, Lines.THIN, 1.6, 1.2);
        ink.add(Patch.rectangle("zone", frame, Paint.clear(), pen));
        if (!name.isEmpty()) {
            List<Double> lines = new ArrayList<>();
            lines.add(frame.x());
            scene.leads().stream()
                    .flatMap(lead ->
                            List.of(way(lead).get(0), way(lead).get(way(lead).size() - 1)).stream())
                    .filter(end -> end.x() > frame.x() && end.x() < frame.right())
                    .filter(end -> Math.abs(end.y() - (frame.bottom() - BlockPlaced.BAND)) < 0.1)
                    .map(Point::x)
                    .sorted(Comparator.naturalOrder())
                    .forEach(lines::add);
            lines.add(frame.right());
            int widest = 0;
            for (int i = 0; i + 1 < lines.size(); i++) {
                boolean wider = lines.get(i + 1) - lines.get(i) > lines.get(widest + 1) - lines.get(widest) + 0.1;
                widest = wider ? i : widest;
            }
            double room = lines.get(widest + 1) - lines.get(widest) - 2 * MARGIN;
            String words = Lettering.fit(name, Lettering.SMALL, Weight.REGULAR, room);
            double y = frame.bottom() - 2.5;
            if (room > Lettering.width(words, Lettering.SMALL, Weight.REGULAR) - 0.01) {
                Print.add(
                        ink,
                        Print.line(
                                words,
                                lines.get(widest) + MARGIN,
                                y,
                                Align.START,
                                Lettering.SMALL,
                                Weight.REGULAR,
                                Palette.DARK_GREY));
            }
        }
        return new Cluster(Tag.of("zone").with("zone", name).titled(name, ""), ink);
    }

    private void addBand(List<Ink> ink, BlockUnit unit) {
        scene.marks().stream()
                .filter(mark -> !mark.waived() && mark.kind().hasCasing())
                .filter(mark -> mark.targets().contains(unit.id()))
                .map(Mark::kind)
                .min(Comparator.naturalOrder())
                .ifPresent(kind -> {
                    Pen pen = new Pen(Paint.of(Hatchings.of(kind)), Lines.BAND, List.of(), false);
                    Tag tag = Tag.of("casing").with("severity", kind.word()).with("target", unit.id());
                    Area area = box(unit).grown(Lines.BAND / 2);
                    ink.add(new Patch(tag, new Patch.Rectangle(area), Paint.clear(), pen));
                });
    }

    private Ink unit(BlockUnit unit) {
        Area box = box(unit);
        List<Ink> ink = new ArrayList<>();
        ink.add(Patch.rectangle("body", box, Paint.of(Palette.WHITE), Pen.solid(Palette.BLACK, Lines.STRONG)));
        double y = box.centre().y();
        double x = box.x() + MARGIN;
        Print.add(ink, Print.line(unit.name(), x, y, Align.START, Lettering.MEDIUM, Weight.BOLD, Palette.BLACK));
        x += Lettering.width(unit.name(), Lettering.MEDIUM, Weight.BOLD) + BadgeForm.GAP;
        for (Mark mark : scene.marks()) {
            if (mark.targets().contains(unit.id())) {
                BadgeForm badge = BadgeForm.of(mark);
                ink.add(Badges.draw(badge, new Point(x + badge.width() / 2, y), unit.id()));
                x += badge.width() + BadgeForm.GAP;
            }
        }
        Tag tag =
                Tag.of("unit").withId("unit", unit.id()).with("unit", unit.id()).with("thing", unit.id());
        return new Cluster(tag.titled(unit.name(), ""), ink);
    }

    private Ink line(BlockLead lead) {
        Tag tag = Tag.of("wire")
                .withId("wire", lead.id())
                .with("wire", lead.id())
                .with("kind", lead.kind().words())
                .with("from", end(lead, true))
                .with("to", end(lead, false));
        List<Ink> ink = LineInk.draw(way(lead), Lines.of(lead.kind()), Presence.FITTED);
        return new Cluster(tag.titled(lead.label() + ": " + lead.from() + " to " + lead.to(), ""), ink);
    }

    /** A dot on the edge of the unit and the name of the lead on its line, at both ends. */
    private void addEnds(List<Ink> ink, BlockLead lead) {
        List<Point> way = way(lead);
        boolean[] up = Objects.requireNonNull(placed.upwards().get(lead.id()));
        addEnd(ink, lead, true, way.get(0), up[0]);
        addEnd(ink, lead, false, way.get(way.size() - 1), up[1]);
    }

    private void addEnd(List<Ink> ink, BlockLead lead, boolean first, Point at, boolean up) {
        Area dot = new Area(at.x() - 0.45, at.y() - 0.45, 0.9, 0.9);
        Patch cell = Patch.rectangle("cell", dot, Paint.of(Palette.BLACK), Pen.NONE);
        ink.add(new Cluster(Tag.of("pin").with("pin", end(lead, first)), List.of(cell)));
        double room = BlockPlaced.labelRoom(scene);
        double middle = up ? at.y() - BlockPlaced.TOP - room / 2 : at.y() + BlockPlaced.BAND + room / 2;
        if (!placed.both() && !up) {
            return;
        }
        List<Ink> label = new ArrayList<>();
        Print.addInGap(label, Print.upright(lead.label(), at.x(), middle));
        ink.add(new Cluster(Tag.of("label").with("wire", lead.id()), label));
    }
}
