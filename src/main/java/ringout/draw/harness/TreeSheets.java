package ringout.draw.harness;

import java.util.Optional;
import ringout.draw.paper.SheetSize;
import ringout.draw.tree.TreeDrawing;
import ringout.draw.tree.TreeScene;
import ringout.finding.Report;
import ringout.graph.Circuit;

/** The power tree and the return diagram of an aircraft, not yet numbered. */
public final class TreeSheets {
    private TreeSheets() {}

    /**
     * The power tree; nothing when there is no operating point, supplies feed each other
     * in a ring, or no sheet holds it.
     *
     * @param report findings to mark
     * @param hash of the data, printed on the sheet
     */
    public static Optional<TreeDrawing.Fits> power(Circuit circuit, Report report, String hash) {
        return drawn(PowerPicture.of(circuit, report.headlines(), new SheetTitle(circuit, report, hash)));
    }

    /**
     * The return diagram; nothing when there is no operating point or no sheet holds it.
     *
     * @param report findings to mark
     * @param hash of the data, printed on the sheet
     */
    public static Optional<TreeDrawing.Fits> returns(Circuit circuit, Report report, String hash) {
        return drawn(ReturnPicture.of(circuit, report.headlines(), new SheetTitle(circuit, report, hash)));
    }

    private static Optional<TreeDrawing.Fits> drawn(Optional<TreeScene> scene) {
        return scene.filter(s -> !s.links().isEmpty() && !s.rings())
                .map(s -> TreeDrawing.of(s, SheetSize.all()))
                .flatMap(drawing -> drawing instanceof TreeDrawing.Fits fits ? Optional.of(fits) : Optional.empty());
    }
}
