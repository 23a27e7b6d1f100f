package ringout.draw.harness;

import java.util.List;
import java.util.Optional;
import ringout.draw.block.BlockDrawing;
import ringout.draw.map.MapDrawing;
import ringout.draw.matrix.MatrixDrawing;
import ringout.draw.paper.SheetSize;
import ringout.draw.site.SiteDrawing;
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

    /**
     * What is lost with each plug, lead and part.
     *
     * @param report findings counted
     * @param hash of the data, printed on every sheet
     */
    public static List<Drawn> loss(Circuit circuit, Report report, String hash) {
        return LossPicture.of(circuit, new SheetTitle(circuit, report, hash))
                .map(scene -> MatrixDrawing.of(scene, SheetSize.A3))
                .orElse(List.of());
    }

    /**
     * What comes of plugs in the sockets of others, as the review has tried it.
     *
     * @param report the review
     * @param hash of the data, printed on every sheet
     */
    public static List<Drawn> misplug(Circuit circuit, Report report, String hash) {
        return MisplugPicture.of(circuit, report, new SheetTitle(circuit, report, hash))
                .map(scene -> MatrixDrawing.of(scene, SheetSize.A4))
                .orElse(List.of());
    }

    /**
     * Units by zone and the leads between them; nothing when no sheet holds them.
     *
     * @param report findings to mark
     * @param hash of the data, printed on the sheet
     */
    public static Optional<Drawn> block(Circuit circuit, Report report, String hash) {
        return BlockDrawing.of(
                BlockPicture.of(circuit, report.headlines(), new SheetTitle(circuit, report, hash)), SheetSize.all());
    }

    /**
     * Units and routes at their places; nothing when no sheet holds them.
     *
     * @param report findings to mark
     * @param hash of the data, printed on the sheet
     */
    public static Optional<Drawn> place(Circuit circuit, Report report, String hash) {
        return SiteDrawing.of(
                SitePicture.of(circuit, report.headlines(), new SheetTitle(circuit, report, hash)),
                List.of(SheetSize.A3, SheetSize.A2, SheetSize.A1));
    }
}
