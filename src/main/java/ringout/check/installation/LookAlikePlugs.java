package ringout.check.installation;

import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Trials;
import ringout.check.form.Trying;
import ringout.check.misplug.LookAlikes;
import ringout.check.misplug.MisplugTale;
import ringout.finding.Severity;

/**
 * Plugs that fit and reach the socket of another.
 *
 * <p>Why it matters: a good list can be built wrongly: two plugs that look alike are exchanged one day, at the latest in the field.
 *
 * <p>Condition: two plugs of one family, key, number of positions and kind of contacts, in one zone or not more than 500 mm apart, each
 * with a lead long enough to the socket of the other; or one of them and a free socket. Each is exchanged on a copy of the list, all
 * checks of topology, addresses, power and signals look, and the worst they find counts: S3 for what would be S1, S4 for S2, else
 * S5. One of each kind is tried for all of its kind, the one that concerns most of what flight depends on.
 *
 * <p>Does not see: more than two plugs mixed up, a lead turned end for end, a plug forced past its key, wrong plugs in states other than
 * the first that is flown; heating and voltage drop, unless a supply of another voltage is met.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "M07",
        name = "look-alike-plugs",
        severity = Severity.S3,
        since = "0.3",
        needs = {"family and key of plugs", "position and zone of units", "lengths of leads"})
public final class LookAlikePlugs implements Trying {
    private static final MisplugTale TALE = new MisplugTale(
            "look-alike plugs", "different keys, labels at plug and socket, or a lead too short for the other socket");

    @Override
    public void tryOut(Situation at, Trials trials, Outcomes out) {
        Wrongly.tryOut(at, trials, out, TALE, gaps -> LookAlikes.all(at, gaps));
    }
}
