package ringout.check.power;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Thresholds;
import ringout.check.form.Weighing;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Gap;
import ringout.graph.Wire;
import ringout.solve.power.LoadCase;
import ringout.solve.power.PowerFlow;
import ringout.solve.rating.WireRules;

/**
 * A lead that a peak heats too much.
 *
 * <p>Why it matters: a climb or a stalled servo lasts long enough to soften insulation, and nothing of it shows at average current.
 *
 * <p>Formula: a peak above the ampacity of the conductor is a finding when it lasts longer than 10 s, or when it heats the copper by
 * more than 60 K: 4.99e-15 x (I / A)2 x t, in A, m2 and s, no heat given off. Judged in each declared event, and with each unit at
 * its peak while all others draw their average; the time is that of the row, else of the loads behind the lead. A peak
 * that the conductor stands all day is none, however long.
 *
 * <p>Does not see: a lead that is overloaded on average already (P14), peaks that no load and no event declares, the
 * temperature the lead starts from.
 *
 * <p>Reference: adiabatic heating of copper (exact mathematics, resistivity 1/58 ohm mm2/m, 8.96 g/cm3, 0.385 J/gK from memory); 60 K
 * and 10 s are common practice, no source.
 */
@CheckInfo(
        code = "P15",
        name = "short-time-heating",
        severity = Severity.S2,
        since = "0.2",
        solves = true,
        needs = {"wire size of each supply lead", "peak current of each load and how long it lasts"})
public final class ShortTimeHeating implements Weighing {
    private static final double KELVIN_PER = 4.99e-15;
    private static final double M2_PER_MM2 = 1e-6;

    @Override
    public void look(Situation at, Outcomes out) {
        if (!(at.operatingPoint(LoadCase.AVERAGE) instanceof PowerFlow average)) {
            return;
        }
        Gaps gaps = new Gaps();
        Overload.averages(at, average, gaps);
        Overload.peaks(at, gaps);
        WireRules rules = WireRules.of(at.aircraft());
        Optional<PowerFlow> screen =
                at.operatingPoint(LoadCase.PEAK) instanceof PowerFlow flow ? Optional.of(flow) : Optional.empty();
        BitSet leads = new BitSet();
        double[] slack = new double[at.aircraft().leads().size()];
        Arrays.fill(slack, Double.POSITIVE_INFINITY);
        for (Wire wire : at.wiring().wires()) {
            double usual = Math.abs(average.amps(wire));
            double amps = screen.map(flow -> Math.abs(flow.amps(wire))).orElse(Double.POSITIVE_INFINITY);
            boolean carries = usual > 0 || (amps > 0 && screen.isPresent());
            if (carries
                    && rises(amps, usual)
                    && Overload.over(amps, rules.ampacity(wire).low())) {
                leads.set(wire.leadIndex());
                slack[wire.leadIndex()] =
                        Math.min(slack[wire.leadIndex()], rules.ampacity(wire).low() - usual);
            } else if (carries) {
                out.looked();
            }
        }
        boolean clear = gaps.isEmpty();
        Draft[] drafts = hot(at, gaps, rules, average, new OwnPeaks(at, leads), slack);
        for (Draft draft : drafts) {
            if (draft != null) {
                out.finding(draft);
            }
        }
        if (!leads.isEmpty() && clear && gaps.isEmpty()) {
            out.looked();
        }
        gaps.tell(out, PowerData::way);
    }

    /** Judges the leads that all peaks together would heat by the peaks they see; the worst finding of each lead. */
    private static Draft[] hot(
            Situation at, Gaps gaps, WireRules rules, PowerFlow average, OwnPeaks peaks, double[] slack) {
        Draft[] drafts = new Draft[at.aircraft().leads().size()];
        double[] most = new double[drafts.length];
        Map<Integer, List<Gap>> open = new TreeMap<>();
        for (OwnPeaks.Peak peak : peaks.all(slack)) {
            for (Wire wire : peaks.wires()) {
                double amps = Math.abs(peak.flow().amps(wire));
                int lead = wire.leadIndex();
                boolean own = rises(amps, Math.abs(average.amps(wire))) && peaks.concerns(lead, peak.of());
                if (own
                        && Overload.over(amps, most[lead])
                        && !cool(at, rules, wire, amps, peaks.seconds(wire, peak.of()))) {
                    List<Gap> missing = missing(at, rules, wire, peaks, peak);
                    open.computeIfAbsent(lead, key -> new ArrayList<>()).addAll(missing);
                    if (missing.isEmpty()) {
                        most[lead] = amps;
                        drafts[lead] = HeatingDraft.of(at, wire, peaks, peak);
                    }
                }
            }
        }
        open.forEach((lead, missing) -> {
            if (drafts[lead] == null) {
                gaps.add(missing);
            }
        });
        return drafts;
    }

    private static boolean cool(Situation at, WireRules rules, Wire wire, double amps, OptionalDouble seconds) {
        boolean brief = seconds.isPresent()
                && seconds.getAsDouble() <= at.limit(Thresholds.PEAK_BRIEF).value()
                && wire.areaMm2().isKnown();
        return !Overload.over(amps, rules.ampacity(wire).low())
                || (brief
                        && kelvin(amps, wire.areaMm2().or(1.0), seconds.getAsDouble())
                                <= at.limit(Thresholds.PEAK_RISE).value());
    }

    /** What is missing to say that a conductor gets too hot. */
    private static List<Gap> missing(Situation at, WireRules rules, Wire wire, OwnPeaks peaks, OwnPeaks.Peak peak) {
        List<Gap> missing = new ArrayList<>(ParallelReturn.guessed(at, peak.flow(), wire));
        if (peaks.seconds(wire, peak.of()).isEmpty()) {
            missing.add(new Gap(FuseBelowLoad.TIME, wire.lead().id()));
        }
        if (!Overload.over(
                Math.abs(peak.flow().amps(wire)), rules.ampacity(wire).high())) {
            missing.addAll(rules.missing(wire));
        }
        return missing;
    }

    private static boolean rises(double amps, double usual) {
        return amps > Overload.NEGLIGIBLE_A && Overload.over(amps, usual);
    }

    /** Rise of the copper in K, no heat given off. */
    static double kelvin(double amps, double areaMm2, double seconds) {
        double density = amps / (areaMm2 * M2_PER_MM2);
        return KELVIN_PER * density * density * seconds;
    }
}
