package ringout.check.installation;

import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Zone;

/**
 * A plug in a wet zone without a seal, or with an open hole.
 *
 * <p>Why it matters: spray creeps along a wire into the plug; between a supply and 0V it grows green in days, between the legs of a bus
 * it makes faults that come with the weather.
 *
 * <p>Condition: the unit sits in a zone that sees spray or rain, a conductor ends at the plug, and the plug is not sealed when mated; or
 * it is sealed and has a contact without a conductor that is neither declared spare nor of the kind none.
 *
 * <p>Does not see: drip loops, the state of the seal, plugs in mid-air and joints.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "M20",
        name = "unsealed-plug",
        severity = Severity.S3,
        since = "0.3",
        needs = {"seal of each plug in a wet zone", "which zones are wet"})
public final class UnsealedPlug implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        if (at.aircraft().airframe().zones().stream().noneMatch(zone -> Asked.is(zone.wet()))) {
            return;
        }
        LeadZones zones = new LeadZones(at);
        Gaps gaps = new Gaps();
        int last = -1;
        boolean wet = false;
        for (PlugInUse plug : PlugInUse.all(at)) {
            if (plug.unit() != last) {
                last = plug.unit();
                wet = wet(zones, gaps, last);
            }
            if (wet) {
                look(at, out, gaps, plug);
            }
        }
        gaps.tell(out, datum -> switch (datum) {
            case "seal" -> new Gaps.Way("look at the plug", 1);
            case "whether it sees spray or rain" -> new Gaps.Way("look there after a flight", 1);
            case "spare contacts" -> new Gaps.Way("ask whoever drew the plug", 2);
            default -> LeadZones.way(datum);
        });
    }

    private static boolean wet(LeadZones zones, Gaps gaps, int unit) {
        boolean wet = false;
        for (Zone zone : zones.ofUnit(unit, gaps)) {
            wet |= zone.wet().is(true);
            if (zone.wet().isMissing()) {
                gaps.add("whether it sees spray or rain", zone.name());
            }
        }
        return wet;
    }

    private static void look(Situation at, Outcomes out, Gaps gaps, PlugInUse use) {
        if (use.plug().sealed().isNotApplicable()) {
            return;
        }
        if (use.plug().sealed().isMissing()) {
            gaps.add("seal", use.name(at));
            return;
        }
        List<String> open = use.open(at);
        if (!use.plug().sealed().is(true)) {
            out.finding(
                    draft(at, use, "no seal", "use a sealed plug at " + use.name(at) + ", or move it out of the wet"));
        } else if (!open.isEmpty()) {
            String pins = String.join(", ", open);
            out.finding(draft(
                            at,
                            use,
                            "open hole " + pins,
                            "close " + use.name(at) + " " + pins
                                    + " with a blind plug or a short wire, and declare it spare")
                    .explains("M11"));
        } else {
            out.looked();
        }
        if (!use.doubtful(at).isEmpty()) {
            gaps.add("spare contacts", use.name(at));
        }
    }

    private static Draft draft(Situation at, PlugInUse use, String what, String fix) {
        String name = use.name(at);
        String zone = at.directory().unit(use.unit()).zone().or("");
        return Draft.of(Severity.S3, "plug in the wet: " + name + " in " + zone + ", " + what)
                .about(name)
                .cause(name + "/unused")
                .seen(at.directory().unit(use.unit()))
                .sum(zone + " sees spray or rain; " + name + ": " + what)
                .source("common practice, no source")
                .why("spray creeps along the wire into the plug, and the fault comes with the weather")
                .meter("plug pulled after a wet flight: look for green, and measure supply to 0V, over 1 Mohm")
                .fix(fix);
    }
}
