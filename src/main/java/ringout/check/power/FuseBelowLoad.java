package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.check.form.CheckInfo;
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
import ringout.model.Datum;
import ringout.model.Origin;
import ringout.solve.power.LoadCase;

/**
 * A fuse that opens although nothing is wrong.
 *
 * <p>Why it matters: it ages with every take-off and opens one day in flight; what it feeds is dead until somebody opens a lid.
 *
 * <p>Formula: average current through the fuse at the operating point, in A, against 75 % of its rating; and, where the peak I is
 * above the rating R for the time t, (I x I - R x R) x t against its melting integral in A2s: what it sheds at its rating it
 * sheds for ever. Events tell which loads peak together, all others may. How long a peak lasts is taken from the row of the lead,
 * else from the loads and events behind it.
 *
 * <p>Does not see: a fuse that is too large for its wire (P22); warm surroundings, which lower its rating. A feed without any
 * fuse is nobody's finding here: some are left out on purpose, and a fuse left out is declared on the row.
 *
 * <p>Reference: 75 % of the rating is common practice, no source; the melting integral is the maker's. Heat above what the fuse
 * sheds at its rating is the adiabatic law with a constant loss, which is on the safe side for long peaks.
 */
@CheckInfo(
        code = "P23",
        name = "fuse-below-load",
        severity = Severity.S2,
        since = "0.1",
        solves = true,
        needs = {
            "rating of each fuse inside a unit",
            "average and peak current of each load",
            "melting integral and time of the peak, where a peak is above the rating"
        })
public final class FuseBelowLoad implements Weighing {
    static final String RATING = "fuse rating";
    static final String MELT = "melting integral";
    static final String TIME = "time of the peak";

    @Override
    public void look(Situation at, Outcomes out) {
        Fuses fuses = Fuses.of(at);
        List<Wire> unread = unread(at);
        if (fuses.all().isEmpty() && unread.isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        Optional<Flowing> average = Flowing.of(at, LoadCase.AVERAGE, gaps);
        List<OutputLoad.Peak> peaks = new ArrayList<>();
        List<PeakCase> cases = PeakCase.lasting(at);
        for (PeakCase of : cases) {
            Flowing.of(at, of.loads(), gaps).ifPresent(flow -> peaks.add(new OutputLoad.Peak(of, flow)));
        }
        for (Wire wire : unread) {
            if (average.isEmpty() || average.get().flow().amps(wire) != 0) {
                gaps.add(RATING, "fuse of " + wire.lead().id());
            }
        }
        if (average.isPresent() && peaks.size() == cases.size()) {
            fuses.all().forEach(fuse -> judge(at, out, gaps, fuse, fuses.behind(fuse), average.get(), peaks));
        }
        gaps.tell(out, PowerData::way);
    }

    /** Conductors of leads whose fuse is marked "?": there is one, but nobody has read it. */
    private static List<Wire> unread(Situation at) {
        List<Wire> unread = new ArrayList<>();
        for (Wire wire : at.wiring().wires()) {
            if (wire.lead().fuseA() instanceof Datum.Unknown && at.circuit().mated(wire)) {
                unread.add(wire);
            }
        }
        return unread;
    }

    private static void judge(
            Situation at,
            Outcomes out,
            Gaps gaps,
            Fuses.Fuse fuse,
            Fuses.Behind behind,
            Flowing average,
            List<OutputLoad.Peak> peaks) {
        List<Gap> open = missing(at, behind);
        double amps = Math.abs(average.flow().amps(fuse.part()));
        boolean carries =
                amps > 0 || peaks.stream().anyMatch(peak -> peak.flow().flow().amps(fuse.part()) != 0);
        if (!fuse.ratingA().isKnown()) {
            if (carries && fuse.ratingA().isMissing()) {
                open.add(new Gap(RATING, fuse.name()));
                gaps.add(open);
            }
            return;
        }
        double rating = fuse.ratingA().or(0.0);
        Threshold share = at.limit(Thresholds.FUSE_SHARE);
        boolean assumed = fuse.ratingA().source() == Origin.ASSUMED;
        double rests = average.assumedPart(behind.loads, LoadGaps::averageFigures);
        Verdict steady = new Verdict(amps, rating * share.value() / 100, rests, assumed);
        Optional<Draft> found = Optional.empty();
        if (steady.exceeds()) {
            found = Optional.of(FuseDraft.average(at, fuse, behind, steady, share));
        }
        for (OutputLoad.Peak peak : peaks) {
            if (found.isEmpty()) {
                found = melts(at, fuse, behind, peak, open);
            }
        }
        if (found.isPresent() && behind.between.isEmpty()) {
            out.finding(found.get());
        } else if (!open.isEmpty()) {
            gaps.add(open);
        } else if (steady.turns()) {
            gaps.add(PowerData.DECIDES, fuse.name());
        } else if (carries) {
            out.looked();
        }
    }

    private static List<Gap> missing(Situation at, Fuses.Behind behind) {
        List<Gap> open = new ArrayList<>(behind.between);
        behind.consumers.forEach(consumer -> {
            open.addAll(LoadGaps.averages(at.directory(), consumer));
            open.addAll(LoadGaps.peaks(at.directory(), consumer));
        });
        return open;
    }

    /** Whether a peak melts a fuse; what is missing to tell is added to the gaps. */
    private static Optional<Draft> melts(
            Situation at, Fuses.Fuse fuse, Fuses.Behind behind, OutputLoad.Peak peak, List<Gap> open) {
        double amps = Math.abs(peak.flow().flow().amps(fuse.part()));
        double rating = fuse.ratingA().or(0.0);
        if (!new Verdict(amps, rating, 0, false).exceeds()) {
            return Optional.empty();
        }
        OptionalDouble seconds = seconds(at, fuse, behind, peak.of());
        if (seconds.isEmpty()) {
            open.add(new Gap(TIME, fuse.name()));
        }
        if (!fuse.meltA2s().isKnown()) {
            open.add(new Gap(MELT, fuse.name()));
        }
        if (seconds.isEmpty() || !fuse.meltA2s().isKnown()) {
            return Optional.empty();
        }
        double heat = (amps * amps - rating * rating) * seconds.getAsDouble();
        boolean assumed = fuse.meltA2s().source() == Origin.ASSUMED;
        Verdict verdict = new Verdict(heat, fuse.meltA2s().or(0.0), 0, assumed);
        if (!verdict.exceeds() && verdict.turns()) {
            open.add(new Gap(PowerData.DECIDES, fuse.name()));
        }
        return verdict.exceeds()
                ? Optional.of(FuseDraft.peak(at, fuse, behind, amps, seconds.getAsDouble(), verdict, peak.of()))
                : Optional.empty();
    }

    /** How long a peak lasts: as the row of the lead says, else the longest of the loads behind. */
    private static OptionalDouble seconds(Situation at, Fuses.Fuse fuse, Fuses.Behind behind, PeakCase of) {
        return seconds(at, fuse.lead().map(lead -> lead.peakS()).orElse(Datum.notAsked()), behind.loads, of);
    }

    /** How long a peak lasts: as a row says; a row marked "?" says that nobody knows; else the longest of the loads behind. */
    static OptionalDouble seconds(Situation at, Datum<Double> row, List<PlacedLoad> behind, PeakCase of) {
        if (row instanceof Datum.Unknown) {
            return OptionalDouble.empty();
        }
        return row.isKnown() ? OptionalDouble.of(row.or(0.0)) : longest(at, behind, of);
    }

    /** The longest time a load of some is raised; empty when one does not tell. */
    static OptionalDouble longest(Situation at, List<PlacedLoad> loads, PeakCase of) {
        double longest = 0;
        boolean any = false;
        for (PlacedLoad load : loads) {
            if (of.raises(at, load)) {
                OptionalDouble seconds = of.seconds(at, load);
                if (seconds.isEmpty()) {
                    return OptionalDouble.empty();
                }
                any = true;
                longest = Math.max(longest, seconds.getAsDouble());
            }
        }
        return any ? OptionalDouble.of(longest) : OptionalDouble.empty();
    }
}
