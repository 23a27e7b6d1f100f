package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Weighing;
import ringout.finding.Severity;
import ringout.graph.Gap;
import ringout.graph.Part;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SourceReach;
import ringout.graph.power.Volts;
import ringout.model.Datum;
import ringout.model.InnerPart;
import ringout.model.Origin;
import ringout.model.Rail;
import ringout.solve.power.LoadCase;
import ringout.solve.power.PackCharge;

/**
 * A regulator whose input gets more than it stands, or too little to hold its output.
 *
 * <p>Why it matters: full packs at rest burn it; nearly empty packs under load let its output sink, and everything behind it restarts in
 * the last minutes of the flight, when the reserve is being used.
 *
 * <p>Formula: highest = full packs at rest, in V, against the highest input voltage (S1); lowest = volts at the input at the
 * operating point with empty packs and all loads at their peak, so with the sag of the packs and the drop of leads and contacts,
 * against output voltage plus dropout, or, where no dropout is told, against the lowest input voltage (S2).
 *
 * <p>Does not see: spikes of a hard plug-in or of long leads (P26, P32); a dropout that grows with current and heat.
 *
 * <p>Reference: maker's data of the regulator.
 */
@CheckInfo(
        code = "P20",
        name = "regulator-input-out-of-range",
        severity = Severity.S1,
        since = "0.1",
        solves = true,
        needs = {
            "highest input voltage of each regulator",
            "its output voltage, and its dropout or lowest input voltage",
            "voltage of a full and of an empty cell",
            "resistance of a cell",
            "peak current of each load",
            "size and length of the leads from the packs to its input",
            "resistance of their contacts"
        })
public final class RegulatorInputOutOfRange implements Weighing {
    static final String HIGHEST_INPUT = "highest input voltage";
    static final String DROPOUT = "dropout or lowest input voltage";
    static final String OUTPUT = "output voltage";

    /** All that sags and drops at once. */
    static final LoadCase WORST = LoadCase.PEAK.with(PackCharge.EMPTY);

    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        List<PowerSource> regulators = power.sources().stream()
                .filter(source -> power.works(source) && source.part() >= 0)
                .filter(source -> source.kind() != PowerSource.Kind.PACK)
                .toList();
        if (regulators.isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        Optional<Flowing> worst = Flowing.of(at, WORST, gaps);
        LoadGaps missing = LoadGaps.of(at);
        for (PowerSource source : regulators) {
            Part part = at.wiring().parts().get(source.part());
            if (part.origin() instanceof Part.Inner inner) {
                judge(at, out, gaps, missing, worst, new Regulator(source, part, inner.part()));
            }
        }
        gaps.tell(out, PowerData::way);
    }

    private record Regulator(PowerSource source, Part part, InnerPart spec) {}

    private static void judge(
            Situation at, Outcomes out, Gaps gaps, LoadGaps missing, Optional<Flowing> worst, Regulator regulator) {
        boolean high = high(at, out, gaps, regulator);
        if (worst.isPresent() && low(at, out, gaps, missing, worst.get(), regulator) && high) {
            out.looked();
        }
    }

    /** Full packs at rest; whether it is decided and good. */
    private static boolean high(Situation at, Outcomes out, Gaps gaps, Regulator regulator) {
        PowerGraph power = PowerGraph.of(at.circuit());
        String name = regulator.source().name();
        Datum<Double> most = InputDraft.limits(at, regulator.source(), regulator.spec())
                .map(Rail::maxV)
                .orElse(Datum.notAsked());
        Optional<Volts> volts =
                power.between(regulator.part().from(), regulator.source().minus());
        if (most.isMissing()) {
            gaps.add(HIGHEST_INPUT, name);
            return false;
        }
        if (!most.isKnown() || volts.isEmpty()) {
            return true;
        }
        double full = volts.get().high();
        List<Gap> open = power.missing(regulator.part().from());
        if (!Double.isFinite(full)) {
            gaps.add(open);
            return false;
        }
        Verdict verdict = new Verdict(full, most.or(0.0), 0, most.source() == Origin.ASSUMED);
        if (verdict.exceeds()) {
            out.finding(InputDraft.high(at, regulator.source(), regulator.part(), verdict, most));
            return false;
        }
        return decided(gaps, verdict, name);
    }

    private static boolean decided(Gaps gaps, Verdict verdict, String name) {
        if (verdict.turns()) {
            gaps.add(PowerData.DECIDES, name);
        }
        return !verdict.turns();
    }

    /** Empty packs under load; whether it is decided and good. */
    private static boolean low(
            Situation at, Outcomes out, Gaps gaps, LoadGaps missing, Flowing worst, Regulator regulator) {
        PowerSource source = regulator.source();
        Optional<InputNeed> need = InputNeed.of(at, source, regulator.part(), regulator.spec());
        if (need.isEmpty()) {
            boolean output = regulator.spec().rating().outputV().isKnown()
                    || source.volts().nominal().isPresent();
            gaps.add(output ? DROPOUT : OUTPUT, source.name());
            return false;
        }
        OptionalDouble volts = worst.flow().volts(regulator.part().from(), source.minus());
        List<Gap> open = open(at, missing, worst, regulator);
        if (volts.isEmpty()) {
            gaps.add(PowerGraph.of(at.circuit()).missing(regulator.part().from()));
            gaps.add(open);
            return false;
        }
        if (volts.getAsDouble() <= 0) {
            return false; // reversed or shorted, which P01 and P02 tell
        }
        // Held the other way round: what it needs must not exceed what it gets.
        double needs = need.get().volts();
        Verdict verdict = new Verdict(needs, volts.getAsDouble(), need.get().assumed() ? 1 : 0, false);
        if (verdict.exceeds()) {
            SupplyWay way = SupplyWay.of(at, regulator.part().from(), source.minus());
            if (needs > volts.getAsDouble() + way.guessedVolts(worst.flow())) {
                out.finding(InputDraft.low(at, source, regulator.part(), verdict, need.get()));
                return false;
            }
            open.addAll(way.guessedContacts());
        }
        gaps.add(open);
        return open.isEmpty() && decided(gaps, verdict, source.name());
    }

    /** What would make the input even lower than computed. */
    private static List<Gap> open(Situation at, LoadGaps missing, Flowing worst, Regulator regulator) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Set<Gap> open = new LinkedHashSet<>();
        if (worst.unsized()) {
            open.addAll(
                    SupplyWay.of(at, regulator.part().from(), regulator.source().minus())
                            .unsized());
        }
        power.missing(regulator.part().from()).stream()
                .filter(gap -> gap.datum().contains("empty"))
                .forEach(open::add);
        for (PowerSource above :
                SourceReach.of(at.circuit()).above(regulator.part().from())) {
            if (above.kind() == PowerSource.Kind.PACK) {
                open.addAll(missing.peak(above));
                if (!above.milliohm().isKnown()) {
                    open.add(new Gap(PowerData.PACK_OHM, at.directory().name(above.unit())));
                }
            }
        }
        return new ArrayList<>(open);
    }
}
