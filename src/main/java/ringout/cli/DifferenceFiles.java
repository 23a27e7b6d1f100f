package ringout.cli;

import java.util.ArrayList;
import java.util.List;
import ringout.compare.fleet.Fleet;
import ringout.compare.fleet.Tail;
import ringout.draw.harness.DifferenceSheets;
import ringout.finding.Report;
import ringout.present.png.PngWriter;
import ringout.present.svg.SvgOutcome;

/** The difference drawings of a fleet as files: each as SVG and PNG, and only when the verifier passed it. */
final class DifferenceFiles {
    /** A drawn sheet by name. */
    private record Named(String name, SvgOutcome outcome) {}

    private final Fleet fleet;
    private final List<Named> sheets = new ArrayList<>();

    DifferenceFiles(Fleet fleet) {
        this.fleet = fleet;
    }

    /** Draws one tail against the base. */
    void draw(Tail tail, Report report) {
        String prefix = fleet.tails().size() > 1 ? (fleet.tails().indexOf(tail) + 1) + "-" : "";
        for (DifferenceSheets.Named sheet : DifferenceSheets.of(fleet.base(), tail, report)) {
            sheets.add(new Named(prefix + sheet.name(), SvgOutcome.of(sheet.sheet())));
        }
    }

    /** Adds the files of the sheets that passed. */
    void addTo(OutputFolder folder) {
        for (Named sheet : sheets) {
            if (sheet.outcome() instanceof SvgOutcome.Verified verified) {
                folder.with(sheet.name() + ".svg", verified.text());
                folder.with(sheet.name() + ".png", PngWriter.write(verified, PngWriter.SCREEN_DPI));
            }
        }
    }

    /** Sheets that were not written, and why. */
    List<String> refused() {
        List<String> lines = new ArrayList<>();
        for (Named sheet : sheets) {
            if (sheet.outcome() instanceof SvgOutcome.Refused refused) {
                lines.add("sheet " + sheet.name() + " is not legible and was not written: " + refused.flaws());
            }
        }
        return lines;
    }
}
