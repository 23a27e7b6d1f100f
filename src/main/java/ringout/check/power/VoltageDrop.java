package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.check.form.Weighing;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Gap;
import ringout.graph.Wire;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.solve.power.PackCharge;
import ringout.solve.rating.AircraftChart;
import ringout.solve.rating.WireRules;

/**
 * Too much voltage lost in the leads of a load.
 *
 * <p>Why it matters: what is lost heats leads and contacts and is missing at the unit; a motor or pump turns slower, a camera
 * starts anew.
 *
 * <p>Formula: volts at the poles of the pack stack or regulator less volts at the load, solved over the whole network: leads
 * out and back, contacts, clamps, fuses, switches. Judged with all loads at their average, in each declared event, and with the
 * unit at its peak while all others draw their average. Limit 5 percent while it lasts, 8 percent for peaks of 10 s at
 * most; a peak without a stated duration is held as lasting. By the aircraft chart, in volts: 0.5 and 1 at 14 V, 1 and 2 at 28 V,
 * in proportion between.
 *
 * <p>Does not see: what the pack itself loses (P18), rises of contact resistance with age, temperature other than 20 degC
 * of the conductors.
 *
 * <p>Reference: common practice, no source; 28 V aircraft practice is 1 V lasting and 2 V for a time (AC 43.13-1B table 11-6).
 */
@CheckInfo(
        code = "P17",
        name = "voltage-drop",
        severity = Severity.S3,
        since = "0.2",
        solves = true,
        needs = {"length and wire size of each supply lead", "average and peak current of each load"})
public final class VoltageDrop implements Weighing {
    @Override
    public void look(Situation at, Outcomes out) {
        LoadRun.Finder runs = new LoadRun.Finder(at);
        Cases cases = new Cases(at, PackCharge.NOMINAL);
        Optional<Cases.Solved> average = cases.average();
        if (average.isEmpty()) {
            return;
        }
        List<Cases.Solved> always = new ArrayList<>(cases.events());
        always.add(0, average.get());
        List<LoadRun> all = new ArrayList<>();
        for (PlacedLoad load : PowerGraph.of(at.circuit()).loads()) {
            runs.of(load).ifPresent(all::add);
        }
        Map<LoadRun, Cases.Solved> peaks = cases.inTrouble(all, (run, one) -> over(at, run, one));
        Gaps gaps = new Gaps();
        for (LoadRun run : all) {
            run.peakMissing(at).ifPresent(gap -> gaps.add(List.of(gap)));
            List<Cases.Solved> judged = new ArrayList<>(always);
            Optional.ofNullable(peaks.get(run)).ifPresent(judged::add);
            judge(at, out, gaps, run, judged);
        }
        gaps.tell(out, PowerData::way);
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, LoadRun run, List<Cases.Solved> cases) {
        Optional<Cases.Solved> worst = Optional.empty();
        for (Cases.Solved one : cases) {
            boolean worse = worst.isEmpty()
                    || part(run, one) / limit(at, run, one).value()
                            > part(run, worst.get())
                                    / limit(at, run, worst.get()).value();
            worst = worse ? Optional.of(one) : worst;
        }
        Cases.Solved one = worst.orElseThrow();
        List<Gap> assumed = run.assumed(at, one.flow());
        if (over(at, run, one) && hangsOnContacts(at, run, one)) {
            gaps.add(run.openContacts(at, one.flow()).gaps());
        } else if (over(at, run, one)) {
            out.finding(draft(at, run, one).onAssumption(!assumed.isEmpty()));
        } else if (assumed.isEmpty()) {
            out.looked();
        } else {
            gaps.add(assumed);
        }
    }

    /** Whether contacts of which nobody knows the resistance make the difference. */
    private static boolean hangsOnContacts(Situation at, LoadRun run, Cases.Solved one) {
        double sure = run.drop(one.flow()).orElse(0)
                - run.openContacts(at, one.flow()).volts();
        return 100 * sure <= limit(at, run, one).value() * run.poles(one.flow()).orElse(0);
    }

    /** Of the aircraft chart the volts of its table, else the project's limits in percent. */
    private static Threshold limit(Situation at, LoadRun run, Cases.Solved one) {
        double poles = run.poles(one.flow()).orElse(0);
        if (WireRules.of(at.aircraft()) instanceof AircraftChart chart && poles > 0) {
            double percent = 100 * chart.allowedDropV(poles, one.lasting()) / poles;
            return new Threshold("drop.chart", percent, "%", chart.title() + ", AC 43.13-1B table 11-6");
        }
        return at.limit(one.lasting() ? Thresholds.DROP_LASTING : Thresholds.DROP_SECONDS);
    }

    /** Percent of the volts at the poles that are lost. */
    private static double part(LoadRun run, Cases.Solved one) {
        OptionalDouble drop = run.drop(one.flow());
        OptionalDouble poles = run.poles(one.flow());
        return drop.isPresent() && poles.getAsDouble() > 0 ? 100 * drop.getAsDouble() / poles.getAsDouble() : 0;
    }

    private static boolean over(Situation at, LoadRun run, Cases.Solved one) {
        return part(run, one) > limit(at, run, one).value();
    }

    private static Draft draft(Situation at, LoadRun run, Cases.Solved one) {
        String name = run.name(at);
        Threshold limit = limit(at, run, one);
        double drop = run.drop(one.flow()).orElse(0);
        double poles = run.poles(one.flow()).orElse(0);
        Optional<Wire> worst = run.worst(at, one.flow());
        String lead = worst.map(wire -> wire.lead().id()).orElse("the leads");
        Draft draft = Draft.of(
                        Severity.S3,
                        "voltage drop: " + name + " loses " + Figures.of(drop) + " V of " + Figures.of(poles) + " V, "
                                + Figures.of(part(run, one)) + " %, most of it in " + lead)
                .about(name)
                .path(run.trail(at))
                .sum(sum(at, run, one) + " = " + Figures.of(drop) + " V, " + Figures.of(part(run, one)) + " % of "
                        + Figures.of(poles) + " V, limit " + Figures.of(limit.value()) + " %, " + one.words()
                        + (one.lasting() ? "" : ", some seconds"))
                .judged(part(run, one), limit.value(), "%", limit.source())
                .why("the leads of " + name + " warm up and " + name + " gets less than it was chosen for")
                .meter("power on, " + one.words() + ": "
                        + Figures.of(run.volts(one.flow()).orElse(0)) + " V at " + name + ", " + Figures.of(poles)
                        + " V at " + run.source().name())
                .fix("thicker or shorter " + lead + " for " + name)
                .cause(name + "/drop");
        run.losing(at, one.flow()).forEach(draft::cause);
        worst.ifPresent(wire -> {
            draft.at(wire.lead());
            draft.input(wire.awg());
            draft.input(wire.lengthMm());
        });
        draft.seen(at.directory().unit(run.load().unit()));
        return draft;
    }

    /** The leads that lose most, each with its volts, and the rest. */
    private static String sum(Situation at, LoadRun run, Cases.Solved one) {
        List<Wire> wires = new ArrayList<>(run.wires(at));
        wires.sort((a, b) -> Double.compare(LoadRun.lost(one.flow(), b), LoadRun.lost(one.flow(), a)));
        List<String> terms = new ArrayList<>();
        double rest = run.drop(one.flow()).orElse(0);
        for (Wire wire : wires.subList(0, Math.min(4, wires.size()))) {
            double lost = LoadRun.lost(one.flow(), wire);
            rest -= lost;
            terms.add(wire.lead().id() + " "
                    + Figures.of(Math.abs(one.flow().amps(wire))) + " A x "
                    + Figures.of(
                            1000 * lost / Math.max(1e-9, Math.abs(one.flow().amps(wire)))) + " mohm");
        }
        terms.add("contacts and the rest " + Figures.of(rest) + " V");
        return String.join(" + ", terms);
    }
}
