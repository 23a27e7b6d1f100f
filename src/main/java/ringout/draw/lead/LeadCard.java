package ringout.draw.lead;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.draw.card.Card;
import ringout.draw.card.CardHead;
import ringout.draw.card.TextTable;
import ringout.draw.face.FaceInk;
import ringout.draw.face.FaceLegend;
import ringout.draw.face.View;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.StyledSheet.Promise;
import ringout.draw.ink.Tag;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Fuse;
import ringout.draw.scene.WireKind;
import ringout.draw.style.LegendEntry;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;

/**
 * One made-up lead.
 *
 * @param id identifier within the set, such as {@code W65}
 * @param name what it is called
 * @param facts size, sleeve, bundle and remarks, a line each
 * @param from the end its length is counted from
 * @param to the other end
 * @param lengthMm cut length, mm; nothing when it is not told
 * @param lengthWords the same in words, with where the figure comes from
 * @param passed what it meets on its way, from the datum
 * @param kind what it is for
 * @param cover what lies over it
 * @param fuse the fuse in it, if there is one
 * @param legs identifiers of its conductors, one a row of the table
 * @param table a row a conductor
 * @param findings those with a badge on it
 */
public record LeadCard(
        String id,
        String name,
        List<String> facts,
        LeadEnd from,
        LeadEnd to,
        OptionalDouble lengthMm,
        String lengthWords,
        List<Passed> passed,
        WireKind kind,
        Cover cover,
        Optional<Fuse> fuse,
        List<Leg> legs,
        TextTable table,
        List<FindingLine> findings)
        implements Card {
    /**
     * What lies over the conductors.
     *
     * @param sleeve name of the sleeve; empty for none
     * @param shield whether there is a shield
     * @param shieldFrom whether it is grounded at the from end
     * @param shieldTo whether it is grounded at the to end
     */
    public record Cover(String sleeve, boolean shield, boolean shieldFrom, boolean shieldTo) {}

    /**
     * A conductor.
     *
     * @param wire identifier
     * @param from pin it starts at
     * @param to pin it ends at
     */
    public record Leg(String wire, String from, String to) {}

    private static final double MARGIN = 2;
    private static final double GAP = 6;

    /** Keeps unmodifiable copies. */
    public LeadCard {
        facts = List.copyOf(facts);
        passed = List.copyOf(passed);
        legs = List.copyOf(legs);
        findings = List.copyOf(findings);
    }

    LeadScale scale() {
        return LeadScale.of(lengthMm);
    }

    private double lower() {
        return FaceInk.ofWireSide(from.face()).width()
                + FaceInk.ofWireSide(to.face()).width()
                + table.width()
                + 2 * GAP;
    }

    private double inner() {
        double line = Math.max(scale().drawnMm(), new LeadLine(this).leastWidth());
        double wide = Math.max(line, lower());
        return Math.max(wide, Math.min(wide + 60, head(wide).leastWidth()));
    }

    private CardHead head(double width) {
        return new CardHead(name, from.plug() + " to " + to.plug(), facts, findings, width);
    }

    /** A lead of full size may use the whole width of its sheet: its margin is then that of the drawing. */
    private double margin() {
        return inner() > 376 ? 0.5 : MARGIN;
    }

    @Override
    public double width() {
        return inner() + 2 * margin();
    }

    @Override
    public double height() {
        return head(inner()).height() + new LeadLine(this).height() + lowerHeight() + 3 * MARGIN;
    }

    private double lowerHeight() {
        double faces = Math.max(
                FaceInk.ofWireSide(from.face()).height(),
                FaceInk.ofWireSide(to.face()).height());
        return Math.max(faces, table.height());
    }

    @Override
    public List<Ink> draw(Point corner) {
        List<Ink> ink = new ArrayList<>();
        Area frame = new Area(corner.x(), corner.y(), width(), height());
        ink.add(Patch.rectangle("panel", frame, Paint.of(Palette.WHITE), Pen.solid(Palette.BLACK, Lines.MEDIUM)));
        CardHead head = head(inner());
        Point at = corner.plus(margin(), MARGIN / 2);
        ink.addAll(head.draw(at));
        at = at.plus(0, head.height() + MARGIN / 2);
        LeadLine line = new LeadLine(this);
        ink.addAll(line.draw(at));
        at = at.plus(0, line.height() + MARGIN / 2);
        FaceInk left = FaceInk.ofWireSide(from.face());
        FaceInk right = FaceInk.ofWireSide(to.face());
        ink.add(left.draw(View.WIRE_SIDE, at));
        ink.addAll(table.draw(at.plus(left.width() + GAP, 0), this::rowTag));
        ink.add(right.draw(View.WIRE_SIDE, at.plus(inner() - right.width(), 0)));
        Tag tag = Tag.of("lead").withId("lead", id).with("lead", name);
        tag = tag.with("scale", scale().words());
        return List.of(new Cluster(tag.titled("lead " + name, from.plug() + " to " + to.plug()), ink));
    }

    private Tag rowTag(int row) {
        Leg leg = legs.get(row);
        return Tag.of("conductor")
                .with("conductor", leg.wire())
                .with("from", leg.from())
                .with("to", leg.to());
    }

    @Override
    public List<Promise> promised() {
        return List.of(new Promise(id, LeadLine.end(id, from), LeadLine.end(id, to)));
    }

    @Override
    public List<LegendEntry> legend() {
        List<LegendEntry> entries = new ArrayList<>(LeadLegend.of(this));
        entries.add(FaceLegend.of(View.WIRE_SIDE));
        entries.add(FaceLegend.firstPin());
        entries.add(FaceLegend.of(from.face().sign()));
        entries.add(FaceLegend.of(to.face().sign()));
        return entries;
    }
}
