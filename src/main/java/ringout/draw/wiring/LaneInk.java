package ringout.draw.wiring;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.form.BadgeForm;
import ringout.draw.form.Lane;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.Fitting;
import ringout.draw.scene.Wire;
import ringout.draw.style.Badges;
import ringout.draw.style.FittingInk;
import ringout.draw.style.Insulation;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** What stands on a wire beside its end: sleeve, label, badges, flag. */
final class LaneInk {
    private static final double SLEEVE_HEIGHT = 1.5;
    private static final double FLAG_HEIGHT = 4.4;
    private static final double FLAG_POINT = 2;
    private static final double FLAG_MARGIN = 1.2;

    private final Lane lane;
    private final Point edge;
    private final boolean right;

    /** The lane of a wire end at the edge of a column. */
    LaneInk(Lane lane, Point edge, boolean right) {
        this.lane = lane;
        this.edge = edge;
        this.right = right;
    }

    private double out(double distance) {
        return right ? edge.x() + distance : edge.x() - distance;
    }

    /** {@return sleeve, label and fuse of a wire; a wire that is missing has no sleeve} */
    List<Ink> onWire(Wire wire) {
        List<Ink> ink = new ArrayList<>();
        if (!wire.presence().ghost()) {
            addSleeve(ink);
        }
        if (!lane.label().isEmpty()) {
            List<Ink> parts = new ArrayList<>();
            Print.addInGap(
                    parts,
                    Print.small(lane.label(), out(lane.labelStart()), edge.y(), right ? Align.START : Align.END));
            ink.add(new Cluster(Tag.of("label").with("wire", wire.id()), parts));
        }
        if (lane.fuse()) {
            Point middle = new Point(out(lane.fuseStart() + Lane.FUSE / 2), edge.y());
            Fitting sign = new Fitting("", Fitting.Symbol.FUSE, "", wire.presence());
            ink.add(new Cluster(Tag.of("fuse").with("on", wire.id()), FittingInk.draw(sign, middle)));
        }
        return ink;
    }

    /** {@return badges of a wire or move} */
    List<Ink> badges(String target) {
        List<Ink> ink = new ArrayList<>();
        for (int i = 0; i < lane.badges().size(); i++) {
            BadgeForm form = lane.badges().get(i);
            ink.add(Badges.draw(form, new Point(out(lane.badgeStart(i) + form.width() / 2), edge.y()), target));
        }
        return ink;
    }

    /** {@return the flag at the end of a wire that goes on elsewhere} */
    Ink flag(String reference) {
        double tip = out(lane.flagStart());
        double base = out(lane.flagStart() + FLAG_POINT);
        double end = out(lane.flagStart() + lane.flagWidth());
        double top = edge.y() - FLAG_HEIGHT / 2;
        double bottom = edge.y() + FLAG_HEIGHT / 2;
        List<Ink> ink = new ArrayList<>();
        ink.add(Patch.polygon(
                "body",
                List.of(
                        new Point(tip, edge.y()),
                        new Point(base, top),
                        new Point(end, top),
                        new Point(end, bottom),
                        new Point(base, bottom)),
                Paint.of(Palette.WHITE),
                Pen.solid(Palette.BLACK, Lines.MEDIUM)));
        double text = out(lane.flagStart() + FLAG_POINT + FLAG_MARGIN - 0.4);
        Print.add(ink, Print.small(lane.flag(), text, edge.y(), right ? Align.START : Align.END));
        Tag tag = Tag.of("reference").withId("ref", reference).with("reference", reference);
        return new Cluster(tag.titled("goes on at " + lane.flag(), ""), ink);
    }

    private void addSleeve(List<Ink> ink) {
        List<String> colours = Insulation.of(lane.colour());
        if (colours.isEmpty()) {
            return;
        }
        double x1 = out(lane.sleeveStart());
        double x2 = out(lane.sleeveStart() + Lane.SLEEVE);
        double half = SLEEVE_HEIGHT / 2;
        Area sleeve = Area.between(x1, edge.y() - half, x2, edge.y() + half);
        List<Ink> parts = new ArrayList<>();
        parts.add(Patch.rectangle("", sleeve, Paint.of(colours.get(0)), Pen.NONE));
        double stripe = SLEEVE_HEIGHT * 0.45;
        for (int i = 1; i < colours.size(); i++) {
            double width = sleeve.width() / colours.size();
            Area part = colours.size() == 2
                    ? new Area(sleeve.x(), edge.y() - stripe / 2, sleeve.width(), stripe)
                    : new Area(sleeve.x() + i * width, sleeve.y(), width, sleeve.height());
            parts.add(Patch.rectangle("", part, Paint.of(colours.get(i)), Pen.NONE));
        }
        parts.add(Patch.rectangle("edge", sleeve, Paint.clear(), Pen.solid(Palette.BLACK, Lines.THIN)));
        ink.add(new Cluster(Tag.of("sleeve").with("colour", lane.colour()), parts));
    }
}
