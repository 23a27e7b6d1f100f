package ringout.check.topology;

import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Site;
import ringout.model.Datum;
import ringout.model.Lead;

/**
 * A lead with both ends at one unit.
 *
 * <p>Why it matters: mostly a slip of the pen, and then the unit it was meant for is not connected.
 *
 * <p>Condition: both ends of a row name the same unit or joint, and the row is not marked as a jumper (loop-back, safety plug).
 *
 * <p>Does not see: a jumper at the wrong pins (T05).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "T20",
        name = "unit-looped",
        severity = Severity.S3,
        since = "0.1",
        needs = {"jumper mark of a lead with both ends at one unit"})
public final class UnitLooped implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        List<Lead> leads = at.aircraft().leads();
        for (int i = 0; i < leads.size(); i++) {
            int from = unit(at.wiring().from(i));
            int to = unit(at.wiring().to(i));
            if (from >= 0 && from == to) {
                look(at, out, leads.get(i), from);
            } else if (from >= 0 && to >= 0) {
                out.looked();
            }
        }
    }

    private static int unit(Site site) {
        if (site instanceof Site.OnPin pin) {
            return pin.unit();
        }
        return site instanceof Site.OnPlug plug ? plug.unit() : -1;
    }

    private static void look(Situation at, Outcomes out, Lead lead, int unit) {
        if (lead.jumper().is(true)) {
            out.looked();
        } else if (lead.jumper() instanceof Datum.Unknown) {
            out.cannotTell(
                    "whether " + lead.id() + " is a jumper", "ask who drew it, or look at its label", 2, lead.id());
        } else {
            String name = at.directory().name(unit);
            out.finding(Draft.of(
                            Severity.S3,
                            "unit looped to itself: " + lead.id() + " runs from " + lead.from() + " to " + lead.to())
                    .about(lead.id(), name)
                    .at(lead)
                    .sum("both ends at " + name)
                    .why("a slip of the pen leaves the unit it was meant for unconnected")
                    .fix("correct one end of " + lead.id() + ", or mark it as a jumper")
                    .explains("T19"));
        }
    }
}
