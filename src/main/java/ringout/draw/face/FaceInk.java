package ringout.draw.face;

import java.util.ArrayList;
import java.util.List;
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
import ringout.draw.style.LineInk;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** The ink of a face: the words and the icon of the view above, then the contacts in their places. */
public final class FaceInk {
    private static final double WORDS = 4.8;
    private static final double MARK = 3.4;
    private static final double ICON_HEIGHT = 3.8;
    private static final double NUMBER = 4.2;
    private static final double LETTERS = 3.5;
    private static final double SIGN = 2.8;
    private static final double LEAST = 5.6;
    private static final double WIDEST = 16;
    private static final double ICON = 11.6;

    private final Face face;
    private final boolean narrow;
    private final double cellWidth;
    private final int letterLines;

    private FaceInk(Face face, boolean narrow) {
        this.face = face;
        this.narrow = narrow;
        double wide = LEAST;
        int lines = 0;
        for (List<Contact> row : face.rows()) {
            for (Contact contact : row) {
                wide = Math.max(wide, width(number(contact), Weight.BOLD) + 1.8);
                List<String> letters = letters(contact.colour());
                lines = Math.max(lines, letters.size());
                for (String line : letters) {
                    wide = Math.max(wide, width(line, Weight.REGULAR) + 1.4);
                }
            }
        }
        this.cellWidth = wide;
        this.letterLines = lines;
    }

    private static double width(String text, Weight weight) {
        return Lettering.width(text, Lettering.SMALL, weight);
    }

    private static String number(Contact contact) {
        return Lettering.fit(Lettering.printable(contact.number()), Lettering.SMALL, Weight.BOLD, WIDEST);
    }

    /** Two letters a line, as many as a code of two colours has; what is no such code stays in one line. */
    private static List<String> letters(String colour) {
        String printed = Lettering.fit(Lettering.printable(colour), Lettering.SMALL, Weight.REGULAR, WIDEST);
        if (printed.isEmpty()) {
            return List.of();
        }
        return printed.matches("[A-Z]{4}") ? List.of(printed.substring(0, 2), printed.substring(2)) : List.of(printed);
    }

    /** {@return a face to be seen from the wire side only, the icon beside its words} */
    public static FaceInk ofWireSide(Face face) {
        return new FaceInk(face, false);
    }

    /** {@return a face to be seen from both sides, the icon below its words, so that both stand side by side} */
    public static FaceInk ofBothSides(Face face) {
        return new FaceInk(face, true);
    }

    /** {@return how wide a view is, mm} */
    public double width() {
        double words = narrow
                ? width(View.MATING_FACE.words(), Weight.REGULAR)
                : ICON + width(View.WIRE_SIDE.words(), Weight.REGULAR);
        return Math.max(words, face.columns() * cellWidth);
    }

    /** {@return how high a view is, mm} */
    public double height() {
        return head() + face.rows().size() * cellHeight() + 0.4;
    }

    private double head() {
        return WORDS + MARK + (narrow ? ICON_HEIGHT : 0);
    }

    private double cellHeight() {
        return NUMBER + letterLines * LETTERS + SIGN;
    }

    /** {@return one view from an upper left corner} */
    public Cluster draw(View view, Point corner) {
        List<Ink> ink = new ArrayList<>(icon(view, corner.plus(0, narrow ? WORDS + 1.9 : 2.4)));
        ink.add(Print.small(view.words(), corner.x() + (narrow ? 0 : ICON), corner.y() + 2.4, Align.START));
        List<List<Contact>> rows = face.seenFrom(view);
        for (int row = 0; row < rows.size(); row++) {
            double y = corner.y() + head() + row * cellHeight();
            for (int column = 0; column < rows.get(row).size(); column++) {
                Area cell = new Area(corner.x() + column * cellWidth, y, cellWidth, cellHeight());
                ink.add(contact(rows.get(row).get(column), cell));
            }
        }
        addMark(ink, rows, corner);
        Tag tag = Tag.of("face").with("face", face.plug()).with("view", view.words());
        return new Cluster(tag.titled(face.plug() + ", " + view.words(), ""), ink);
    }

    /** The mark of pin 1: a triangle that points to its cell from above, or into it in a row below. */
    private void addMark(List<Ink> ink, List<List<Contact>> rows, Point corner) {
        Contact first = face.rows().get(0).get(0);
        int column = rows.get(0).indexOf(first);
        double x = corner.x() + (column + 0.5) * cellWidth;
        double y = corner.y() + head() - 0.5;
        List<Point> corners = List.of(new Point(x - 1.4, y - 2.1), new Point(x + 1.4, y - 2.1), new Point(x, y));
        ink.add(new Patch(
                Tag.of("pin-1").with("contact", first.number()),
                new Patch.Polygon(corners),
                Paint.of(Palette.BLACK),
                Pen.NONE));
    }

    private Ink contact(Contact contact, Area cell) {
        List<Ink> ink = new ArrayList<>();
        Paint ground = Paint.of(contact.wired() ? Palette.WHITE : Palette.LIGHT_GREY);
        ink.add(Patch.rectangle("place", cell, ground, Pen.solid(Palette.BLACK, Lines.MEDIUM)));
        double x = cell.centre().x();
        double y = cell.y() + NUMBER / 2 + 0.2;
        Print.add(ink, Print.bold(number(contact), x, y, Align.MIDDLE));
        y = cell.y() + NUMBER + LETTERS / 2;
        for (String line : letters(contact.colour())) {
            Print.add(ink, Print.small(line, x, y, Align.MIDDLE));
            y += LETTERS;
        }
        Point below = new Point(x, cell.bottom() - SIGN / 2 - 0.1);
        ink.addAll(contact.wired() ? sign(face.sign(), below) : LineInk.cross(below, 0.8));
        Tag tag = Tag.of("contact").with("contact", contact.number()).with("colour", contact.colour());
        return new Cluster(tag, ink);
    }

    /** {@return the sign of a contact about a middle} */
    static List<Ink> sign(ContactSign sign, Point middle) {
        Area round = new Area(middle.x() - 0.85, middle.y() - 0.85, 1.7, 1.7);
        Pen pen = Pen.solid(Palette.BLACK, Lines.MEDIUM);
        return switch (sign) {
            case PIN -> List.of(Patch.ellipse("sign", round, Paint.of(Palette.BLACK), pen));
            case SOCKET -> List.of(Patch.ellipse("sign", round, Paint.of(Palette.WHITE), pen));
            case OTHER -> List.of(new Stroke(Tag.of("sign"), List.of(middle.plus(-0.9, 0), middle.plus(0.9, 0)), pen));
        };
    }

    /**
     * {@return the icon of a view, to the right of a point and level with it: a plug from the side, three wires on its left,
     * and an arrow that looks at its wires or at its face}
     */
    static List<Ink> icon(View view, Point at) {
        Pen pen = Pen.solid(Palette.BLACK, Lines.THIN);
        double shift = view == View.WIRE_SIDE ? 4 : 0;
        List<Ink> ink = new ArrayList<>();
        Area body = new Area(at.x() + shift + 3.4, at.y() - 1.8, 3.4, 3.6);
        ink.add(Patch.rectangle("", body, Paint.of(Palette.LIGHT_GREY), Pen.solid(Palette.BLACK, Lines.MEDIUM)));
        for (double dy : List.of(-1.1, 0.0, 1.1)) {
            Point end = new Point(body.x(), at.y() + dy);
            ink.add(new Stroke(Tag.NONE, List.of(end.plus(-3.0, 0), end), pen));
        }
        double tip = view == View.WIRE_SIDE ? at.x() + 3.4 : body.right() + 0.8;
        double back = view == View.WIRE_SIDE ? -3.2 : 3.2;
        List<Point> arrow = List.of(
                new Point(tip, at.y()), new Point(tip + back, at.y() - 1.6), new Point(tip + back, at.y() + 1.6));
        ink.add(Patch.polygon("look", arrow, Paint.of(Palette.BLACK), Pen.NONE));
        return List.of(new Cluster(Tag.of("icon").with("view", view.words()), ink));
    }
}
