package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Thresholds;
import ringout.check.form.Weighing;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Gap;
import ringout.graph.Part;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.Datum;
import ringout.model.Origin;
import ringout.model.PartRating;
import ringout.model.Plug;
import ringout.solve.power.LoadCase;

/**
 * A pack, or the contact it is plugged in by, that has to give more current than it is rated for.
 *
 * <p>Why it matters: the cells sag, heat up and age within weeks; a contact over its rating softens its housing and burns open at full
 * thrust.
 *
 * <p>Formula: current of the pack at the operating point, in A, against discharge rate times capacity times 80 %, in the case of peaks
 * that takes most: what a declared event names peaks as the event says, all other loads peak together. Contacts of the pack:
 * average against the continuous rating; a peak above it against the short-time rating, at equal heat: I allowed for t seconds
 * is the root of R x R + (P x P - R x R) x tp / t, with R continuous and P for tp seconds. How long it lasts is taken from the
 * row of the lead, else from the loads and events.
 *
 * <p>Does not see: cold or aged cells, which give less; a contact that is worn or dirty; contacts elsewhere (P16).
 *
 * <p>Reference: label of the pack and maker's data of the contact; 80 % is common practice, no source.
 */
@CheckInfo(
        code = "P29",
        name = "pack-overloaded",
        severity = Severity.S2,
        since = "0.1",
        solves = true,
        needs = {
            "capacity and discharge rate of each pack",
            "continuous and short-time rating of its contacts",
            "average and peak current of each load",
            "efficiency of each regulator",
            "how long the peak lasts"
        })
public final class PackOverloaded implements Weighing {
    static final String CAPACITY = "capacity or discharge rate of the cells";
    static final String CONTACT = "continuous rating of the contact";
    static final String SHORT_TIME = "short-time rating of the contact";

    @Override
    public void look(Situation at, Outcomes out) {
        List<PowerSource> packs = PowerGraph.of(at.circuit()).sources().stream()
                .filter(source -> source.kind() == PowerSource.Kind.PACK)
                .filter(PowerGraph.of(at.circuit())::works)
                .toList();
        if (packs.isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        Optional<Flowing> average = Flowing.of(at, LoadCase.AVERAGE, gaps);
        List<OutputLoad.Peak> peaks = new ArrayList<>();
        List<PeakCase> cases = PeakCase.lasting(at);
        for (PeakCase of : cases) {
            Flowing.of(at, of.loads(), gaps).ifPresent(flow -> peaks.add(new OutputLoad.Peak(of, flow)));
        }
        if (average.isPresent() && peaks.size() == cases.size()) {
            LoadGaps missing = LoadGaps.of(at);
            for (PowerSource pack : packs) {
                PackLoad load = new PackLoad(at, pack, average.get(), highest(pack, peaks));
                judge(at, out, gaps, missing, load);
            }
        }
        gaps.tell(out, PowerData::way);
    }

    private static OutputLoad.Peak highest(PowerSource pack, List<OutputLoad.Peak> peaks) {
        OutputLoad.Peak highest = peaks.get(0);
        for (OutputLoad.Peak peak : peaks) {
            highest = peak.flow().amps(pack) > highest.flow().amps(pack) ? peak : highest;
        }
        return highest;
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, LoadGaps missing, PackLoad load) {
        List<Gap> open = new ArrayList<>(missing.average(load.pack()));
        open.addAll(missing.peak(load.pack()));
        boolean sure = !missing.guessed(load.pack());
        boolean found = cells(at, out, open, load, sure);
        for (int pin : load.pins()) {
            found |= contact(at, out, open, load, pin, sure);
        }
        if (found) {
            return;
        }
        gaps.add(open.stream().distinct().toList());
        if (open.isEmpty()) {
            out.looked();
        }
    }

    /** Whether the cells are overloaded and that is told. */
    private static boolean cells(Situation at, Outcomes out, List<Gap> open, PackLoad load, boolean sure) {
        PartRating rating = ((Part.Inner)
                        at.wiring().parts().get(load.pack().part()).origin())
                .part()
                .rating();
        if (!rating.cRate().isKnown() || !rating.capacityAh().isKnown()) {
            open.add(new Gap(CAPACITY, at.directory().name(load.pack().unit())));
            return false;
        }
        double share = at.limit(Thresholds.PACK_SHARE).value() / 100;
        double most = rating.cRate().or(0.0) * rating.capacityAh().or(0.0) * share;
        boolean assumed =
                rating.cRate().source() == Origin.ASSUMED || rating.capacityAh().source() == Origin.ASSUMED;
        Verdict verdict = new Verdict(load.peakA(), most, load.peakRests(), assumed);
        return told(out, open, load, verdict, sure, () -> PackDraft.cells(at, load, verdict, rating));
    }

    private static boolean told(
            Outcomes out, List<Gap> open, PackLoad load, Verdict verdict, boolean sure, Supplier<Draft> draft) {
        if (verdict.exceeds() && sure) {
            out.finding(draft.get());
            return true;
        }
        if (!verdict.exceeds() && verdict.turns()) {
            open.add(new Gap(PowerData.DECIDES, load.pack().name()));
        }
        return false;
    }

    /** Whether a contact of the pack is overloaded and that is told. */
    private static boolean contact(Situation at, Outcomes out, List<Gap> open, PackLoad load, int pin, boolean sure) {
        Plug plug = at.wiring().plug(pin);
        String name = load.plug(pin);
        Datum<Double> rated = plug.contactRatingA();
        if (!rated.isKnown()) {
            if (rated.isMissing()) {
                open.add(new Gap(CONTACT, name));
            }
            return false;
        }
        boolean assumed = rated.source() == Origin.ASSUMED;
        Verdict steady = new Verdict(load.average(pin), rated.or(0.0), load.averageRests(), assumed);
        if (told(out, open, load, steady, sure, () -> PackDraft.contact(at, load, pin, steady, 0))) {
            return true;
        }
        double peak = load.peak(pin);
        if (peak <= rated.or(0.0)) {
            return false;
        }
        OptionalDouble seconds = load.seconds(pin);
        boolean known = plug.contactPeakA().isKnown() && plug.contactPeakS().isKnown();
        if (!known) {
            open.add(new Gap(SHORT_TIME, name));
        }
        if (seconds.isEmpty()) {
            List<String> untimed = load.untimed(pin);
            (untimed.isEmpty() ? List.of(name) : untimed).forEach(of -> open.add(new Gap(FuseBelowLoad.TIME, of)));
        }
        if (!known || seconds.isEmpty()) {
            return false;
        }
        double most = allowed(
                rated.or(0.0), plug.contactPeakA().or(0.0), plug.contactPeakS().or(0.0), seconds.getAsDouble());
        boolean guessed = assumed || plug.contactPeakA().source() == Origin.ASSUMED;
        Verdict verdict = new Verdict(peak, most, load.peakRests(), guessed);
        return told(
                out, open, load, verdict, sure, () -> PackDraft.contact(at, load, pin, verdict, seconds.getAsDouble()));
    }

    /** The current of equal heat for another time; the continuous rating at least. */
    static double allowed(double rated, double peak, double peakS, double seconds) {
        double more = Math.max(0, peak * peak - rated * rated);
        return Math.sqrt(rated * rated + more * peakS / Math.max(seconds, 1e-3));
    }
}
