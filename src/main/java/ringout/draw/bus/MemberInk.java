package ringout.draw.bus;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.bus.BusPlaced.Seat;
import ringout.draw.form.BadgeForm;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.BusMember;
import ringout.draw.scene.Presence;
import ringout.draw.scene.Terminator;
import ringout.draw.style.Badges;
import ringout.draw.style.Hatchings;
import ringout.draw.style.LineInk;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** A member: its sign on the trunk or at the end of its stub, and its box. */
final class MemberInk {
    private static final double MARGIN = 1.5;
    private static final double LONG = 5;
    private static final double SHORT = 1.8;

    private final Seat seat;
    private final BusMarks marks;
    private final Sizes sizes;

    MemberInk(Seat seat, BusMarks marks, Sizes sizes) {
        this.sizes = sizes;
        this.seat = seat;
        this.marks = marks;
    }

    /** {@return the bands around what a severe finding names, to lie below everything} */
    List<Ink> casings() {
        List<Ink> ink = new ArrayList<>();
        addBand(ink, seat.form().member().id(), seat.box());
        addBand(ink, seat.form().member().terminatorId(), seat.marker());
        return ink;
    }

    private void addBand(List<Ink> ink, String id, Area area) {
        marks.casing(id).ifPresent(kind -> {
            Pen pen = new Pen(Paint.of(Hatchings.of(kind)), Lines.BAND, List.of(), false);
            Tag tag = Tag.of("casing").with("severity", kind.word()).with("target", id);
            ink.add(new Patch(tag, new Patch.Rectangle(area.grown(Lines.BAND / 2)), Paint.clear(), pen));
        });
    }

    /** {@return the sign: a frame in the line, with the terminator in it} */
    Ink sign() {
        BusMember member = seat.form().member();
        List<Ink> ink = new ArrayList<>();
        boolean missing = member.presence() == Presence.MISSING;
        Pen pen = missing
                ? Pen.dashed(Palette.DARK_GREY, Lines.STRONG, 1.6, 1.0)
                : Pen.solid(Palette.BLACK, Lines.STRONG);
        ink.add(Patch.rectangle("cell", seat.marker(), Paint.of(Palette.WHITE), pen));
        Area marker = seat.marker();
        boolean lying = seat.form().stub().isPresent();
        Point middle = lying
                ? marker.centre()
                : new Point(seat.leaderX(), marker.centre().y());
        if (member.terminator() != Terminator.NONE) {
            ink.addAll(resistor(member.terminator(), middle, lying));
        }
        if (member.presence() == Presence.EXTRA) {
            ink.addAll(LineInk.cross(marker.centre(), 2));
        }
        Tag tag =
                Tag.of(missing ? "pin ghost" : "pin").withId("pin", member.id()).with("pin", member.id());
        return new Cluster(tag.titled(member.id() + ", terminator " + words(member.terminator()), ""), ink);
    }

    static String words(Terminator terminator) {
        return switch (terminator) {
            case NONE -> "none";
            case ON -> "on";
            case OFF -> "off";
            case MISSING -> "missing";
            case EXTRA -> "on, one too many";
        };
    }

    /** {@return a resistor: solid when on, hollow when off, dashed when missing, crossed out when one too many} */
    static List<Ink> resistor(Terminator terminator, Point middle, boolean lying) {
        double width = lying ? LONG : SHORT;
        double height = lying ? SHORT : LONG;
        boolean on = terminator == Terminator.ON || terminator == Terminator.EXTRA;
        Pen pen = terminator == Terminator.MISSING
                ? Pen.dashed(Palette.BLACK, Lines.STRONG, 1.0, 0.6)
                : Pen.solid(Palette.BLACK, Lines.STRONG);
        List<Ink> ink = new ArrayList<>();
        Area body = new Area(middle.x() - width / 2, middle.y() - height / 2, width, height);
        ink.add(Patch.rectangle("resistor", body, Paint.of(on ? Palette.BLACK : Palette.WHITE), pen));
        if (terminator == Terminator.EXTRA) {
            Pen white = Pen.solid(Palette.WHITE, 1.1);
            double d = 2.3;
            ink.add(new Stroke(Tag.NONE, List.of(middle.plus(-d, -d), middle.plus(d, d)), white));
            ink.add(new Stroke(Tag.NONE, List.of(middle.plus(-d, d), middle.plus(d, -d)), white));
            ink.addAll(LineInk.cross(middle, d));
        }
        return ink;
    }

    /** {@return the box} */
    Ink box() {
        MemberForm form = seat.form();
        BusMember member = form.member();
        Area box = seat.box();
        List<Ink> ink = new ArrayList<>();
        boolean missing = member.presence() == Presence.MISSING;
        Pen pen =
                missing ? Pen.dashed(Palette.DARK_GREY, Lines.THICK, 3.0, 1.8) : Pen.solid(Palette.BLACK, Lines.STRONG);
        ink.add(Patch.rectangle("body", box, Paint.of(Palette.WHITE), pen));
        Area head = new Area(box.x(), box.y(), box.width(), sizes.titleLine()).grown(-0.35);
        ink.add(Patch.rectangle("head", head, Paint.of(missing ? Palette.WHITE : Palette.PALE), Pen.NONE));
        double x = box.x() + MARGIN;
        double y = box.y() + sizes.titleLine() / 2 + 0.1;
        Print.add(ink, Print.line(form.title(), x, y, Align.START, sizes.title(), Weight.BOLD, Palette.BLACK));
        addBadges(ink, form.badges(), box.right(), y, member.id());
        double top = box.y() + sizes.titleLine();
        for (MemberForm.Line line : form.lines()) {
            addLine(ink, line, x, top);
            top += line.height();
        }
        Tag tag = Tag.of(missing ? "unit ghost" : "unit")
                .withId("unit", member.id())
                .with("unit", member.id());
        return new Cluster(tag.titled("unit " + member.id(), member.subtitle()), ink);
    }

    private void addLine(List<Ink> ink, MemberForm.Line line, double x, double top) {
        double middle = top + line.height() / 2;
        double textX = x;
        BusMember member = seat.form().member();
        if (line.sign()) {
            ink.addAll(resistor(member.terminator(), new Point(x + LONG / 2, middle), true));
            textX += MemberForm.SIGN;
        }
        Weight weight = line.bold() ? Weight.BOLD : Weight.REGULAR;
        Print.add(ink, Print.line(line.text(), textX, middle, Align.START, line.cap(), weight, Palette.BLACK));
        String target = line.sign()
                ? member.terminatorId()
                : seat.form().stub().map(s -> s.id()).orElse(member.id());
        addBadges(ink, line.badges(), seat.box().right(), middle, target);
    }

    private static void addBadges(List<Ink> ink, List<BadgeForm> badges, double right, double y, String target) {
        double end = right - BadgeForm.GAP;
        for (BadgeForm badge : badges) {
            ink.add(Badges.draw(badge, new Point(end - badge.width() / 2, y), target));
            end -= badge.width() + BadgeForm.GAP;
        }
    }
}
