package ringout.draw.harness;

import ringout.draw.scene.SheetInfo;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.model.Aircraft;

/**
 * What the title blocks of a set have in common.
 *
 * @param circuit state drawn
 * @param report findings and waivers counted
 * @param hash of the data
 */
record SheetTitle(Circuit circuit, Report report, String hash) {
    /** The title block of one sheet, not yet numbered. */
    SheetInfo info(String title, String documentType, int openFindings) {
        Aircraft aircraft = circuit.wiring().aircraft();
        String name = aircraft.designation()
                .known()
                .map(code -> code + " " + aircraft.name())
                .orElse(aircraft.name());
        return SheetInfo.of(title, documentType, name, circuit.state().name())
                .ofTail(aircraft.tail().or(""), revision(aircraft), hash)
                .counting(openFindings, report.waived().size());
    }

    private static String revision(Aircraft aircraft) {
        String tail =
                aircraft.tailRevision().known().map(number -> "." + number).orElse("");
        return aircraft.typeRevision().or("") + tail;
    }
}
