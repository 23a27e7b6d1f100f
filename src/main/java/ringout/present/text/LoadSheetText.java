package ringout.present.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import ringout.sheet.BoardLine;
import ringout.sheet.Lasting;
import ringout.sheet.LoadRail;
import ringout.sheet.LoadSheet;
import ringout.sheet.Output;
import ringout.sheet.PackLine;
import ringout.sheet.Taker;

/** The sheet of electrical loads for a terminal. */
public final class LoadSheetText {
    private static final String NOT_TOLD = "?";
    private static final int NAME = 26;
    private static final int FIGURE = 10;

    private final Lines lines = new Lines();

    private LoadSheetText() {}

    /** {@return the sheet, lines ending in \n} */
    public static String of(LoadSheet sheet) {
        LoadSheetText text = new LoadSheetText();
        text.lines.line("electrical loads of " + sheet.aircraft() + ", " + sheet.state());
        text.lines.line("");
        text.packs(sheet);
        text.rails(sheet.rails());
        text.lasting(sheet.lasting());
        sheet.unfed().forEach(name -> text.lines.field("no power", name));
        sheet.open().forEach(words -> text.lines.field("open", words));
        text.notes();
        return text.lines.toString();
    }

    private void packs(LoadSheet sheet) {
        row("packs, loads at average", "A", "rest V", "poles V", "sag V");
        for (PackLine pack : sheet.packs()) {
            row("  " + pack.name(), amps(pack.amps()), volts(pack.openV()), volts(pack.volts()), volts(pack.sag()));
        }
        lines.line("");
        row("boards and inputs of packs", "V");
        for (BoardLine board : sheet.boards()) {
            row("  " + board.name(), volts(board.volts()));
        }
    }

    private void rails(List<LoadRail> rails) {
        for (LoadRail rail : rails) {
            lines.line("");
            String from = rail.fedBy().isEmpty() ? "" : ", fed by " + String.join(", ", rail.fedBy());
            lines.line((rail.packs() ? "packs " : "rail ") + rail.name() + from);
            row("  source", "V", "avg A", "rated A", "margin", "peak A", "rated A", "margin");
            rail.outputs().forEach(this::output);
            row("  takes", "V", "avg A", "", "", "peak A");
            rail.takers().forEach(this::taker);
            boolean shared = rail.takers().stream().anyMatch(Taker::shared);
            row(
                    shared ? "  sum, before sharing" : "  sum of what takes",
                    "",
                    amps(rail.averageA()),
                    "",
                    "",
                    amps(rail.peakA()));
        }
    }

    private void output(Output output) {
        row(
                "    " + output.name(),
                volts(output.volts()),
                amps(output.averageA()),
                amps(output.continuousA()),
                percent(output.averageMargin()),
                amps(output.peakA()),
                amps(output.peakRatingA()),
                percent(output.peakMargin()));
    }

    private void taker(Taker taker) {
        String mark = (taker.regulator() ? " (regulator)" : "") + (taker.shared() ? " (shared)" : "");
        row("    " + taker.name() + mark, volts(taker.volts()), amps(taker.averageA()), "", "", amps(taker.peakA()));
    }

    private void lasting(List<Lasting> all) {
        lines.line("");
        lines.line("endurance, all loads at their average all the time");
        for (Lasting lasting : all) {
            String words = lasting.endurance()
                    .map(e -> figure(e.minutes(), 1) + " min: 60 x " + figure(e.usableWh(), 1) + " Wh usable / "
                            + figure(e.consumersW(), 0) + " W; " + figure(e.minutesWithLosses(), 1)
                            + " min with the losses in packs and leads")
                    .orElse("cannot tell: capacity or nominal voltage of a pack is not given, or nothing is drawn");
            lines.line("  " + lasting.name() + ": " + words);
        }
        lines.line("");
    }

    private void notes() {
        lines.field(
                "note", "computed, not measured; peak is every load at its peak at once, which no event need ask for");
        lines.field(
                "note",
                "margin is what is left of the rating; a pack is rated at its discharge rate times its capacity, peak or not");
        lines.field("note", "shared: another source feeds it as well, and gives its part of the sum");
        lines.field("note", "ratings are times the derating of the unit where its row gives one");
    }

    private void row(String name, String... figures) {
        StringBuilder line = new StringBuilder(name);
        line.append(" ".repeat(Math.max(1, NAME - name.length())));
        List<String> cells = new ArrayList<>(List.of(figures));
        for (String cell : cells) {
            line.append(" ".repeat(Math.max(1, FIGURE - cell.length()))).append(cell);
        }
        lines.line(line.toString().stripTrailing());
    }

    static String volts(double volts) {
        return figure(volts, 2);
    }

    static String amps(double amps) {
        return figure(amps, 2);
    }

    private static String amps(OptionalDouble amps) {
        return amps.isPresent() ? amps(amps.getAsDouble()) : NOT_TOLD;
    }

    private static String percent(OptionalDouble percent) {
        return percent.isPresent() ? figure(percent.getAsDouble(), 0) + " %" : NOT_TOLD;
    }

    private static String figure(double value, int decimals) {
        String written = String.format(Locale.ROOT, "%." + decimals + "f", value);
        // Less than half of the last digit below zero is zero, without a sign.
        return written.matches("-0(\\.0*)?") ? written.substring(1) : written;
    }
}
