package ringout.draw.harness;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.bus.BusDrawing;
import ringout.draw.paper.SheetSize;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;

/** The bus diagrams of an aircraft, one a piece of bus, to scale of length, with the expected readings at every plug. */
public final class BusSheets {
    /**
     * One bus diagram.
     *
     * @param name of the bus, for a file
     * @param drawing the sheet
     */
    public record Named(String name, BusDrawing.Fits drawing) {}

    private BusSheets() {}

    /**
     * The diagrams of every bus with a lead, not yet numbered.
     *
     * @param report findings to mark
     * @param hash of the data, printed on every sheet
     */
    public static List<Named> of(Circuit circuit, Report report, String hash) {
        Buses buses = Buses.of(circuit);
        List<BusSegment> wired = buses.segments().stream()
                .filter(segment -> !segment.links().isEmpty())
                .toList();
        SheetTitle title = new SheetTitle(circuit, report, hash);
        List<Named> sheets = new ArrayList<>();
        for (int i = 0; i < wired.size(); i++) {
            BusPicture picture = new BusPicture(circuit, wired.get(i), report.headlines());
            if (BusDrawing.of(picture.scene(title), SheetSize.all()) instanceof BusDrawing.Fits fits) {
                sheets.add(new Named(picture.fileName(i + 1), fits));
            }
        }
        return sheets;
    }
}
