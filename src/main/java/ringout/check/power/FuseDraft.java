package ringout.check.power;

import java.util.Optional;
import java.util.stream.Collectors;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;

/** Writes the finding that a fuse opens although nothing is wrong. */
final class FuseDraft {
    private static final int NAMED = 4;

    private FuseDraft() {}

    static Draft average(Situation at, Fuses.Fuse fuse, Fuses.Behind behind, Verdict verdict, Threshold share) {
        String carries = Figures.of(verdict.value()) + " A";
        return draft(
                        at,
                        fuse,
                        behind,
                        rated(fuse) + " carries " + carries + " on average, should carry " + Figures.of(verdict.limit())
                                + " A at most")
                .sum(carries + " average to " + fed(at, behind) + "; "
                        + Figures.of(fuse.ratingA().or(0.0)) + " A x " + Figures.of(share.value()) + " % = "
                        + Figures.of(verdict.limit()) + " A")
                .judged(verdict.value(), verdict.limit(), "A", share.source())
                .onAssumption(verdict.turns())
                .why("it runs hot, ages and opens one day in flight")
                .meter("clamp a meter around the lead at " + fuse.name() + ": " + carries + " by the list, "
                        + Figures.of(verdict.limit()) + " A at most when right")
                .fix(fix(fuse, verdict.value() * 100 / share.value()));
    }

    static Draft peak(
            Situation at,
            Fuses.Fuse fuse,
            Fuses.Behind behind,
            double amps,
            double seconds,
            Verdict verdict,
            PeakCase of) {
        String peak = Figures.of(amps) + " A for " + Figures.of(seconds) + " s";
        String rating = Figures.of(fuse.ratingA().or(0.0));
        return draft(at, fuse, behind, rated(fuse) + " opens at " + peak)
                .sum("(" + Figures.of(amps) + " x " + Figures.of(amps) + " - " + rating + " x " + rating + ") A2 x "
                        + Figures.of(seconds) + " s = " + Figures.of(verdict.value()) + " A2s, melts at "
                        + Figures.of(verdict.limit()) + " A2s; " + of.words())
                .judged(verdict.value(), verdict.limit(), "A2s", "melting integral of the fuse")
                .input(fuse.meltA2s())
                .onAssumption(verdict.turns())
                .why("it opens in the first long peak: what it feeds is dead until somebody opens a lid")
                .meter("clamp a meter around the lead at " + fuse.name() + ", peak hold: " + peak + " by the list, "
                        + rating + " A at most when right")
                .fix(fix(fuse, amps));
    }

    private static String rated(Fuses.Fuse fuse) {
        return fuse.name() + ", " + Figures.of(fuse.ratingA().or(0.0)) + " A,";
    }

    private static String fix(Fuses.Fuse fuse, double amps) {
        return "give " + fuse.name() + " a rating of " + Figures.of(amps)
                + " A or more, if its wire carries that (P22), or take loads off it";
    }

    private static Draft draft(Situation at, Fuses.Fuse fuse, Fuses.Behind behind, String words) {
        boolean critical = behind.consumers.stream()
                .anyMatch(consumer -> at.flightCritical(at.directory().name(consumer.unit())));
        Draft draft = Draft.of(critical ? Severity.S2 : Severity.S3, "fuse below load: " + words)
                .about(fuse.name())
                .path(trail(at, behind))
                .input(fuse.ratingA());
        fuse.lead().ifPresent(draft::at);
        if (fuse.unit() >= 0) {
            draft.at(at.directory().unit(fuse.unit()), fuse.name());
        }
        behind.loads.forEach(load -> LoadGaps.peakFigures(load).forEach(draft::input));
        behind.loads.forEach(load -> LoadGaps.averageFigures(load).forEach(draft::input));
        return draft;
    }

    private static Trail trail(Situation at, Fuses.Behind behind) {
        Optional<Consumer> first = behind.consumers.stream().findFirst();
        return first.flatMap(consumer -> PowerGraph.of(at.circuit())
                        .tree()
                        .trailTo(
                                consumer.inputs().isEmpty()
                                        ? consumer.plus()
                                        : consumer.inputs().get(0)))
                .orElse(Trail.NONE);
    }

    private static String fed(Situation at, Fuses.Behind behind) {
        var names = behind.consumers.stream()
                .map(consumer -> at.directory().name(consumer.unit()))
                .distinct()
                .toList();
        String first = names.stream().limit(NAMED).collect(Collectors.joining(", "));
        return names.size() > NAMED ? first + " and " + (names.size() - NAMED) + " more" : first;
    }
}
