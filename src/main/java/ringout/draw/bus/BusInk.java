package ringout.draw.bus;

import static ringout.draw.letter.Lettering.MEDIUM;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ringout.draw.bus.BusPlaced.Seat;
import ringout.draw.bus.BusRouted.LegWay;
import ringout.draw.form.BadgeForm;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.BusLead;
import ringout.draw.scene.BusPoint;
import ringout.draw.scene.BusScene;
import ringout.draw.scene.BusStub;
import ringout.draw.scene.BusTee;
import ringout.draw.scene.Move;
import ringout.draw.style.Badges;
import ringout.draw.style.Hatchings;
import ringout.draw.style.LineInk;
import ringout.draw.style.Lines;
import ringout.draw.style.MoveInk;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** The ink of a routed bus diagram. */
final class BusInk {
    static final Lines LEG = new Lines(Pen.solid(Palette.BLUE, Lines.THICK), Pen.NONE, false);
    private static final Pen LEADER = Pen.solid(Palette.DARK_GREY, Lines.THIN);
    private static final double DOT = 1.5;
    private static final double TICK = 1.4;

    private final BusRouted routed;
    private final BusPlaced placed;
    private final BusScene scene;
    private final Area area;
    private final List<Ink> ink = new ArrayList<>();

    private BusInk(BusRouted routed, Area area) {
        this.routed = routed;
        this.placed = routed.placed();
        this.scene = placed.scene();
        this.area = area;
    }

    static List<Ink> draw(BusRouted routed, Area area) {
        BusInk bus = new BusInk(routed, area);
        bus.addHeader();
        bus.addCasings();
        bus.addDimensions();
        bus.routed.leaders().forEach(bus::addLeader);
        bus.addWires();
        bus.addTees();
        for (Seat seat : bus.placed.members()) {
            MemberInk member = new MemberInk(seat, bus.placed.marks(), bus.placed.sizes());
            bus.ink.add(member.sign());
            bus.ink.add(member.box());
        }
        for (Move move : bus.scene.moves()) {
            bus.ink.add(MoveInk.draw(move, bus.routed.moves().getOrDefault(move.id(), List.of())));
        }
        bus.addLabels();
        bus.addBreaks();
        bus.ink.addAll(OhmsInk.draw(bus.scene.ohms(), bus.placed.sizes().table(), bus.placed.table()));
        return bus.ink;
    }

    private void addHeader() {
        String name = Lettering.fit(Lettering.printable("bus " + scene.name()), MEDIUM, Weight.BOLD, 70);
        double y = area.y() + 2.4;
        double x = area.x() + 1;
        Words title = Print.line(name, x, y, Align.START, MEDIUM, Weight.BOLD, Palette.BLACK);
        Print.add(ink, title);
        String rate = Lettering.fit(Lettering.printable(scene.rate()), Lettering.SMALL, Weight.REGULAR, 50);
        String length = scene.leads().stream().allMatch(l -> l.lengthM().isPresent())
                ? String.format(Locale.ROOT, "trunk %.2f m", total())
                : "trunk ? m";
        String facts = rate.isEmpty() ? length : rate + ", " + length;
        Print.add(ink, Print.small(facts, x + title.width() + 4, y + 0.4, Align.START));
        String scale = placed.scale().words();
        Print.add(ink, Print.small(scale, area.right() - 1, y + 0.4, Align.END));
        double bar = placed.scale().mm(barMetres());
        double right = area.right() - 5 - Lettering.width(scale, Lettering.SMALL, Weight.REGULAR);
        addScaleBar(new Area(right - bar, y - 0.6, bar, 2));
    }

    private double total() {
        return scene.leads().stream().mapToDouble(l -> l.lengthM().orElse(0)).sum();
    }

    /** The longest of 1, 2 and 5 in any power of ten whose bar is no longer than 30 mm. */
    private double barMetres() {
        double best = 0.01;
        for (double metres : new double[] {0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20}) {
            best = placed.scale().mm(metres) <= 30 ? metres : best;
        }
        return best;
    }

    private void addScaleBar(Area bar) {
        Pen pen = Pen.solid(Palette.BLACK, Lines.MEDIUM);
        double half = bar.width() / 2;
        ink.add(Patch.rectangle("scale", new Area(bar.x(), bar.y(), half, bar.height()), Paint.of(Palette.BLACK), pen));
        ink.add(Patch.rectangle(
                "scale", new Area(bar.x() + half, bar.y(), half, bar.height()), Paint.of(Palette.WHITE), pen));
        String length = BigDecimal.valueOf(barMetres()).stripTrailingZeros().toPlainString() + " m";
        Print.add(ink, Print.small(length, bar.x() - 1.5, bar.centre().y(), Align.END));
    }

    private void addCasings() {
        placed.members().forEach(seat -> ink.addAll(new MemberInk(seat, placed.marks(), placed.sizes()).casings()));
        for (LegWay wire : routed.wires()) {
            String lead = wire.id().substring(0, wire.id().length() - 2);
            placed.marks().casing(lead).ifPresent(kind -> {
                Pen pen = new Pen(Paint.of(Hatchings.of(kind)), Lines.CASING, List.of(), false);
                Tag tag = Tag.of("casing").with("severity", kind.word()).with("target", lead);
                ink.add(new Stroke(tag, wire.points(), pen));
            });
        }
    }

    /** The dimension line with a tick at each place, and the thin lines to the labels. */
    private void addDimensions() {
        List<Double> xs = placed.pointX();
        double y = placed.dimensionY();
        if (xs.size() < 2) {
            return;
        }
        addLeader(List.of(new Point(xs.get(0), y), new Point(xs.get(xs.size() - 1), y)));
        xs.forEach(x -> addLeader(List.of(new Point(x, y - TICK), new Point(x, y + TICK))));
        routed.labelLeaders().forEach(this::addLeader);
    }

    private void addLeader(List<Point> points) {
        ink.add(new Stroke(Tag.of("leader"), points, LEADER));
    }

    private void addWires() {
        for (LegWay wire : routed.wires()) {
            Tag tag = Tag.of("wire")
                    .withId("wire", wire.id())
                    .with("wire", wire.id())
                    .with("net", scene.name() + " " + wire.leg())
                    .with("kind", "bus pair")
                    .with("from", wire.from())
                    .with("to", wire.to());
            String words = wire.lead() + ", leg " + wire.leg() + ", " + wire.from() + " to " + wire.to();
            String state = wire.presence().remark();
            ink.add(new Cluster(tag.titled(words + state, ""), LineInk.draw(wire.points(), LEG, wire.presence())));
        }
        double edge = routed.wires().stream()
                .flatMap(w -> w.points().stream())
                .filter(at -> at.y() >= placed.high())
                .mapToDouble(Point::x)
                .min()
                .orElse(placed.pointX().get(0));
        double x = Math.min(edge, placed.pointX().get(0) - BusScale.HALF_MARKER) - 2;
        ink.add(Print.bold("H", x, placed.high(), Align.END));
        ink.add(Print.bold("L", x, placed.low(), Align.END));
    }

    private void addTees() {
        for (int i = 0; i < placed.pointX().size(); i++) {
            BusPoint point = scene.trunk().get(i);
            if (point instanceof BusTee) {
                for (boolean high : new boolean[] {true, false}) {
                    double x = BusRouter.dot(placed.pointX().get(i), high);
                    addDot(point.id() + (high ? ".H" : ".L"), new Point(x, high ? placed.high() : placed.low()));
                }
            }
        }
    }

    private void addDot(String id, Point at) {
        Area dot = new Area(at.x() - DOT / 2, at.y() - DOT / 2, DOT, DOT);
        List<Ink> parts = List.of(
                new Stroke(Tag.of("bar"), List.of(at, at), Pen.solid(Palette.BLACK, Lines.THICK)),
                Patch.ellipse("dot", dot, Paint.of(Palette.BLACK), Pen.NONE));
        Tag tag = Tag.of("splice").withId("splice", id).with("splice", id);
        ink.add(new Cluster(tag.titled("joint " + id, ""), parts));
    }

    private void addLabels() {
        for (int i = 0; i < placed.labels().size(); i++) {
            TrunkLabel label = placed.labels().get(i);
            double x = placed.labelX().get(i) - label.width() / 2;
            Words words = Print.line(
                    label.text(), x, placed.labelY(), Align.START, label.cap(), Weight.REGULAR, Palette.BLACK);
            List<Ink> parts = new ArrayList<>(List.of(words));
            x += words.width() + TrunkLabel.BADGE_GAP;
            for (BadgeForm badge : label.badges()) {
                Point middle = new Point(x + badge.width() / 2, placed.labelY());
                parts.add(Badges.draw(badge, middle, label.lead().id()));
                x += badge.width() + TrunkLabel.BADGE_GAP;
            }
            ink.add(new Cluster(Tag.of("lead-label").with("lead", label.lead().id()), parts));
        }
        scene.ring().ifPresent(this::addRingLabel);
    }

    private void addRingLabel(BusLead ring) {
        TrunkLabel label = TrunkLabel.of(ring, placed.marks(), Lettering.SMALL);
        double x = (placed.pointX().get(0) + placed.pointX().get(placed.pointX().size() - 1)) / 2;
        double y = placed.ringY() - BusPlacer.RING_LABEL / 2;
        Words words = Print.small(label.text() + ", closes the ring, not to scale", x, y, Align.MIDDLE);
        ink.add(words);
        double at = x + words.width() / 2 + 1;
        for (BadgeForm badge : label.badges()) {
            ink.add(Badges.draw(badge, new Point(at + badge.width() / 2, y), ring.id()));
            at += badge.width() + BadgeForm.GAP;
        }
    }

    /** Two slanting strokes on a white ground where the axis is broken. */
    private void addBreaks() {
        for (int i = 0; i < placed.scale().broken().size(); i++) {
            if (placed.scale().broken().get(i)) {
                double x = (placed.pointX().get(i) + placed.pointX().get(i + 1)) / 2;
                addBreak(new Point(x, placed.high()), false);
                addBreak(new Point(x, placed.low()), false);
                addBreak(new Point(x, placed.dimensionY()), false);
            }
        }
        for (BusStub stub : scene.stubs()) {
            if (placed.scale().stubBroken(stub.lead())) {
                Optional<Seat> seat = placed.members().stream()
                        .filter(s -> s.form().member().equals(stub.member()))
                        .findFirst();
                seat.ifPresent(s -> {
                    double y = (placed.low() + BusPlaced.OVER + s.marker().y()) / 2;
                    addBreak(new Point(s.marker().centre().x(), y), true);
                });
            }
        }
        scene.ring().ifPresent(ring -> {
            double x = (placed.pointX().get(0)
                            + placed.pointX().get(placed.pointX().size() - 1))
                    / 2;
            addBreak(new Point(x, placed.ringY() + 1.1), false);
        });
    }

    private void addBreak(Point at, boolean upright) {
        Pen pen = Pen.solid(Palette.BLACK, Lines.MEDIUM);
        for (double side : new double[] {-0.7, 0.7}) {
            Point middle = upright ? at.plus(0, side) : at.plus(side, 0);
            List<Point> stroke = upright
                    ? List.of(middle.plus(-2, 0.5), middle.plus(2, -0.5))
                    : List.of(middle.plus(-0.5, 2), middle.plus(0.5, -2));
            ink.add(new Stroke(Tag.of("break"), stroke, pen));
        }
    }
}
