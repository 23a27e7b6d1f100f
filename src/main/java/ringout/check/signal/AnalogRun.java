package ringout.check.signal;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.graph.signal.NetRoles;
import ringout.graph.wire.PowerBeside;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.PinRole;
import ringout.model.Shield;

/**
 * A long analog signal lead without a shield, or beside a power pair.
 *
 * <p>Why it matters: what is picked up on the way adds to the signal: a current that is not there, stripes in the picture.
 *
 * <p>Condition: a lead with a sense or analog video conductor longer than 300 mm and without a shield, or with one that is grounded
 * nowhere: S4. S3, shielded or not, when it lies for more than 100 mm beside a lead of more than 20 A.
 *
 * <p>Does not see: runs of several short leads through a splice; how well a shield is made.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "S19",
        name = "analog-run",
        severity = Severity.S4,
        since = "0.1",
        needs = {"length of each analog lead", "shield of each analog lead"})
public final class AnalogRun implements Check {
    private static final long ANALOG =
            NetRoles.bits(PinRole.SENSE_OUT, PinRole.SENSE_IN, PinRole.VIDEO_OUT, PinRole.VIDEO_IN);

    @Override
    public void look(Situation at, Outcomes out) {
        Map<Integer, Lead> leads = new TreeMap<>();
        for (Wire wire : at.wiring().wires()) {
            if (analog(at, wire.fromPin()) || analog(at, wire.toPin())) {
                leads.put(wire.leadIndex(), wire.lead());
            }
        }
        Gaps gaps = new Gaps();
        leads.values().forEach(lead -> look(at, out, lead, gaps));
        gaps.tell(
                out,
                datum -> datum.equals("length")
                        ? new Gaps.Way("measure it along the lead", 2)
                        : new Gaps.Way("look at both ends of the lead", 1));
    }

    private static boolean analog(Situation at, int pin) {
        return at.wiring()
                .role(pin)
                .filter(role -> (NetRoles.bits(role) & ANALOG) != 0)
                .isPresent();
    }

    private static void look(Situation at, Outcomes out, Lead lead, Gaps gaps) {
        Threshold limit = at.limit(Thresholds.ANALOG_RUN);
        Datum<Double> length = lead.lengthMm();
        if (!length.isKnown()) {
            gaps.add("length", lead.id());
            return;
        }
        if (length.or(0.0) <= limit.value()) {
            out.looked();
            return;
        }
        Map<String, Double> power = PowerBeside.of(at.circuit())
                .of(
                        lead,
                        at.limit(Thresholds.PAIR_BESIDE).value(),
                        at.limit(Thresholds.PAIR_BESIDE_CURRENT).value());
        Datum<Shield> shield = lead.shield();
        boolean open = shield.is(Shield.NONE) || shield.is(Shield.FLOATING) || shield.isNotApplicable();
        if (!power.isEmpty() || open) {
            out.finding(draft(lead, limit, power, open));
        } else if (shield.isMissing()) {
            gaps.add("shield", lead.id());
        } else {
            out.looked();
        }
    }

    private static Draft draft(Lead lead, Threshold limit, Map<String, Double> power, boolean open) {
        String length = Figures.of(lead.lengthMm().or(0.0)) + " mm";
        String shield = lead.shield().is(Shield.FLOATING) ? "shield grounded nowhere" : open ? "no shield" : "shielded";
        List<String> amps = power.entrySet().stream()
                .map(entry -> entry.getKey() + " of " + Figures.of(entry.getValue()) + " A")
                .toList();
        String beside = amps.isEmpty() ? "" : ", beside " + String.join(", ", amps);
        return Draft.of(
                        amps.isEmpty() ? Severity.S4 : Severity.S3,
                        "analog run: " + lead.id() + ", " + length + ", " + shield + beside)
                .about(lead.id())
                .at(lead)
                .input(lead.lengthMm())
                .sum(length + " of analog signal, limit " + Figures.of(limit.value()) + " mm; " + shield + beside)
                .judged(lead.lengthMm().or(0.0), limit.value(), "mm", limit.source())
                .why("what is picked up on the way adds to the signal")
                .meter("signal at the receiving end with the motors off and running: the difference is noise")
                .fix(
                        amps.isEmpty()
                                ? "fit a shield grounded at one end to " + lead.id() + ", or shorten it"
                                : "lead " + lead.id() + " away from " + String.join(", ", power.keySet()));
    }
}
