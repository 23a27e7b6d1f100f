package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Weighing;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Gap;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.model.Datum;
import ringout.model.Event;
import ringout.solve.power.PackCharge;
import ringout.solve.power.PackFigure;
import ringout.solve.power.PowerFlow;

/**
 * A unit that gets too little voltage when the pack is empty and everything draws.
 *
 * <p>Why it matters: at rest the voltage looks fine; at the end of a flight, with the motors pulling, the pack sags, the leads
 * take their part, a regulator runs out of headroom and the unit starts anew in the air.
 *
 * <p>Formula: volts at the unit with empty packs, solved over the whole network: open-circuit voltage of the empty pack, less
 * the drop in the pack, in leads and contacts, and in a regulator that can no longer hold its output (its dropout). Judged with
 * all loads at their average, in each declared event, and with the unit at its peak while all others draw their average,
 * against the lowest voltage its type needs. Where no voltage exists that carries the loads it collapses, whatever the minimum.
 *
 * <p>Does not see: cold packs and aged packs beyond the cell resistance given, brown-out shorter than the peaks declared; a range
 * that is wrong already at rest (P04).
 *
 * <p>Reference: existence of the operating point of constant-power loads, E squared over 4 R for one loop (exact
 * mathematics); what a unit needs is the maker's figure.
 */
@CheckInfo(
        code = "P18",
        name = "voltage-at-module",
        severity = Severity.S2,
        since = "0.2",
        solves = true,
        needs = {
            "voltage of an empty cell",
            "resistance of a cell",
            "lowest supply voltage of each unit",
            "average and peak current"
        })
public final class VoltageAtModule implements Weighing {
    private static final String LOWEST = "lowest supply voltage";

    @Override
    public void look(Situation at, Outcomes out) {
        Cases cases = new Cases(at, PackCharge.EMPTY);
        List<Cases.Broken> broken = cases.collapses();
        broken.forEach(one -> out.finding(collapse(at, one)));
        Optional<Cases.Solved> average = cases.average();
        if (average.isEmpty() || !broken.isEmpty()) {
            return;
        }
        List<Cases.Solved> always = new ArrayList<>(cases.events());
        always.add(0, average.get());
        LoadRun.Finder runs = new LoadRun.Finder(at);
        Gaps gaps = new Gaps();
        Overload.averages(at, average.get().flow(), gaps);
        gaps.add(EventOverload.empties(at).stream()
                .filter(gap -> !gap.datum().equals(PowerData.PACK_OHM))
                .toList());
        List<LoadRun> asked = new ArrayList<>();
        for (PlacedLoad load : PowerGraph.of(at.circuit()).loads()) {
            runs.of(load)
                    .filter(run -> !lowest(run).isNotApplicable() && !alreadyAtRest(at, run, lowest(run)))
                    .ifPresent(run -> {
                        if (lowest(run).isKnown()) {
                            asked.add(run);
                        } else {
                            gaps.add(LOWEST, run.name(at));
                        }
                    });
        }
        Map<LoadRun, Cases.Solved> peaks = cases.inTrouble(
                asked, (run, one) -> volts(run, one) < lowest(run).or(0.0));
        cases.brokenPeaks().forEach(one -> out.finding(collapse(at, one)));
        for (LoadRun run : asked) {
            run.peakMissing(at).ifPresent(gap -> gaps.add(List.of(gap)));
            List<Cases.Solved> judged = new ArrayList<>(always);
            Optional.ofNullable(peaks.get(run)).ifPresent(judged::add);
            judge(at, out, gaps, run, lowest(run).or(0.0), judged);
        }
        for (Event event : at.aircraft().events()) {
            event.loads().stream()
                    .filter(load -> load.amps() instanceof Datum.Unknown)
                    .forEach(load -> gaps.add("current during " + event.name(), load.unit()));
        }
        gaps.tell(out, PowerData::way);
    }

    private static Datum<Double> lowest(LoadRun run) {
        return run.load().limits().map(rail -> rail.minV()).orElse(Datum.notAsked());
    }

    /** Whether the empty pack at rest is too low already, which P04 tells. */
    private static boolean alreadyAtRest(Situation at, LoadRun run, Datum<Double> lowest) {
        return PowerGraph.of(at.circuit())
                .between(run.load().plus(), run.load().zero())
                .filter(volts -> lowest.isKnown() && volts.low() < lowest.or(0.0))
                .isPresent();
    }

    private static double volts(LoadRun run, Cases.Solved one) {
        return run.volts(one.flow()).orElse(Double.POSITIVE_INFINITY);
    }

    private static void judge(
            Situation at, Outcomes out, Gaps gaps, LoadRun run, double least, List<Cases.Solved> cases) {
        Cases.Solved worst = cases.get(0);
        for (Cases.Solved one : cases) {
            worst = volts(run, one) < volts(run, worst) ? one : worst;
        }
        Set<Gap> assumed = new LinkedHashSet<>(run.assumed(at, worst.flow()));
        assumed.addAll(LoadRun.assumedOfPacks(at, worst.flow()));
        LoadRun.OpenContacts contacts = run.openContacts(at, worst.flow());
        if (volts(run, worst) < least && volts(run, worst) + contacts.volts() >= least) {
            gaps.add(contacts.gaps());
        } else if (volts(run, worst) < least) {
            out.finding(draft(at, run, least, worst).onAssumption(!assumed.isEmpty()));
        } else if (assumed.isEmpty()) {
            out.looked();
        } else {
            gaps.add(assumed);
        }
    }

    private static Draft draft(Situation at, LoadRun run, double least, Cases.Solved one) {
        String name = run.name(at);
        double volts = volts(run, one);
        Draft draft = Draft.of(
                        Severity.S2,
                        "voltage too low under load: " + name + " gets " + Figures.of(volts) + " V with empty packs, "
                                + one.words() + ", needs " + Figures.of(least) + " V")
                .about(name)
                .path(run.trail(at))
                .sum(sum(run, one) + " = " + Figures.of(volts) + " V, needs " + Figures.of(least) + " V")
                .judged(volts, least, "V", "maker's data")
                .why(name + " starts anew or stops just when the pack is low and the load is high")
                .meter("power on, " + one.words() + ", pack nearly empty: " + Figures.of(volts) + " V at " + name)
                .fix("land earlier, or give " + name + " a supply that holds " + Figures.of(least) + " V: "
                        + run.worst(at, one.flow())
                                .map(wire -> "thicker " + wire.lead().id())
                                .orElse("thicker leads")
                        + ", a pack of less resistance, or a regulator of less dropout")
                .cause(name + "/low")
                .explains("P17");
        draft.seen(at.directory().unit(run.load().unit()));
        run.losing(at, one.flow()).forEach(draft::cause);
        return draft;
    }

    /** Empty packs, their sag, what the leads lose; for a regulated rail what the regulator still gives. */
    private static String sum(LoadRun run, Cases.Solved one) {
        List<String> terms = new ArrayList<>();
        for (PackFigure pack : one.flow().packs()) {
            terms.add(pack.source().name() + " " + Figures.of(pack.openVolts()) + " V - " + Figures.of(pack.sag())
                    + " V sag at " + Figures.of(pack.amps()) + " A");
        }
        double poles = run.poles(one.flow()).orElse(0);
        double drop = run.drop(one.flow()).orElse(0);
        terms.add(run.source().name() + " gives " + Figures.of(poles) + " V - " + Figures.of(drop) + " V in the leads");
        return String.join(", ", terms);
    }

    private static Draft collapse(Situation at, Cases.Broken one) {
        String part = Figures.of(100 * one.collapse().margin());
        Optional<PowerFlow> last = one.collapse().last();
        String sag = last.map(flow -> flow.packs().stream()
                        .map(pack -> pack.source().name() + " at " + Figures.of(pack.volts()) + " V and "
                                + Figures.of(pack.amps()) + " A")
                        .toList())
                .map(packs -> ", there " + String.join(", ", packs))
                .orElse("");
        Draft draft = Draft.of(
                        Severity.S2,
                        "voltage collapses with empty packs, " + one.words() + ": the supply carries " + part
                                + " % of the loads, " + one.collapse().limiting() + " gives way first")
                .about(at.directory().name(one.collapse().unit()))
                .sum("no voltage exists at which packs and leads carry all loads; largest part that can be carried "
                        + part + " %" + sag)
                .judged(100 * one.collapse().margin(), 100, "%", "existence of an operating point")
                .why(
                        "loads of constant power draw more the lower the voltage: it runs away downwards and everything stops")
                .meter("nothing to measure safely: do not try it with propellers on")
                .fix("fewer loads at once, more packs in parallel, or packs of less resistance")
                .cause(one.collapse().limiting() + "/low")
                .explains("P17");
        draft.seen(at.directory().unit(one.collapse().unit()));
        return draft;
    }
}
