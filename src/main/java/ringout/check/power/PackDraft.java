package ringout.check.power;

import java.util.List;
import java.util.stream.Collectors;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SourceReach;
import ringout.model.PartRating;
import ringout.model.Plug;

/** Writes the finding that a pack or its contact has to give more than it is rated for. */
final class PackDraft {
    private PackDraft() {}

    static Draft cells(Situation at, PackLoad load, Verdict verdict, PartRating rating) {
        Threshold share = at.limit(Thresholds.PACK_SHARE);
        String name = at.directory().name(load.pack().unit());
        String amps = Figures.of(verdict.value()) + " A";
        return draft(
                        at,
                        load,
                        "pack overloaded: " + name + " has to give " + amps + " at peak, should give "
                                + Figures.of(verdict.limit()) + " A at most")
                .about(name)
                .seen(at.directory().unit(load.pack().unit()))
                .sum(amps + " (" + load.highest().of().words() + "); "
                        + Figures.of(rating.cRate().or(0.0)) + " C x "
                        + Figures.of(rating.capacityAh().or(0.0)) + " Ah x " + Figures.of(share.value()) + " % = "
                        + Figures.of(verdict.limit()) + " A")
                .judged(verdict.value(), verdict.limit(), "A", "label of the pack, " + share.source())
                .input(rating.cRate())
                .input(rating.capacityAh())
                .onAssumption(verdict.turns())
                .why("the cells sag, heat up and age within weeks")
                .meter("clamp a meter around the lead of " + name + " at full load, peak hold: "
                        + Figures.of(verdict.limit()) + " A at most when right")
                .fix("take packs of a higher discharge rate or capacity for " + name
                        + ", add one in parallel, or declare as events which loads peak together");
    }

    /** Seconds 0: all the time. */
    static Draft contact(Situation at, PackLoad load, int pin, Verdict verdict, double seconds) {
        Plug plug = at.wiring().plug(pin);
        String name = load.plug(pin);
        String amps = Figures.of(verdict.value()) + " A";
        boolean peak = seconds > 0;
        String time = peak ? " for " + Figures.of(seconds) + " s" : " on average";
        String rated = Figures.of(plug.contactRatingA().or(0.0)) + " A continuous";
        Draft draft = draft(
                        at,
                        load,
                        "pack contact overloaded: " + name + " carries " + amps + time + ", rated for "
                                + Figures.of(verdict.limit()) + " A" + (peak ? " that long" : ""))
                .about(name)
                .sum(
                        peak
                                ? amps + time + " (" + load.highest().of().words() + "); rated " + rated + " and "
                                        + Figures.of(plug.contactPeakA().or(0.0)) + " A for "
                                        + Figures.of(plug.contactPeakS().or(0.0)) + " s, so at equal heat "
                                        + Figures.of(verdict.limit()) + " A for " + Figures.of(seconds) + " s"
                                : amps + " average, rated " + rated)
                .judged(
                        verdict.value(),
                        verdict.limit(),
                        "A",
                        "data of " + at.directory().unit(load.pack().unit()).type())
                .input(plug.contactRatingA())
                .input(plug.contactPeakA())
                .onAssumption(verdict.turns())
                .why("the contact heats up, softens its housing and burns open at full thrust")
                .meter("feel or infrared right after landing: " + name
                        + " under 20 K above its surroundings when right")
                .fix("fit a larger contact at " + name + ", or share the current between packs in parallel")
                .explains("P16");
        Supplies.leadsAt(at, List.of(pin)).forEach(draft::at);
        return draft;
    }

    private static Draft draft(Situation at, PackLoad load, String title) {
        boolean critical = SourceReach.of(at.circuit()).consumers(load.pack()).stream()
                .anyMatch(consumer -> at.flightCritical(at.directory().name(consumer.unit())));
        Draft draft = Draft.of(critical ? Severity.S2 : Severity.S3, title).cause(token(at, load));
        load.loads().forEach(behind -> LoadGaps.peakFigures(behind).forEach(draft::input));
        return draft;
    }

    /** One token for all packs that feed the same loads: too much load is one mistake, however many packs show it. */
    private static String token(Situation at, PackLoad load) {
        SourceReach reach = SourceReach.of(at.circuit());
        return reach.consumers(load.pack()).stream().findFirst().stream()
                .flatMap(consumer -> reach.above(consumer.plus()).stream())
                .filter(source -> source.kind() == PowerSource.Kind.PACK)
                .map(source -> at.directory().name(source.unit()))
                .distinct()
                .sorted()
                .collect(Collectors.joining(" + ", "current of ", ""));
    }
}
