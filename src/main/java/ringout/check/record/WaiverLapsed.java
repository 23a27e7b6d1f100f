package ringout.check.record;

import java.util.List;
import ringout.check.form.AfterWaivers;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.finding.Draft;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.LapsedWaiver;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.model.Waiver;

/**
 * A waiver that does not hold any more, so that its finding is open again.
 *
 * <p>Why it matters: everybody believes the matter settled.
 *
 * <p>Condition: a waiver names a finding that is there and was refused, has ended by day or flight hours, rests on a row that has
 * changed, or its value got worse by more than 10 %. It stands under the finding it no longer covers and is as severe. S1
 * findings, and those of P01, P02, P03, P09, T03, S10 and S11, cannot be waived.
 *
 * <p>Does not see: whether the compensating measure is kept.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(code = "X10", name = "waiver-lapsed", severity = Severity.S3, since = "0.3")
public final class WaiverLapsed implements AfterWaivers {
    @Override
    public void waived(List<Waiver> waivers, List<LapsedWaiver> lapsed, List<Headline> open, Outcomes out) {
        if (!waivers.isEmpty()) {
            out.looked();
        }
        for (LapsedWaiver one : lapsed) {
            open.stream()
                    .map(Headline::finding)
                    .filter(finding -> finding.id().equals(one.finding()))
                    .findFirst()
                    .ifPresent(finding -> out.finding(draft(finding, one, waivers)));
        }
    }

    private static Draft draft(Finding finding, LapsedWaiver lapsed, List<Waiver> waivers) {
        Draft draft = Draft.of(finding.severity(), "waiver lapsed: " + finding.id() + " is open again, " + lapsed.why())
                .about(finding.id())
                .sum(lapsed.why())
                .why("everybody believes the matter settled")
                .fix("mend what " + finding.id() + " says, or write a new waiver with reason, names and end");
        waivers.stream()
                .filter(waiver -> waiver.finding().equals(lapsed.finding()))
                .forEach(waiver -> draft.at(new Place(waiver.at(), waiver.finding(), "waiver of " + waiver.finding())));
        return draft;
    }
}
