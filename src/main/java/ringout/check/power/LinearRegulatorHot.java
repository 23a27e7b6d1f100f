package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import ringout.graph.Part;
import ringout.graph.Trail;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SourceReach;
import ringout.model.Datum;
import ringout.model.Origin;
import ringout.model.PartKind;
import ringout.model.PartRating;
import ringout.solve.power.LoadCase;
import ringout.solve.power.PackCharge;
import ringout.solve.power.RegulatorFigure;

/**
 * A linear regulator that has to shed more heat than it can.
 *
 * <p>Why it matters: it turns the whole difference between input and output into heat, gets hot, shuts down, cools, and starts again: a
 * fault that comes and goes, always after some minutes.
 *
 * <p>Formula: heat = (input voltage - output voltage) times output current, in W, at the operating point with full packs and all
 * loads at their average, against the heat the regulator or its unit can shed; where neither is told, 1 W bare and 3 W on a heat
 * sink.
 *
 * <p>Does not see: hot air, sealed boxes and altitude; the heat of switching regulators (P19).
 *
 * <p>Reference: maker's data; 1 W and 3 W are common practice, no source.
 */
@CheckInfo(
        code = "P21",
        name = "linear-regulator-hot",
        severity = Severity.S3,
        since = "0.1",
        solves = true,
        needs = {
            "average current of each load",
            "voltage of a full cell",
            "heat each linear regulator can shed, or whether it sits on a heat sink"
        })
public final class LinearRegulatorHot implements Weighing {
    static final String SINK = "whether it sits on a heat sink, or the heat it can shed";
    private static final LoadCase FULL = LoadCase.AVERAGE.with(PackCharge.FULL);

    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        List<PowerSource> linear = power.sources().stream()
                .filter(source -> power.works(source) && isLinear(at, source))
                .toList();
        if (linear.isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        LoadGaps missing = LoadGaps.of(at);
        Flowing.of(at, FULL, gaps)
                .ifPresent(flow -> linear.forEach(source -> judge(at, out, gaps, missing, flow, source)));
        gaps.tell(out, PowerData::way);
    }

    private static boolean isLinear(Situation at, PowerSource source) {
        return source.part() >= 0
                && at.wiring().parts().get(source.part()).origin() instanceof Part.Inner inner
                && inner.part().kind().is(PartKind.LINEAR_REGULATOR);
    }

    private static PartRating rating(Situation at, PowerSource source) {
        return ((Part.Inner) at.wiring().parts().get(source.part()).origin())
                .part()
                .rating();
    }

    private static void judge(
            Situation at, Outcomes out, Gaps gaps, LoadGaps missing, Flowing flow, PowerSource source) {
        List<Gap> open = new ArrayList<>(missing.average(source));
        open.addAll(PowerGraph.of(at.circuit())
                .missing(at.wiring().parts().get(source.part()).from())
                .stream()
                .filter(gap -> !gap.datum().contains("empty"))
                .toList());
        Optional<RegulatorFigure> figure = flow.regulator(source);
        Optional<Threshold> limit = limit(at, source);
        if (figure.isEmpty()) {
            gaps.add(open.isEmpty() ? List.of(new Gap(RegulatorInputOutOfRange.OUTPUT, source.name())) : open);
            return;
        }
        double watts = heat(figure.get());
        double rests = flow.assumedPart(SourceReach.of(at.circuit()).loads(source), LoadGaps::averageFigures);
        boolean assumed = rating(at, source).heatW().source() == Origin.ASSUMED;
        double sink = at.limit(Thresholds.LINEAR_SINK).value();
        double most = limit.map(Threshold::value).orElse(sink);
        Verdict verdict = new Verdict(watts, most, rests, assumed);
        if (verdict.exceeds()) {
            out.finding(draft(at, figure.get(), verdict, limit.orElse(at.limit(Thresholds.LINEAR_SINK))));
        } else if (limit.isEmpty() && watts > at.limit(Thresholds.LINEAR_BARE).value()) {
            open.add(new Gap(SINK, source.name()));
            gaps.add(open);
        } else if (!open.isEmpty()) {
            gaps.add(open);
        } else if (verdict.turns()) {
            gaps.add(PowerData.DECIDES, source.name());
        } else {
            out.looked();
        }
    }

    private static double heat(RegulatorFigure figure) {
        return (figure.inVolts() - figure.outVolts()) * figure.outAmps();
    }

    /** What it can shed; empty when nobody tells whether it has a heat sink. */
    private static Optional<Threshold> limit(Situation at, PowerSource source) {
        PartRating rating = rating(at, source);
        Datum<Double> own =
                rating.heatW().orElse(at.directory().type(source.unit()).heatRatedW());
        if (own.isKnown()) {
            String type = at.directory().unit(source.unit()).type();
            return Optional.of(new Threshold("heat", own.or(0.0), "W", "data of " + type));
        }
        return rating.heatSink().known().map(sink -> at.limit(sink ? Thresholds.LINEAR_SINK : Thresholds.LINEAR_BARE));
    }

    private static Draft draft(Situation at, RegulatorFigure figure, Verdict verdict, Threshold limit) {
        PowerSource source = figure.source();
        String watts = Figures.of(verdict.value()) + " W";
        Draft draft = Draft.of(
                        Severity.S3,
                        "linear regulator hot: " + source.name() + " turns " + watts + " into heat, can shed "
                                + Figures.of(verdict.limit()) + " W")
                .about(source.name())
                .at(at.directory().unit(source.unit()), "heat")
                .path(PowerGraph.of(at.circuit()).tree().trailTo(source.plus()).orElse(Trail.NONE))
                .sum("(" + Figures.of(figure.inVolts()) + " V - " + Figures.of(figure.outVolts()) + " V) x "
                        + Figures.of(figure.outAmps()) + " A = " + watts + ", packs full")
                .judged(verdict.value(), verdict.limit(), "W", limit.source())
                .onAssumption(verdict.turns())
                .why("it shuts down when hot and starts again when cool: everything behind it fails now and then")
                .meter("packs full, loads on: volts from its input to its output pin times the current out of it, "
                        + Figures.of(verdict.limit()) + " W at most")
                .fix("fit a switching regulator in place of " + at.directory().name(source.unit())
                        + ", feed it from a lower rail, or give it a heat sink for " + watts);
        SourceReach.of(at.circuit())
                .loads(source)
                .forEach(load -> LoadGaps.averageFigures(load).forEach(draft::input));
        return draft;
    }
}
