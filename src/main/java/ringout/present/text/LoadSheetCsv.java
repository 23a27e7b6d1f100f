package ringout.present.text;

import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ringout.model.shape.Scalars;
import ringout.sheet.BoardLine;
import ringout.sheet.Lasting;
import ringout.sheet.LoadRail;
import ringout.sheet.LoadSheet;
import ringout.sheet.Output;
import ringout.sheet.PackLine;
import ringout.sheet.Taker;

/**
 * The sheet of electrical loads as comma-separated values (RFC 4180, lines ending in \n), one kind of line for each kind of
 * thing. A figure that cannot be told is empty.
 */
public final class LoadSheetCsv {
    private static final String HEAD =
            "kind,rail,name,volts,average_a,continuous_a,average_margin_percent,peak_a,peak_rating_a,peak_margin_percent,"
                    + "rest_v,sag_v,minutes,minutes_with_losses,remark\n";
    private static final double THOUSAND = 1000;

    private final StringBuilder text = new StringBuilder(HEAD);

    private LoadSheetCsv() {}

    /** {@return the sheet} */
    public static String of(LoadSheet sheet) {
        LoadSheetCsv csv = new LoadSheetCsv();
        sheet.packs().forEach(csv::pack);
        sheet.boards().forEach(csv::board);
        sheet.rails().forEach(csv::rail);
        sheet.lasting().forEach(csv::lasting);
        sheet.unfed().forEach(name -> csv.line("no power", "", name, "", "", "", "", "", "", "", "", "", "", "", ""));
        sheet.open().forEach(words -> csv.line("open", "", "", "", "", "", "", "", "", "", "", "", "", "", words));
        return csv.text.toString();
    }

    private void pack(PackLine pack) {
        String volts = figure(pack.volts());
        String amps = figure(pack.amps());
        String rest = figure(pack.openV());
        line("pack", "", pack.name(), volts, amps, "", "", "", "", "", rest, figure(pack.sag()), "", "", "");
    }

    private void board(BoardLine board) {
        line("board", "", board.name(), figure(board.volts()), "", "", "", "", "", "", "", "", "", "", "");
    }

    private void rail(LoadRail rail) {
        rail.outputs().forEach(output -> output(rail, output));
        rail.takers().forEach(taker -> taker(rail, taker));
    }

    private void output(LoadRail rail, Output output) {
        line(
                "source",
                rail.name(),
                output.name(),
                figure(output.volts()),
                figure(output.averageA()),
                figure(output.continuousA()),
                figure(output.averageMargin()),
                figure(output.peakA()),
                figure(output.peakRatingA()),
                figure(output.peakMargin()),
                "",
                "",
                "",
                "",
                rail.fedBy().isEmpty() ? "" : "fed by " + String.join(" ", rail.fedBy()));
    }

    private void taker(LoadRail rail, Taker taker) {
        line(
                taker.regulator() ? "regulator input" : "load",
                rail.name(),
                taker.name(),
                figure(taker.volts()),
                figure(taker.averageA()),
                "",
                "",
                figure(taker.peakA()),
                "",
                "",
                "",
                "",
                "",
                "",
                taker.shared() ? "shared" : "");
    }

    private void lasting(Lasting lasting) {
        String minutes = lasting.endurance().map(e -> figure(e.minutes())).orElse("");
        String losses =
                lasting.endurance().map(e -> figure(e.minutesWithLosses())).orElse("");
        line("endurance", "", lasting.name(), "", "", "", "", "", "", "", "", "", minutes, losses, "");
    }

    private static String figure(double value) {
        return Scalars.number(Math.rint(value * THOUSAND) / THOUSAND + 0.0);
    }

    private static String figure(OptionalDouble value) {
        return value.isPresent() ? figure(value.getAsDouble()) : "";
    }

    private void line(String... cells) {
        text.append(Stream.of(cells).map(LoadSheetCsv::quoted).collect(Collectors.joining(",")))
                .append('\n');
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
