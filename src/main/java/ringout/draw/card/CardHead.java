package ringout.draw.card;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.form.BadgeForm;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Point;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Mark;
import ringout.draw.style.Badges;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/**
 * The head of a card: its name in large letters, the badges of its findings, what follows the name, and facts below.
 *
 * @param name of the thing
 * @param after printed behind it in small letters; may be empty
 * @param facts lines below it, each wrapped to the width
 * @param findings each with its badge
 * @param width room, mm
 */
public record CardHead(String name, String after, List<String> facts, List<FindingLine> findings, double width) {
    private static final double TITLE = 6.8;
    private static final double LINE = 4.1;
    private static final double WIDEST = 90;
    private static final int MOST = 3;

    /** Keeps unmodifiable copies. */
    public CardHead {
        facts = List.copyOf(facts);
        findings = List.copyOf(findings);
    }

    private String shown() {
        return Lettering.fit(Lettering.printable(name), Lettering.MEDIUM, Weight.BOLD, WIDEST);
    }

    private List<BadgeForm> badges() {
        return findings.stream()
                .map(line -> BadgeForm.of(new Mark(line.number(), line.kind(), line.waived(), List.of())))
                .toList();
    }

    private double badgesWidth() {
        return badges().stream()
                .mapToDouble(badge -> badge.width() + BadgeForm.GAP)
                .sum();
    }

    /** {@return the width below which its first line would be cut, mm} */
    public double leastWidth() {
        double behind =
                after.isEmpty() ? 0 : 2 + Math.min(WIDEST, Lettering.width(after, Lettering.SMALL, Weight.REGULAR));
        return Lettering.width(shown(), Lettering.MEDIUM, Weight.BOLD) + 1.5 + badgesWidth() + behind;
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (String fact : facts) {
            lines.addAll(Lettering.wrap(Lettering.printable(fact), Lettering.SMALL, Weight.REGULAR, width, MOST));
        }
        return lines;
    }

    /** {@return how high it is, mm} */
    public double height() {
        return TITLE + lines().size() * LINE;
    }

    /** {@return its ink from an upper left corner} */
    public List<Ink> draw(Point corner) {
        List<Ink> ink = new ArrayList<>();
        double y = corner.y() + TITLE / 2 + 0.2;
        Print.add(ink, Print.line(shown(), corner.x(), y, Align.START, Lettering.MEDIUM, Weight.BOLD, Palette.BLACK));
        double x = corner.x() + Lettering.width(shown(), Lettering.MEDIUM, Weight.BOLD) + 1.5;
        for (BadgeForm badge : badges()) {
            ink.add(Badges.draw(badge, new Point(x + badge.width() / 2, y), name));
            x += badge.width() + BadgeForm.GAP;
        }
        String behind = Lettering.fit(
                Lettering.printable(after), Lettering.SMALL, Weight.REGULAR, corner.x() + width - x - 0.5);
        Print.add(ink, Print.small(behind, x + 0.5, y + 0.4, Align.START));
        double line = corner.y() + TITLE + LINE / 2;
        for (String text : lines()) {
            Print.add(ink, Print.small(text, corner.x(), line, Align.START));
            line += LINE;
        }
        return ink;
    }
}
