package ringout.draw.face;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.card.Card;
import ringout.draw.card.CardHead;
import ringout.draw.card.TextTable;
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
import ringout.draw.style.LegendEntry;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;

/**
 * A plug with its face from both sides and the table of its pins.
 *
 * @param face the face
 * @param facts family and key
 * @param table a row a pin: number, signal, colour, where the wire goes
 * @param findings those with a badge on it
 */
public record PlugCard(Face face, List<String> facts, TextTable table, List<FindingLine> findings) implements Card {
    private static final double MARGIN = 1.6;
    private static final double GAP = 2;
    private static final double COLUMN = 61;
    private static final double SHEET = 259;

    /** Keeps unmodifiable copies. */
    public PlugCard {
        facts = List.copyOf(facts);
        findings = List.copyOf(findings);
    }

    @Override
    public String name() {
        return face.plug();
    }

    /** A quarter, third, half or the whole of the smallest sheet, so that cards stand below one another. */
    @Override
    public double width() {
        double needed = needed();
        for (int parts : List.of(4, 3, 2, 1)) {
            double part = (SHEET - (parts - 1) * 4) / parts;
            if (needed <= part) {
                return part;
            }
        }
        return needed;
    }

    private double needed() {
        double inner = Math.max(table.width(), FaceInk.ofBothSides(face).width());
        return 2 * MARGIN + Math.max(inner, head(COLUMN).leastWidth());
    }

    private double inner() {
        return width() - 2 * MARGIN;
    }

    private CardHead head(double width) {
        return new CardHead(face.plug(), "", facts, findings, width);
    }

    /** Both views side by side where there is room, else one below the other. */
    private boolean beside() {
        return 2 * FaceInk.ofBothSides(face).width() + GAP <= inner();
    }

    private double facesHeight() {
        double one = FaceInk.ofBothSides(face).height();
        return beside() ? one : 2 * one + MARGIN;
    }

    @Override
    public double height() {
        return head(inner()).height() + facesHeight() + table.height() + 3 * MARGIN;
    }

    @Override
    public List<Ink> draw(Point corner) {
        List<Ink> ink = new ArrayList<>();
        Area frame = new Area(corner.x(), corner.y(), width(), height());
        ink.add(Patch.rectangle("panel", frame, Paint.of(Palette.WHITE), Pen.solid(Palette.BLACK, Lines.MEDIUM)));
        CardHead head = head(inner());
        Point at = corner.plus(MARGIN, MARGIN / 2);
        ink.addAll(head.draw(at));
        at = at.plus(0, head.height() + MARGIN / 2);
        FaceInk faces = FaceInk.ofBothSides(face);
        ink.add(faces.draw(View.WIRE_SIDE, at));
        Point second = beside() ? at.plus(inner() - faces.width(), 0) : at.plus(0, faces.height() + MARGIN);
        ink.add(faces.draw(View.MATING_FACE, second));
        at = at.plus(0, facesHeight() + MARGIN);
        ink.addAll(table.draw(at, this::rowTag));
        Tag tag = Tag.of("plug").withId("plug", face.plug()).with("plug", face.plug());
        return List.of(new Cluster(tag.titled("plug " + face.plug(), String.join(", ", facts)), ink));
    }

    private Tag rowTag(int row) {
        List<String> cells = table.rows().get(row);
        return Tag.of("pin-row").with("contact", cells.get(0)).with("plug", face.plug());
    }

    @Override
    public List<Promise> promised() {
        return List.of();
    }

    @Override
    public List<LegendEntry> legend() {
        List<LegendEntry> entries = new ArrayList<>(List.of(
                FaceLegend.of(View.WIRE_SIDE),
                FaceLegend.of(View.MATING_FACE),
                FaceLegend.firstPin(),
                FaceLegend.of(face.sign())));
        if (face.rows().stream().anyMatch(row -> row.stream().anyMatch(contact -> !contact.wired()))) {
            entries.add(FaceLegend.empty());
        }
        return entries;
    }
}
