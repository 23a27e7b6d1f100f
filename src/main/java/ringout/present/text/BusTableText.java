package ringout.present.text;

import java.util.ArrayList;
import java.util.List;
import ringout.present.words.Cautions;
import ringout.present.words.FaultWords;
import ringout.present.words.OhmsWords;
import ringout.present.words.ReadingWords;
import ringout.solve.meter.BusTable;
import ringout.solve.meter.BusTable.Row;
import ringout.solve.meter.BusTable.Side;

/** The readings of a bus as a table for a terminal and as one line each. */
public final class BusTableText {
    private static final int WIDTH = 120;

    private final BusTable table;
    private final Lines lines = new Lines();

    private BusTableText(BusTable table) {
        this.table = table;
    }

    /** The table, one block for each way to put the meter on, lines ending in \n. */
    public static String of(BusTable table) {
        BusTableText text = new BusTableText(table);
        text.lines.line(table.bus() + ", " + table.state() + ": expected ohms between H and L, power off");
        for (Side side : Side.values()) {
            text.block(side);
        }
        text.lessons();
        Cautions.OHMS.forEach(caution -> text.lines.field("caution", caution));
        return text.lines.toString();
    }

    /** One line a cell: true state, plug, side, reading. */
    public static String line(BusTable table) {
        StringBuilder text = new StringBuilder();
        for (Row row : table.rows()) {
            for (int i = 0; i < table.spots().size(); i++) {
                BusTable.Spot spot = table.spots().get(i);
                text.append(table.bus())
                        .append(", ")
                        .append(table.state())
                        .append(", ")
                        .append(name(row))
                        .append("; ")
                        .append(spot.plug())
                        .append(' ')
                        .append(FaultWords.side(spot.side()))
                        .append(": ")
                        .append(ReadingWords.of(row.readings().get(i)))
                        .append('\n');
            }
        }
        return text.toString();
    }

    private static String name(Row row) {
        return row.fault().map(FaultWords::of).orElse("as listed");
    }

    private void block(Side side) {
        List<Integer> columns = new ArrayList<>();
        for (int i = 0; i < table.spots().size(); i++) {
            if (table.spots().get(i).side() == side) {
                columns.add(i);
            }
        }
        int first =
                table.rows().stream().mapToInt(row -> name(row).length()).max().orElse(0);
        for (int start = 0; start < columns.size(); ) {
            int end = start;
            int width = first;
            while (end < columns.size() && (end == start || width + 2 + width(columns.get(end)) <= WIDTH)) {
                width += 2 + width(columns.get(end++));
            }
            part(side, columns.subList(start, end), first);
            start = end;
        }
    }

    private void part(Side side, List<Integer> columns, int first) {
        StringBuilder head =
                new StringBuilder(padded(side == Side.MATED ? "all mated, at" : FaultWords.side(side), first));
        columns.forEach(
                c -> head.append("  ").append(padded(table.spots().get(c).plug(), width(c))));
        lines.line("").line(head.toString().stripTrailing());
        for (Row row : table.rows()) {
            StringBuilder line = new StringBuilder(padded(name(row), first));
            columns.forEach(c -> line.append("  ")
                    .append(padded(OhmsWords.cell(row.readings().get(c)), width(c))));
            lines.line(line.toString().stripTrailing());
        }
    }

    private int width(int column) {
        int width = table.spots().get(column).plug().length();
        for (Row row : table.rows()) {
            width = Math.max(width, OhmsWords.cell(row.readings().get(column)).length());
        }
        return width;
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    private void lessons() {
        lines.line("");
        lines.field("note", "only that one plug is pulled; with another one pulled the readings differ");
        lines.field(
                "note",
                "a bus that reads one terminator with all mated has one missing or a break: same number,"
                        + " different repair; a break silences everything beyond it");
        lines.field(
                "note",
                "two terminators' reading does not prove that they are at the ends: only the pulled end plug"
                        + " does");
        lines.field("note", "one leg open reads as both legs open");
    }
}
