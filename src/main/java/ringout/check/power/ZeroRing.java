package ringout.check.power;

import java.util.List;
import java.util.Optional;
import ringout.check.form.Figures;
import ringout.check.form.Threshold;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Lead;
import ringout.model.LeadKind;

/**
 * A loop of 0V wires whose way is known.
 *
 * @param leads its leads in order round the loop
 * @param units its units in the same order
 * @param areaCm2 area it encloses in cm2
 * @param near the power lead it shares the most current with, if any
 */
record ZeroRing(List<Lead> leads, List<String> units, double areaCm2, Optional<Near> near) {
    /**
     * A stretch along a lead of high current.
     *
     * @param lead the lead of the loop
     * @param power the lead beside it
     * @param amps its current in A
     * @param mm length of the stretch
     * @param gapMm distance between them
     */
    record Near(Lead lead, String power, double amps, double mm, double gapMm) {}

    /** What the induced voltage goes by: area times the current beside it, or the area where there is none. */
    double weight() {
        return areaCm2 * near.map(Near::amps).orElse(1.0);
    }

    Draft draft(Threshold area, Threshold beside) {
        String names = String.join(", ", leads.stream().map(Lead::id).toList());
        boolean analog = leads.stream()
                .anyMatch(lead -> lead.kind().is(LeadKind.VIDEO) || lead.kind().is(LeadKind.SENSE));
        boolean wide = areaCm2 > area.value();
        String size = Figures.of(areaCm2) + " cm2";
        String along = near.map(one -> one.lead.id() + " lies " + Figures.of(one.mm) + " mm along " + one.power + ", "
                        + Figures.of(one.amps) + " A, " + Figures.of(one.gapMm) + " mm away")
                .orElse("");
        Draft draft = Draft.of(
                        analog ? Severity.S3 : Severity.S4,
                        "0V loop through " + names + ": " + (wide ? size : "") + (wide && near.isPresent() ? ", " : "")
                                + along)
                .about(leads.stream().map(Lead::id).sorted().toList())
                .sum("from " + String.join(" to ", units) + " and back: " + size + ", at most "
                        + Figures.of(area.value()) + " cm2" + (along.isEmpty() ? "" : "; " + along))
                .why("changing current nearby drives a voltage round the loop, and every 0V in it moves")
                .fix("lay " + names + " close together"
                        + near.map(one -> ", and " + one.lead.id() + " away from " + one.power)
                                .orElse(""));
        if (wide) {
            draft.judged(areaCm2, area.value(), "cm2", area.source());
        } else {
            draft.judged(near.map(Near::mm).orElse(0.0), beside.value(), "mm", beside.source());
        }
        leads.forEach(draft::at);
        return draft;
    }
}
