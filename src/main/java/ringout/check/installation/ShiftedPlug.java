package ringout.check.installation;

import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Trials;
import ringout.check.form.Trying;
import ringout.check.misplug.MisplugTale;
import ringout.check.misplug.Shifts;
import ringout.finding.Severity;

/**
 * A plug that goes on an open header beside its place, or turned round.
 *
 * <p>Why it matters: on a bare row of pins nothing stops it, and one contact further a supply meets a signal or 0V.
 *
 * <p>Condition: the header has no shroud and no key. The plug is shifted by one contact either way, by more where contacts stay free
 * behind its last conductor, and turned round, each on a copy of the list; all checks of topology, addresses, power and signals look,
 * and the worst they find counts: S3 for what would be S1, S4 for S2, else S5. One of each kind is tried for all of its kind.
 *
 * <p>Does not see: a plug on the neighbouring header, unless it is its whole place (M07); single round contacts, which are plugs of
 * their own; rows of the list that name single contacts; both ends of a lead plugged wrongly.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "M08",
        name = "shifted-plug",
        severity = Severity.S3,
        since = "0.3",
        needs = {"shroud or key of headers"})
public final class ShiftedPlug implements Trying {
    private static final MisplugTale TALE = new MisplugTale(
            "plug on an open header", "a shroud, a key pin with its contact blocked, or a mark for pin 1");

    @Override
    public void tryOut(Situation at, Trials trials, Outcomes out) {
        Wrongly.tryOut(at, trials, out, TALE, gaps -> Shifts.all(at, gaps));
    }
}
