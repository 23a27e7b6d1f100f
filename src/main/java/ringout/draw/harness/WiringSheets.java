package ringout.draw.harness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.draw.paper.SheetSize;
import ringout.draw.scene.SheetInfo;
import ringout.draw.wiring.WiringDrawing;
import ringout.finding.Report;
import ringout.graph.Circuit;

/**
 * The pin-to-pin wiring diagram of an aircraft, cut into sheets by system. Every conductor stands on exactly one sheet, with
 * both its units. A portion that does not fit on A3 at full size is cut again, never shrunk; A2 is the last resort for a
 * single row.
 */
public final class WiringSheets {
    private final Circuit circuit;
    private final Report report;
    private final String hash;

    private WiringSheets(Circuit circuit, Report report, String hash) {
        this.circuit = circuit;
        this.report = report;
        this.hash = hash;
    }

    /**
     * The sheets of an aircraft in one state.
     *
     * @param report findings to mark
     * @param hash of the data, printed on every sheet
     */
    public static List<WiringDrawing.Fits> of(Circuit circuit, Report report, String hash) {
        return new WiringSheets(circuit, report, hash).draw();
    }

    private List<WiringDrawing.Fits> draw() {
        List<Portion> fitting = new ArrayList<>();
        for (Portion portion : Cut.of(circuit)) {
            fit(portion, fitting);
        }
        List<WiringDrawing.Fits> drawn = new ArrayList<>();
        for (int i = 0; i < fitting.size(); i++) {
            drawing(fitting.get(i), i + 1, fitting.size()).ifPresent(drawn::add);
        }
        return drawn;
    }

    private void fit(Portion portion, List<Portion> fitting) {
        if (portion.leads().size() == 1 || drawing(portion, 1, 1).isPresent()) {
            fitting.add(portion);
            return;
        }
        int half = portion.leads().size() / 2;
        fit(new Portion(portion.title(), portion.leads().subList(0, half)), fitting);
        fit(
                new Portion(
                        portion.title(),
                        portion.leads().subList(half, portion.leads().size())),
                fitting);
    }

    private Optional<WiringDrawing.Fits> drawing(Portion portion, int sheet, int sheets) {
        SheetScene scene = new SheetScene(circuit, portion, report.headlines());
        int open = new SheetScene(circuit, portion, report.headlines()).openFindings();
        SheetInfo info =
                new SheetTitle(circuit, report, hash, sheet, sheets).info(portion.title(), "wiring diagram", open);
        List<SheetSize> sizes = portion.leads().size() == 1 ? SheetSize.all() : SheetSize.workshop();
        return WiringDrawing.of(scene.scene(info), sizes) instanceof WiringDrawing.Fits fits
                ? Optional.of(fits)
                : Optional.empty();
    }
}
