package ringout.draw.wiring;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.form.Lane;
import ringout.draw.form.Link;
import ringout.draw.form.NodeForm;
import ringout.draw.form.Tap;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Tag;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.place.Placed;
import ringout.draw.route.LabelSpot;
import ringout.draw.route.Routed;
import ringout.draw.route.RoutedLink;
import ringout.draw.scene.Wire;
import ringout.draw.style.LineInk;
import ringout.draw.style.Lines;
import ringout.draw.style.MoveInk;
import ringout.draw.style.Print;

/**
 * The ink of a routed scene. From below: casings, wires, moves, boxes, labels, badges of wires.
 */
final class DiagramInk {
    private static final double WIDEST_MID_LABEL = 24;

    private final Routed routed;
    private final Placed placed;
    private final Point origin;
    private final Casings casings;
    private final List<Ink> wires = new ArrayList<>();
    private final List<Ink> labels = new ArrayList<>();

    private DiagramInk(Routed routed, Point origin) {
        this.routed = routed;
        this.placed = routed.placed();
        this.origin = origin;
        this.casings = new Casings(placed.forms().scene().marks());
    }

    /** {@return the ink, with the upper left corner of the diagram at a point of the sheet} */
    static List<Ink> draw(Routed routed, Point origin) {
        DiagramInk diagram = new DiagramInk(routed, origin);
        return diagram.draw();
    }

    private List<Ink> draw() {
        NodeInk nodes = new NodeInk(placed, casings);
        for (NodeForm node : placed.forms().nodes()) {
            Area area = shifted(routed.area(node));
            if (node.box().isPresent()) {
                nodes.addBox(node, node.box().get(), area);
            } else {
                List<Tap> taps = tapsOf(node);
                List<Point> ends =
                        taps.stream().map(t -> shifted(routed.end(t))).toList();
                nodes.addSplice(node, area, taps, ends);
            }
        }
        List<Ink> under = new ArrayList<>(nodes.under());
        List<Ink> moves = new ArrayList<>();
        for (RoutedLink way : routed.links()) {
            List<Point> points = way.points().stream().map(this::shifted).toList();
            casings.along(way.link().id(), points).ifPresent(under::add);
            way.link().wire().ifPresent(wire -> wires.add(wire(wire, points)));
            way.link().move().ifPresent(move -> moves.add(MoveInk.draw(move, points)));
            addLanes(way.link());
        }
        routed.labels().forEach(this::addMidLabel);
        List<Ink> all = new ArrayList<>();
        all.addAll(under);
        all.addAll(wires);
        all.addAll(nodes.over());
        all.addAll(moves);
        all.addAll(labels);
        return all;
    }

    private List<Tap> tapsOf(NodeForm node) {
        return placed.forms().taps().stream()
                .filter(tap -> tap.node() == node.index())
                .toList();
    }

    private Point shifted(Point p) {
        return p.plus(origin.x(), origin.y());
    }

    private Area shifted(Area a) {
        return new Area(a.x() + origin.x(), a.y() + origin.y(), a.width(), a.height());
    }

    private static Ink wire(Wire wire, List<Point> points) {
        Tag tag = Tag.of("wire")
                .withId("wire", wire.id())
                .with("wire", wire.id())
                .with("net", wire.net())
                .with("kind", wire.kind().words())
                .with("from", wire.from())
                .with("to", wire.to());
        String words = wire.id() + " " + wire.kind().words() + ", " + wire.from() + " to " + wire.to();
        String state = wire.presence().remark();
        return new Cluster(tag.titled(words + state, ""), LineInk.draw(points, Lines.of(wire.kind()), wire.presence()));
    }

    private void addLanes(Link link) {
        addLane(link, placed.forms().taps().get(link.from()));
        if (link.flagged()) {
            Tap tap = placed.forms().taps().get(link.from());
            link.wire().ifPresent(wire -> labels.add(lane(tap).flag(wire.to())));
        } else {
            addLane(link, placed.forms().taps().get(link.to()));
        }
    }

    private void addLane(Link link, Tap tap) {
        LaneInk ink = lane(tap);
        link.wire().ifPresent(wire -> labels.addAll(ink.onWire(wire)));
        labels.addAll(ink.badges(link.id()));
    }

    private LaneInk lane(Tap tap) {
        Lane lane = tap.lane();
        Area node = shifted(routed.area(placed.forms().nodes().get(tap.node())));
        boolean right = placed.right(tap);
        Point edge = new Point(
                right ? node.right() : node.x(), shifted(routed.end(tap)).y());
        return new LaneInk(lane, edge, right);
    }

    private void addMidLabel(LabelSpot spot) {
        Link link = placed.forms().links().get(spot.link());
        link.wire().ifPresent(wire -> {
            String lead =
                    Lettering.fit(Lettering.printable(wire.lead()), Lettering.SMALL, Weight.REGULAR, WIDEST_MID_LABEL);
            Point at = shifted(spot.centre());
            List<Ink> parts = new ArrayList<>();
            Print.addInGap(
                    parts,
                    spot.upright()
                            ? Print.upright(lead, at.x(), at.y())
                            : Print.small(lead, at.x(), at.y(), ringout.draw.ink.Words.Align.MIDDLE));
            labels.add(new Cluster(Tag.of("label").with("wire", wire.id()), parts));
        });
    }
}
