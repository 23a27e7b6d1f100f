package ringout.check.installation;

import java.util.List;
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

/**
 * A signal lead that runs along a lead of high current.
 *
 * <p>Why it matters: the current of a speed controller changes thousands of times a second, and every change is induced into the
 * loop of the signal and its return.
 *
 * <p>Condition: a signal lead and a lead of more than 20 A lie within 20 mm for more than 150 mm, and neither is twisted. How far they run
 * together is what one of the rows says of the other, or else what the points of both ways tell. The current is the higher one
 * the lead is listed with.
 *
 * <p>Does not see: leads whose rows and points say nothing of their neighbours; whether they cross at an angle, which a short stretch
 * shows by itself.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "M23",
        name = "parallel-run",
        severity = Severity.S4,
        since = "0.3",
        needs = {"length and distance of leads side by side", "current of the power lead", "whether they are twisted"})
public final class ParallelRun implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        List<Neighbours> pairs = Neighbours.all(at);
        Gaps gaps = new Gaps();
        for (Neighbours pair : pairs) {
            look(at, out, gaps, pair);
        }
        gaps.tell(
                out,
                datum -> datum.startsWith("current")
                        ? new Gaps.Way("clamp a meter around it", 5)
                        : new Gaps.Way("look at the leads with a rule", 2));
    }

    private static void look(Situation at, Outcomes out, Gaps gaps, Neighbours pair) {
        Threshold near = at.limit(InstallationThresholds.PARALLEL_GAP);
        Threshold along = at.limit(InstallationThresholds.PARALLEL_LENGTH);
        Lead signal = pair.signal();
        Lead power = pair.power();
        boolean twisted = signal.twisted().is(true) || power.twisted().is(true);
        boolean apart = pair.gapMm().isKnown() && pair.gapMm().or(0.0) > near.value();
        boolean brief = pair.lengthMm().isKnown() && pair.lengthMm().or(0.0) <= along.value();
        boolean weak = pair.currentKnown()
                && pair.amps()
                        <= at.limit(InstallationThresholds.PARALLEL_CURRENT).value();
        if (twisted || apart || brief || weak) {
            out.looked();
            return;
        }
        boolean whole = true;
        whole &= told(gaps, pair.gapMm().isMissing(), "distance to " + power.id(), signal);
        whole &= told(gaps, pair.lengthMm().isMissing(), "length beside " + power.id(), signal);
        whole &= told(gaps, !pair.currentKnown(), "current", power);
        whole &= told(gaps, signal.twisted().isMissing(), "twist", signal);
        if (whole) {
            out.finding(draft(at, pair, along));
        }
    }

    private static boolean told(Gaps gaps, boolean missing, String datum, Lead lead) {
        if (missing) {
            gaps.add(datum, lead.id());
        }
        return !missing;
    }

    private static Draft draft(Situation at, Neighbours pair, Threshold along) {
        Lead signal = pair.signal();
        Lead power = pair.power();
        String length = Figures.of(pair.lengthMm().or(0.0)) + " mm";
        return Draft.of(
                        Severity.S4,
                        "signal beside high current: " + signal.id() + " lies " + length + " along " + power.id()
                                + " of " + Figures.of(pair.amps()) + " A")
                .about(signal.id(), power.id())
                .at(signal)
                .seen(power)
                .input(pair.lengthMm())
                .input(pair.gapMm())
                .sum(
                        length + " within "
                                + Figures.of(at.limit(InstallationThresholds.PARALLEL_GAP)
                                        .value()) + " mm of " + power.id() + ", at most "
                                + Figures.of(along.value()) + " mm; " + pair.words() + "; neither is twisted")
                .judged(pair.lengthMm().or(0.0), along.value(), "mm", along.source())
                .why("every change of the current is induced into the signal and its return")
                .meter("oscilloscope at the receiver, throttle stepped, propellers off")
                .fix("twist " + signal.id() + " with its return, or lead it away from " + power.id()
                        + " and across at a right angle");
    }
}
