package ringout.draw.harness;

import java.util.Optional;
import ringout.draw.map.MapDrawing;
import ringout.draw.paper.SheetSize;
import ringout.draw.style.Drawn;
import ringout.finding.Report;
import ringout.graph.Circuit;

/** Sheets that show the aircraft as a whole, not yet numbered. */
public final class SurveySheets {
    private SurveySheets() {}

    /**
     * The map of motors and control surfaces; nothing when nothing turns or steers, or no sheet holds it.
     *
     * @param report findings to mark
     * @param hash of the data, printed on the sheet
     */
    public static Optional<Drawn> map(Circuit circuit, Report report, String hash) {
        return MapPicture.of(circuit, report.headlines(), new SheetTitle(circuit, report, hash))
                .flatMap(scene -> MapDrawing.of(scene, SheetSize.all()));
    }
}
