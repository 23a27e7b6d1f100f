package ringout.check.installation;

import java.util.List;
import ringout.check.form.Assumed;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.InstallationThresholds;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Lead;
import ringout.model.Zone;

/**
 * A lead whose insulation stands too little for the zone it runs in.
 *
 * <p>Why it matters: insulation above its rating softens and creeps away under a tie, and hardens and cracks in time.
 *
 * <p>Condition: the temperature rating of the insulation is below the highest temperature of the zone plus 20 K. Without a zone in
 * its row a lead counts as running in the zones of the units it joins.
 *
 * <p>Does not see: what the lead's own current adds (P14, P15), hot spots within a zone.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "M21",
        name = "insulation-too-hot",
        severity = Severity.S3,
        since = "0.3",
        needs = {"temperature rating of the insulation", "highest temperature of each zone"})
public final class InsulationTooHot implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        LeadZones zones = new LeadZones(at);
        if (at.aircraft().airframe().zones().stream().noneMatch(zone -> Asked.is(zone.temperatureC()))) {
            return;
        }
        Gaps gaps = new Gaps();
        for (int row = 0; row < at.aircraft().leads().size(); row++) {
            look(at, out, gaps, row, zones);
        }
        gaps.tell(out, datum -> switch (datum) {
            case "temperature rating of the insulation" -> new Gaps.Way("read the print on the wire", 2);
            case "highest temperature" -> new Gaps.Way("lay a thermometer strip there for one flight", 30);
            default -> LeadZones.way(datum);
        });
    }

    private static void look(Situation at, Outcomes out, Gaps gaps, int row, LeadZones zones) {
        Lead lead = at.aircraft().leads().get(row);
        if (lead.insulationC().isNotApplicable()) {
            return;
        }
        List<Zone> all = zones.of(row, gaps);
        Zone hottest = null;
        for (Zone zone : all) {
            if (zone.temperatureC().isMissing()) {
                gaps.add("highest temperature", zone.name());
            } else if (zone.temperatureC().isKnown() && (hottest == null || degrees(zone) > degrees(hottest))) {
                hottest = zone;
            }
        }
        if (hottest == null) {
            return;
        }
        if (lead.insulationC().isMissing()) {
            gaps.add("temperature rating of the insulation", lead.id());
            return;
        }
        double least = degrees(hottest)
                + at.limit(InstallationThresholds.INSULATION_MARGIN).value();
        if (lead.insulationC().or(0.0) < least) {
            out.finding(draft(at, lead, hottest, least));
        } else {
            out.looked();
        }
    }

    private static double degrees(Zone zone) {
        return zone.temperatureC().or(0.0);
    }

    private static Draft draft(Situation at, Lead lead, Zone zone, double least) {
        Threshold margin = at.limit(InstallationThresholds.INSULATION_MARGIN);
        double rating = lead.insulationC().or(0.0);
        return Draft.of(
                        Severity.S3,
                        "insulation too hot: " + lead.id() + " is rated " + Figures.of(rating) + " degC in "
                                + zone.name() + " of " + Figures.of(degrees(zone)) + " degC")
                .about(lead.id())
                .at(lead)
                .sum(Figures.of(degrees(zone)) + " degC + " + Figures.of(margin.value()) + " K = " + Figures.of(least)
                        + " degC, rated " + Figures.of(rating) + " degC")
                .judged(rating, least, "degC", margin.source())
                .input(lead.insulationC())
                .input(zone.temperatureC())
                .onAssumption(
                        Assumed.turns(zone.temperatureC(), factor -> least - degrees(zone) * (1 - factor) - rating))
                .why("it softens and creeps away under a tie, and hardens and cracks in time")
                .meter("lay a thermometer strip beside " + lead.id() + " for one flight")
                .fix("make " + lead.id() + " of wire rated " + Figures.of(least) + " degC or more, or lead it around "
                        + zone.name());
    }
}
