package ringout.draw.style;

import static ringout.draw.letter.Lettering.SMALL;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringout.draw.form.BadgeForm;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Mark;

/** The finding list and the notes on the sheet. */
final class FindingsInk {
    private static final double ROW = 8.5;
    private static final double NOTE = 4.5;
    private static final double MARGIN = 2;
    private static final double CODE_ROOM = 20;
    private static final double NARROWEST = 150;
    private static final double LINE = 4.1;

    private FindingsInk() {}

    private static int columns(double width) {
        return Math.max(1, (int) (width / NARROWEST));
    }

    /** {@return the height the list needs, mm; 0 when there is nothing to list} */
    static double height(List<FindingLine> findings, List<String> notes, double width) {
        int rows = (findings.size() + columns(width) - 1) / columns(width);
        double height = rows * ROW + notes.size() * NOTE;
        return height == 0 ? 0 : height + 2;
    }

    static Cluster draw(List<FindingLine> findings, Map<String, List<String>> zones, List<String> notes, Area area) {
        List<Ink> ink = new ArrayList<>();
        int columns = columns(area.width());
        int rows = (findings.size() + columns - 1) / columns;
        double width = area.width() / columns;
        double badges =
                findings.stream().mapToDouble(f -> badge(f).width()).max().orElse(0) + 2;
        for (int i = 0; i < findings.size(); i++) {
            int column = i / rows;
            double x = area.x() + column * width + MARGIN;
            double y = area.y() + 1 + (i % rows) * ROW;
            List<String> seen =
                    zones.getOrDefault(Integer.toString(findings.get(i).number()), List.of());
            ink.add(line(findings.get(i), seen, x, y, width - 2 * MARGIN, badges));
        }
        double y = area.y() + 1 + rows * ROW;
        for (String note : notes) {
            String text = Lettering.fit(
                    "note: " + Lettering.printable(note), SMALL, Weight.REGULAR, area.width() - 2 * MARGIN);
            ink.add(Print.small(text, area.x() + MARGIN, y + NOTE / 2, Align.START));
            y += NOTE;
        }
        return new Cluster(Tag.of("findings"), ink);
    }

    private static BadgeForm badge(FindingLine finding) {
        return BadgeForm.of(new Mark(finding.number(), finding.kind(), finding.waived(), List.of()));
    }

    /** As many zones as there is room for below the code; a plus when there are more. */
    private static String words(List<String> zones) {
        String shown = zones.isEmpty() ? "" : "at";
        for (int i = 0; i < zones.size(); i++) {
            String more = shown + " " + zones.get(i);
            String whole = i + 1 < zones.size() ? more + " +" : more;
            if (Lettering.width(whole, SMALL, Weight.REGULAR) > CODE_ROOM - 1) {
                return shown + " +";
            }
            shown = more;
        }
        return shown;
    }

    private static Cluster line(
            FindingLine finding, List<String> zones, double x, double y, double width, double badges) {
        List<Ink> ink = new ArrayList<>();
        double middle = y + ROW / 2;
        ink.add(Badges.draw(badge(finding), new Point(x + badges / 2 - 1, middle), ""));
        String code = finding.kind().word() + " " + Lettering.printable(finding.code());
        List<String> lines = Lettering.wrap(
                Lettering.printable(finding.title()), SMALL, Weight.REGULAR, width - badges - CODE_ROOM, 2);
        double first = lines.size() > 1 || !zones.isEmpty() ? middle - LINE / 2 : middle;
        String shown = Lettering.fit(code, SMALL, Weight.BOLD, CODE_ROOM - 1);
        Print.add(ink, Print.bold(shown, x + badges, first, Align.START));
        Print.add(ink, Print.small(words(zones), x + badges, first + LINE, Align.START));
        for (int i = 0; i < lines.size(); i++) {
            double textX = x + badges + CODE_ROOM;
            Print.add(ink, Print.small(lines.get(i), textX, first + i * LINE, Align.START));
        }
        return new Cluster(Tag.of("finding").with("number", Integer.toString(finding.number())), ink);
    }
}
