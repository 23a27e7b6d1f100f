package ringout.draw.wiring;

import static ringout.draw.letter.Lettering.MEDIUM;
import static ringout.draw.letter.Lettering.SMALL;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.form.BadgeForm;
import ringout.draw.form.GroupForm;
import ringout.draw.form.Lattice;
import ringout.draw.form.NodeForm;
import ringout.draw.form.Tap;
import ringout.draw.ink.Cluster;
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
import ringout.draw.place.Placed;
import ringout.draw.scene.Box;
import ringout.draw.scene.Presence;
import ringout.draw.style.Badges;
import ringout.draw.style.LineInk;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** Boxes and splices. */
final class NodeInk {
    private static final double MARGIN = 1.5;
    private static final double TITLE_MIDDLE = 3.6;
    private static final double DOT = 1.5;

    private final Placed placed;
    private final Casings casings;
    private final List<Ink> under = new ArrayList<>();
    private final List<Ink> over = new ArrayList<>();

    NodeInk(Placed placed, Casings casings) {
        this.placed = placed;
        this.casings = casings;
    }

    /** {@return casings, which lie below the wires} */
    List<Ink> under() {
        return under;
    }

    /** {@return boxes and splices} */
    List<Ink> over() {
        return over;
    }

    void addBox(NodeForm node, Box box, Area area) {
        casings.around(node.id(), area).ifPresent(under::add);
        List<Ink> ink = new ArrayList<>();
        boolean missing = box.presence().ghost();
        boolean faint = box.presence() == Presence.AS_BEFORE;
        Pen pen = outline(box.presence());
        ink.add(Patch.rectangle("body", area, Paint.of(Palette.WHITE), pen));
        Area head = new Area(area.x(), area.y(), area.width(), Lattice.mm(node.head()) - 1);
        ink.add(Patch.rectangle("head", head.grown(-0.35), Paint.of(missing ? Palette.WHITE : Palette.PALE), Pen.NONE));
        if (box.presence() == Presence.EXTRA || box.presence() == Presence.REMOVED) {
            ink.addAll(PlugInk.strike(area));
        }
        if (box.presence() == Presence.ADDED) {
            ink.addAll(LineInk.plus(new Point(area.x(), area.y())));
        }
        addTitle(ink, node, area);
        for (int g : node.groups()) {
            GroupForm group = placed.forms().groups().get(g);
            group.plug().ifPresent(form -> {
                boolean right = placed.right(group);
                double edge = right ? area.right() : area.x();
                double top = area.y() + Lattice.mm(placed.top(group) - placed.top(node));
                PlugInk plug = new PlugInk(form, right, edge, top, casings, faint);
                plug.casing().ifPresent(under::add);
                plug.casingInside().ifPresent(ink::add);
                ink.add(plug.draw());
            });
        }
        Tag tag = Tag.of(missing ? "unit ghost" : "unit")
                .withId("unit", node.id())
                .with("unit", node.id());
        String state = box.presence().remark();
        over.add(new Cluster(tag.titled("unit " + node.id() + state, box.subtitle()), ink));
    }

    private static Pen outline(Presence presence) {
        return switch (presence) {
            case MISSING, REMOVED -> Pen.dashed(Palette.DARK_GREY, Lines.THICK, 3.0, 1.8);
            case AS_BEFORE -> Pen.solid(Palette.FAINT, Lines.THIN);
            case ADDED -> Pen.solid(Palette.BLACK, 2 * Lines.THICK);
            case FITTED, EXTRA -> Pen.solid(Palette.BLACK, Lines.STRONG);
        };
    }

    private void addTitle(List<Ink> ink, NodeForm node, Area area) {
        double y = area.y() + TITLE_MIDDLE;
        double x = area.x() + MARGIN;
        Print.add(ink, Print.line(node.title(), x, y, Align.START, MEDIUM, Weight.BOLD, Palette.BLACK));
        double end = area.right() - BadgeForm.GAP;
        for (BadgeForm badge : node.badges()) {
            ink.add(Badges.draw(badge, new Point(end - badge.width() / 2, y), node.id()));
            end -= badge.width() + BadgeForm.GAP;
        }
        Print.add(ink, Print.line(node.zone(), end - 0.7, y, Align.END, SMALL, Weight.REGULAR, Palette.DARK_GREY));
        double line = area.y() + NodeForm.TITLE_LINE + node.drop() + 0.9;
        for (String text : node.subtitle()) {
            Print.add(ink, Print.small(text, x, line, Align.START));
            line += NodeForm.SUBTITLE_LINE;
        }
    }

    /** A bar with a dot at each wire; a wire at the very end of the bar makes a corner, not a joint of three. */
    void addSplice(NodeForm node, Area area, List<Tap> taps, List<Point> ends) {
        List<Ink> ink = new ArrayList<>();
        double x = area.centre().x();
        double top = ends.stream().mapToDouble(Point::y).min().orElse(area.y());
        double bottom = ends.stream().mapToDouble(Point::y).max().orElse(area.bottom());
        List<Point> bar = List.of(new Point(x, top), new Point(x, bottom));
        casings.around(node.id(), Area.between(x, top, x, bottom).grown(DOT / 2))
                .ifPresent(under::add);
        ink.add(new Stroke(Tag.of("bar"), bar, Pen.solid(Palette.BLACK, Lines.THICK)));
        for (Point end : ends) {
            Area dot = new Area(end.x() - DOT / 2, end.y() - DOT / 2, DOT, DOT);
            ink.add(Patch.ellipse("dot", dot, Paint.of(Palette.BLACK), Pen.NONE));
        }
        double width = Lettering.width(node.title(), SMALL, Weight.BOLD);
        double all = width + node.badgeWidth();
        double middle = area.y() + Lattice.mm(node.head()) / 2 - 0.6;
        Print.add(ink, Print.bold(node.title(), x - all / 2, middle, Align.START));
        double at = x - all / 2 + width + BadgeForm.GAP;
        for (BadgeForm badge : node.badges()) {
            ink.add(Badges.draw(badge, new Point(at + badge.width() / 2, middle), node.id()));
            at += badge.width() + BadgeForm.GAP;
        }
        Tag tag = Tag.of("splice").withId("splice", node.id()).with("splice", node.id());
        over.add(new Cluster(tag.titled("splice " + node.id() + " of " + taps.size() + " wires", ""), ink));
    }
}
