package ringout.draw.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.draw.form.BadgeForm;
import ringout.draw.form.Lattice;
import ringout.draw.form.PlugForm;
import ringout.draw.form.RowForm;
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
import ringout.draw.scene.Fitting;
import ringout.draw.scene.Presence;
import ringout.draw.style.Badges;
import ringout.draw.style.FittingInk;
import ringout.draw.style.LineInk;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** A plug inside its box: a head with its name, and a line for each pin with the cell at the edge of the box. */
final class PlugInk {
    private static final double MARGIN = 1.2;

    private final PlugForm form;
    private final boolean right;
    private final double edge;
    private final double top;
    private final Casings casings;
    private final boolean faint;

    /** A plug whose cells stand at an edge of its box; faint for one of a unit that is unchanged. */
    PlugInk(PlugForm form, boolean right, double edge, double top, Casings casings, boolean faint) {
        this.form = form;
        this.right = right;
        this.edge = edge;
        this.top = top;
        this.casings = casings;
        this.faint = faint;
    }

    /** A rectangle between two distances from the edge inwards. */
    private Area inside(double from, double to, double y, double height) {
        double x1 = right ? edge - from : edge + from;
        double x2 = right ? edge - to : edge + to;
        return Area.between(x1, y, x2, y + height);
    }

    private double inwards(double distance) {
        return right ? edge - distance : edge + distance;
    }

    Area area() {
        return inside(0, form.width(), top, Lattice.mm(form.height()));
    }

    /** {@return the plug without casings} */
    Ink draw() {
        List<Ink> ink = new ArrayList<>();
        Pen pen = faint ? Pen.solid(Palette.FAINT, Lines.THIN) : Pen.solid(Palette.BLACK, Lines.MEDIUM);
        ink.add(Patch.rectangle("body", area(), Paint.of(Palette.WHITE), pen));
        if (form.head() > 0) {
            addHead(ink, pen);
        }
        form.rows().forEach(row -> ground(row).ifPresent(ink::add));
        form.rows().forEach(row -> ink.add(row(row)));
        String name = form.plug().name();
        Tag tag = Tag.of("plug")
                .withId("plug", form.plug().id())
                .with("plug", form.plug().id());
        return new Cluster(tag.titled("plug " + form.plug().id() + (name.isEmpty() ? "" : " (" + name + ")"), ""), ink);
    }

    /** {@return the casing around the plug, to lie below the wires} */
    Optional<Ink> casing() {
        return casings.around(form.plug().id(), area());
    }

    /** {@return the part of the casing that lies inside the box} */
    Optional<Ink> casingInside() {
        double half = Lines.BAND / 2;
        double far = inwards(form.width() + half);
        double upper = area().y() - half;
        double lower = area().bottom() + half;
        return casings.band(
                form.plug().id(),
                List.of(new Point(edge, upper), new Point(far, upper), new Point(far, lower), new Point(edge, lower)));
    }

    private void addHead(List<Ink> ink, Pen pen) {
        double height = Lattice.mm(form.head());
        ink.add(Patch.rectangle("head", inside(0, form.width(), top, height), Paint.of(Palette.LIGHT_GREY), pen));
        double middle = top + height / 2;
        Print.add(ink, Print.bold(form.name(), inwards(MARGIN), middle, right ? Align.END : Align.START));
        addBadges(ink, form.badges(), form.plug().id(), middle);
    }

    private void addBadges(List<Ink> ink, List<BadgeForm> badges, String target, double middle) {
        double from = form.width() - BadgeForm.GAP;
        for (BadgeForm badge : badges) {
            ink.add(Badges.draw(badge, new Point(inwards(from - badge.width() / 2), middle), target));
            from -= badge.width() + BadgeForm.GAP;
        }
    }

    private Area rowArea(RowForm row) {
        return inside(0, form.width(), top + Lattice.mm(row.top()), Lattice.mm(row.height()));
    }

    private Optional<Ink> ground(RowForm row) {
        double y = top + Lattice.mm(row.top());
        return casings.below(row.row().id(), inside(form.cell(), form.width(), y, Lattice.mm(row.height())));
    }

    private Ink row(RowForm row) {
        List<Ink> ink = new ArrayList<>();
        double y = top + Lattice.mm(row.top());
        double middle = top + Lattice.mm(row.lines().get(0));
        boolean missing = row.row().presence() == Presence.MISSING;
        Pen pen = missing
                ? Pen.dashed(Palette.DARK_GREY, Lines.STRONG, 1.6, 1.0)
                : Pen.solid(faint ? Palette.FAINT : Palette.BLACK, Lines.THIN);
        Area cell = inside(0, form.cell(), y, Lattice.mm(row.height()));
        ink.add(Patch.rectangle("cell", cell, Paint.of(Palette.WHITE), pen));
        String colour = missing ? Palette.DARK_GREY : Palette.BLACK;
        Print.add(ink, text(row.number(), cell.centre().x(), middle, Align.MIDDLE, colour));
        if (row.row() instanceof Fitting fitting) {
            Point centre = new Point(cell.centre().x(), middle);
            ink.addAll(FittingInk.draw(fitting, centre));
            if (row.row().presence() == Presence.EXTRA) {
                ink.addAll(LineInk.cross(centre, 1.7));
            }
        }
        if (row.row().presence() == Presence.EXTRA) {
            ink.addAll(strike(rowArea(row)));
        }
        Words words = text(row.text(), inwards(form.cell() + MARGIN), middle, right ? Align.END : Align.START, colour);
        if (row.row().presence() == Presence.EXTRA || ground(row).isPresent()) {
            Print.addOnGround(ink, words, 0.15);
        } else {
            Print.add(ink, words);
        }
        addBadges(ink, row.badges(), row.row().id(), middle);
        return new Cluster(rowTag(row), ink);
    }

    private static Words text(String text, double x, double middle, Align align, String colour) {
        return Print.line(text, x, middle, align, Lettering.SMALL, Weight.REGULAR, colour);
    }

    private static Tag rowTag(RowForm row) {
        boolean missing = row.row().presence() == Presence.MISSING;
        Tag tag = Tag.of(missing ? "pin ghost" : "pin")
                .withId("pin", row.row().id())
                .with("pin", row.row().id());
        String state = missing ? ", missing" : row.row().presence() == Presence.EXTRA ? ", one too many" : "";
        return tag.titled(row.row().id() + (row.text().isEmpty() ? "" : " " + row.text()) + state, "");
    }

    /** Two diagonals across what is one too many. */
    static List<Ink> strike(Area a) {
        Pen pen = Pen.solid(Palette.BLACK, Lines.MEDIUM);
        Point[] c = {
            new Point(a.x(), a.y()),
            new Point(a.right(), a.bottom()),
            new Point(a.x(), a.bottom()),
            new Point(a.right(), a.y())
        };
        return List.of(
                new Stroke(Tag.of("crossed-out"), List.of(c[0], c[1]), pen),
                new Stroke(Tag.of("crossed-out"), List.of(c[2], c[3]), pen));
    }
}
