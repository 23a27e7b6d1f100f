package ringout.present.difference;

import java.util.ArrayList;
import java.util.List;
import ringout.compare.fleet.Fleet;
import ringout.compare.fleet.FleetRow;
import ringout.compare.fleet.Tail;

/** The table of all tails as text: one row a matter, one column a tail, the gravest first; "=" where a tail is as the base. */
final class FleetText {
    private static final int WHAT = 34;
    private static final int CELL = 26;
    private static final int GRADE = 3;

    private final StringBuilder text = new StringBuilder();

    private FleetText() {}

    static String of(Fleet fleet) {
        FleetText out = new FleetText();
        out.head(fleet);
        List<String> heads = new ArrayList<>(List.of("base"));
        fleet.tails().forEach(tail -> heads.add(DifferenceWords.of(tail)));
        out.row("", "", heads);
        for (FleetRow row : fleet.rows()) {
            List<String> cells = new ArrayList<>(List.of(row.base().isEmpty() ? "nothing" : row.base()));
            row.cells().forEach(cell -> cells.add(cell.isEmpty() ? "=" : cell));
            out.row(row.severity().name(), row.what(), cells);
            row.finding().ifPresent(finding -> out.line(finding));
            row.trend()
                    .ifPresent(
                            number -> out.line(TrendWords.limit(fleet.trends().get(number))));
            out.line(out.fate(row));
        }
        List<String> records = new ArrayList<>(List.of(""));
        for (Tail tail : fleet.tails()) {
            records.add(DifferenceWords.plural(Fleet.ofRecord(tail), "row"));
        }
        out.row("", "of the record only", records);
        return out.text.toString();
    }

    private void head(Fleet fleet) {
        text.append("fleet: ")
                .append(DifferenceWords.plural(fleet.tails().size(), "tail"))
                .append(" against ")
                .append(DifferenceWords.of(fleet.base()))
                .append(" (")
                .append(fleet.baseName())
                .append("): ")
                .append(DifferenceWords.plural(fleet.rows().size(), "row"))
                .append(", ")
                .append(fleet.dangerous().size())
                .append(" dangerous\n");
    }

    private String fate(FleetRow row) {
        if (row.trend().isPresent()) {
            return "";
        }
        String where = row.everywhere() ? "all tails alike: change the base, or all tails" : "this tail only";
        if (!row.everywhere() && row.tails() > 1) {
            where = "these " + row.tails() + " tails";
        }
        String paper = row.undocumented() > 0 ? "; no change on record" : "";
        return row.fate().words() + " (" + where + ")" + paper;
    }

    private void line(String words) {
        if (!words.isEmpty()) {
            text.append("      ").append(words).append('\n');
        }
    }

    private void row(String grade, String what, List<String> cells) {
        List<List<String>> columns = new ArrayList<>();
        columns.add(wrapped(what, WHAT));
        cells.forEach(cell -> columns.add(wrapped(cell, CELL)));
        int height = columns.stream().mapToInt(List::size).max().orElse(1);
        for (int line = 0; line < height; line++) {
            StringBuilder row = new StringBuilder(padded(line == 0 ? grade : "", GRADE));
            for (int column = 0; column < columns.size(); column++) {
                List<String> lines = columns.get(column);
                row.append(padded(line < lines.size() ? lines.get(line) : "", (column == 0 ? WHAT : CELL) + 2));
            }
            text.append(row.toString().stripTrailing()).append('\n');
        }
    }

    private static String padded(String words, int width) {
        return words + " ".repeat(Math.max(0, width - words.length()));
    }

    private static List<String> wrapped(String words, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ", -1)) {
            String rest = word;
            if (!line.isEmpty() && line.length() + 1 + rest.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (rest.length() > width) {
                lines.add(rest.substring(0, width));
                rest = rest.substring(width);
            }
            line.append(line.isEmpty() ? "" : " ").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }
}
