package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.check.form.Weighing;
import ringout.finding.Severity;
import ringout.graph.Gap;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SourceReach;
import ringout.model.Datum;
import ringout.model.Origin;
import ringout.model.Rail;
import ringout.solve.power.LoadCase;

/**
 * A regulator or supply output that has to give more than it is rated for.
 *
 * <p>Why it matters: it limits its current or shuts down for a moment, and everything on its rail restarts together: just when the
 * gimbal starts, the link is at full power or the gear moves.
 *
 * <p>Formula: current out of the output at the operating point, in A; with all loads at their average over the continuous
 * rating (S2) or over 80 % of it (S3); with the loads that may peak together over the peak rating (S2). Loads that an event puts at
 * their peak peak as the events say, all others may peak at any time. Ratings are taken as on the data sheet, times the
 * derating of the unit for cooling and altitude where its row gives one.
 *
 * <p>Does not see: how two outputs joined by diodes share when their voltages differ by their tolerance, or when one fails (loss
 * table); the cooling of a regulator for which no derating is given; short peaks that no load lists.
 *
 * <p>Reference: maker's data of the regulator; 80 % is common practice, no source.
 */
@CheckInfo(
        code = "P19",
        name = "regulator-overloaded",
        severity = Severity.S2,
        since = "0.1",
        solves = true,
        needs = {
            "average and peak current of each load",
            "continuous and peak rating of each regulator output",
            "efficiency of each regulator fed by another"
        })
public final class RegulatorOverloaded implements Weighing {
    static final String CONTINUOUS = "continuous rating of the output";
    static final String PEAK_RATING = "peak rating of the output";

    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        List<PowerSource> outputs = power.sources().stream()
                .filter(source -> power.works(source) && source.kind() != PowerSource.Kind.PACK)
                .toList();
        if (outputs.isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        Optional<Flowing> average = Flowing.of(at, LoadCase.AVERAGE, gaps);
        List<OutputLoad.Peak> peaks = new ArrayList<>();
        List<PeakCase> cases = PeakCase.sudden(at);
        for (PeakCase of : cases) {
            Flowing.of(at, of.loads(), gaps).ifPresent(flow -> peaks.add(new OutputLoad.Peak(of, flow)));
        }
        if (average.isPresent() && peaks.size() == cases.size()) {
            LoadGaps missing = LoadGaps.of(at);
            outputs.forEach(source -> judge(at, out, gaps, missing, load(at, source, average.get(), peaks)));
        }
        gaps.tell(out, PowerData::way);
    }

    private static OutputLoad load(Situation at, PowerSource source, Flowing average, List<OutputLoad.Peak> peaks) {
        OutputLoad.Peak highest = peaks.get(0);
        for (OutputLoad.Peak peak : peaks) {
            highest = peak.flow().amps(source) > highest.flow().amps(source) ? peak : highest;
        }
        List<PlacedLoad> behind = SourceReach.of(at.circuit()).loads(source);
        Datum<Double> continuous = source.rail().map(Rail::continuousA).orElse(Datum.notAsked());
        Datum<Double> peak = source.rail().map(Rail::peakA).orElse(Datum.notAsked());
        double derating = at.directory().unit(source.unit()).derating().or(1.0);
        double averageRests = average.assumedPart(behind, LoadGaps::averageFigures);
        double peakRests = highest.flow().assumedPart(behind, LoadGaps::peakFigures);
        return new OutputLoad(
                source,
                average,
                highest,
                verdict(average.amps(source), continuous, derating, averageRests),
                verdict(average.amps(source), continuous, derating * share(at), averageRests),
                verdict(highest.flow().amps(source), peak, derating, peakRests));
    }

    private static double share(Situation at) {
        Threshold share = at.limit(Thresholds.REGULATOR_SHARE);
        return share.value() / 100;
    }

    private static Verdict verdict(double amps, Datum<Double> rating, double part, double assumedPart) {
        double limit = rating.or(Double.POSITIVE_INFINITY) * part;
        return new Verdict(amps, limit, assumedPart, rating.source() == Origin.ASSUMED);
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, LoadGaps missing, OutputLoad load) {
        PowerSource source = load.source();
        List<Gap> open = new ArrayList<>(ratings(at, load));
        open.addAll(missing.average(source));
        open.addAll(missing.peak(source));
        if (load.isBad() && !missing.guessed(source)) {
            out.finding(OutputLoadDraft.of(at, load));
        } else if (!open.isEmpty()) {
            gaps.add(open);
        } else if (load.turns()) {
            gaps.add(PowerData.DECIDES, source.name());
        } else {
            out.looked();
        }
    }

    private static List<Gap> ratings(Situation at, OutputLoad load) {
        List<Gap> open = new ArrayList<>();
        Datum<Double> continuous = load.source().rail().map(Rail::continuousA).orElse(Datum.notAsked());
        Datum<Double> peak = load.source().rail().map(Rail::peakA).orElse(Datum.notAsked());
        if (continuous.isMissing()) {
            open.add(new Gap(CONTINUOUS, load.source().name()));
        }
        if (peak.isMissing() && load.peak().value() > continuous.or(0.0)) {
            open.add(new Gap(PEAK_RATING, load.source().name()));
        }
        if (at.directory().unit(load.source().unit()).derating() instanceof Datum.Unknown) {
            open.add(new Gap("derating", at.directory().name(load.source().unit())));
        }
        return open;
    }
}
