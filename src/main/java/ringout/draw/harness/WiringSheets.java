package ringout.draw.harness;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import ringout.draw.paper.SheetSize;
import ringout.draw.scene.Earlier;
import ringout.draw.scene.WiringScene;
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
    private final SheetTitle title;
    private final Earlier earlier;

    private WiringSheets(Circuit circuit, Report report, String hash, Earlier earlier) {
        this.earlier = earlier;
        this.circuit = circuit;
        this.report = report;
        this.title = new SheetTitle(circuit, report, hash);
    }

    /**
     * The sheets of an aircraft in one state, not yet numbered.
     *
     * @param report findings to mark
     * @param hash of the data, printed on every sheet
     */
    public static List<WiringDrawing.Fits> of(Circuit circuit, Report report, String hash) {
        return of(circuit, report, hash, Earlier.NONE);
    }

    /** The same, held against an earlier output: rows keep their sheets, units and plugs their places. */
    public static List<WiringDrawing.Fits> of(Circuit circuit, Report report, String hash, Earlier earlier) {
        List<Portion> portions = new Kept(circuit.wiring(), earlier).portions(Cut.of(circuit));
        WiringSheets sheets = new WiringSheets(circuit, report, hash, earlier);
        return fit(portions, sheets::scene);
    }

    /**
     * The sheets of some portions, in their order. Scenes are built one after the other, because a circuit is not to be asked
     * by two at once; the search for places knows a scene only, and runs side by side.
     */
    static List<WiringDrawing.Fits> fit(List<Portion> portions, Function<Portion, WiringScene> scene) {
        List<WiringScene> scenes = portions.stream().map(scene).toList();
        List<WiringDrawing> drawings = IntStream.range(0, scenes.size())
                .parallel()
                .mapToObj(i -> WiringDrawing.of(scenes.get(i), sizes(portions.get(i))))
                .toList();
        List<WiringDrawing.Fits> sheets = new ArrayList<>();
        for (int i = 0; i < drawings.size(); i++) {
            if (drawings.get(i) instanceof WiringDrawing.Fits fits) {
                sheets.add(fits);
            } else if (portions.get(i).leads().size() > 1) {
                sheets.addAll(fit(portions.get(i).halves(), scene));
            }
        }
        return sheets;
    }

    private static List<SheetSize> sizes(Portion portion) {
        return portion.leads().size() == 1 ? SheetSize.all() : SheetSize.workshop();
    }

    private WiringScene scene(Portion portion) {
        int open = new SheetScene(circuit, portion, report.headlines()).openFindings();
        return new SheetScene(circuit, portion, report.headlines())
                .scene(title.info(portion.title(), "wiring diagram", open), earlier);
    }
}
