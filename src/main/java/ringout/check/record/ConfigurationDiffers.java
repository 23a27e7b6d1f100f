package ringout.check.record;

import java.util.List;
import java.util.Locale;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.model.AsBuilt;
import ringout.model.Datum;
import ringout.model.UnitKind;

/**
 * A controller whose parameters are not on record, or are not those on record.
 *
 * <p>Why it matters: port functions, scales and failsafes sit in the parameter file: with another one it is another aircraft.
 *
 * <p>Condition: something is on record of an aircraft with a flight controller, and its parameter file has no checksum on record; or
 * the checksum as read differs from it. It may differ when all parameters that differ are declared as counters or calibration
 * values.
 *
 * <p>Does not see: whether the parameters on record are right.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "X11",
        name = "configuration-record-missing-or-different",
        severity = Severity.S3,
        since = "0.3",
        needs = {"checksum of the parameter file on record", "checksum as read"})
public final class ConfigurationDiffers implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        AsBuilt record = at.aircraft().record();
        String controller = controller(at);
        if (controller.isEmpty() || !begun(record)) {
            return;
        }
        Datum<String> kept = record.parameterChecksum();
        Datum<String> read = record.parameterChecksumRead();
        if (kept instanceof Datum.NotAsked) {
            out.finding(missing(record, controller));
        } else if (kept.isMissing() || read.isMissing()) {
            String which = kept.isMissing() ? "checksum of the parameter file on record" : "checksum as read";
            out.cannotTell(which + " of " + controller, "read the parameters of " + controller, 5, controller);
        } else if (kept.or("").strip().equalsIgnoreCase(read.or("").strip()) || excluded(record)) {
            out.looked();
        } else {
            out.finding(differs(record, controller));
        }
    }

    private static String controller(Situation at) {
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            if (at.directory().type(unit).kind().is(UnitKind.CONTROLLER)) {
                return at.directory().name(unit);
            }
        }
        return "";
    }

    private static boolean begun(AsBuilt record) {
        return !(record.parameterChecksum() instanceof Datum.NotAsked)
                || !(record.parameterChecksumRead() instanceof Datum.NotAsked)
                || !record.readings().isEmpty()
                || !record.signatures().isEmpty()
                || record.steps().stream().anyMatch(step -> step.done().isKnown());
    }

    private static boolean excluded(AsBuilt record) {
        List<String> may = record.parametersExcluded().stream()
                .map(name -> name.strip().toUpperCase(Locale.ROOT))
                .toList();
        return !record.parametersDiffer().isEmpty()
                && record.parametersDiffer().stream()
                        .allMatch(name -> may.contains(name.strip().toUpperCase(Locale.ROOT)));
    }

    private static Draft missing(AsBuilt record, String controller) {
        return Draft.of(
                        Severity.S3,
                        "no configuration record: the parameter file of " + controller + " has no checksum")
                .about(controller, "parameters")
                .at(new Place(record.at(), controller, "record"))
                .cause(controller + "/parameters")
                .sum("checksums of the parameter file on record: 0")
                .why("with another parameter file it is another aircraft, and nobody can see it")
                .fix("read the parameters of " + controller + ", keep the file and write down its checksum");
    }

    private static Draft differs(AsBuilt record, String controller) {
        String what = record.parametersDiffer().isEmpty()
                ? ""
                : "; different: " + String.join(", ", record.parametersDiffer());
        return Draft.of(
                        Severity.S3,
                        "configuration differs: the parameters of " + controller + " are not those on record")
                .about(controller, "parameters")
                .at(new Place(record.at(), controller, "record"))
                .cause(controller + "/parameters")
                .sum("on record " + record.parameterChecksum().or("") + ", as read "
                        + record.parameterChecksumRead().or("") + what)
                .why("port functions, scales and failsafes sit in the parameter file")
                .fix("load the file on record into " + controller + ", or put the new one on record with its reason");
    }
}
