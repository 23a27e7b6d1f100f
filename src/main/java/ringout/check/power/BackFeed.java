package ringout.check.power;

import java.util.List;
import java.util.stream.Collectors;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Sound;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Rail;

/**
 * A regulator whose output is driven by another source while its own input is off.
 *
 * <p>Why it matters: current runs backwards through the regulator into its input: the regulator dies, or units that should be off are half
 * on.
 *
 * <p>Condition: in a state, a source that does not work is aboard, another working source lifts its output without a diode between, and
 * its output does not block backwards.
 *
 * <p>Does not see: how much current flows.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "P07",
        name = "back-feed",
        severity = Severity.S2,
        since = "0.1",
        needs = {"states", "whether an output blocks backwards"})
public final class BackFeed implements Sound {
    private static final String BLOCKING = "whether it blocks backwards, of the output";

    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Gaps gaps = new Gaps();
        for (PowerSource source : power.sources()) {
            boolean still = source.kind() != PowerSource.Kind.PACK
                    && at.circuit().aboard(source.unit())
                    && !power.works(source);
            List<PowerSource> driving = still ? power.feeding(source.plus()) : List.of();
            if (still && !driving.isEmpty()) {
                judge(at, out, gaps, source, driving);
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("look it up in the maker's data", 5));
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, PowerSource source, List<PowerSource> driving) {
        Datum<Boolean> blocks = source.rail().map(Rail::reverseBlocking).orElse(Datum.notAsked());
        Datum<Boolean> joined = source.rail().map(Rail::ored).orElse(Datum.notAsked());
        if (blocks.is(true) || joined.is(true)) {
            out.looked();
        } else if (blocks.isMissing()) {
            gaps.add(BLOCKING, source.name());
        } else {
            out.finding(draft(at, source, driving));
        }
    }

    private static Draft draft(Situation at, PowerSource source, List<PowerSource> driving) {
        PowerGraph power = PowerGraph.of(at.circuit());
        String ref = at.directory().name(source.unit());
        String names = driving.stream()
                .map(other -> Supplies.name(at, other))
                .distinct()
                .collect(Collectors.joining(" and "));
        Trail way = power.trail(driving.get(0).plus(), source.plus()).orElse(Trail.NONE);
        Draft draft = Draft.of(
                        Severity.S2,
                        "back-feed: " + names + " drives the output of " + source.name() + " while its input is off")
                .about(source.name())
                .about(driving.stream().map(PowerSource::name).toList())
                .path(way)
                .sum("input of " + ref + " off, " + names + " on its output, nothing blocks backwards")
                .why("current runs backwards through " + ref + ": it dies, or units that should be off are half on")
                .meter("in this state: volts at the input of " + ref + ", 0 V when right")
                .fix("put a diode behind " + ref + ", or do not join it with " + names + " in this state");
        for (Lead lead : Supplies.along(at, way)) {
            draft.at(lead);
        }
        return draft.seen(at.directory().unit(source.unit()));
    }
}
