package ringout.trace.campaign;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Origin;
import ringout.model.edit.Edit;
import ringout.model.edit.Edits;
import ringout.model.edit.Path;
import ringout.solve.meter.Change;
import ringout.text.Span;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Candidates;
import ringout.trace.candidate.Defect;
import ringout.trace.predict.FieldTest;
import ringout.trace.predict.Predictions;
import ringout.trace.predict.Signature;
import ringout.trace.predict.TestCard;

/** The aircraft as it really is: wired as listed, but every conductor with up to a fifth more or less resistance than listed. */
final class TrueAircraft {
    private static final double SPREAD = 0.2;
    private static final double MISREAD = 0.0401;

    private final Circuit circuit;

    private TrueAircraft(Circuit circuit) {
        this.circuit = circuit;
    }

    /** Each cut length by chance within a fifth, which changes each resistance by as much. */
    static TrueAircraft of(Aircraft listed, Random random) {
        List<Edit> edits = new ArrayList<>();
        for (Lead lead : listed.leads()) {
            double factor = factor(random);
            lead.lengthMm()
                    .known()
                    .ifPresent(mm -> edits.add(new Edit.Set(
                            Span.NONE,
                            Path.of("leads").at(lead.id()).then("lengthMm"),
                            new Datum.Known<>(mm * factor, Origin.MEASURED, ""))));
        }
        return new TrueAircraft(SmallAircraft.circuit(Edits.apply(listed, edits).aircraft()));
    }

    static double factor(Random random) {
        return 1 + SPREAD * (2 * random.nextDouble() - 1);
    }

    /** The same fault as a candidate of the list, in this aircraft; what it adds in ohm is other than listed as well. */
    Optional<Candidate> fault(String id, Random random) {
        return Candidates.of(circuit).find(id).map(one -> changed(one, factor(random)));
    }

    private static Candidate changed(Candidate one, double factor) {
        List<Change> changes = one.changes().stream()
                .map(change -> change instanceof Change.Added added && added.ohm() > 0.001
                        ? new Change.Added(added.a(), added.b(), added.ohm() * factor)
                        : change)
                .toList();
        Defect defect = one.defect();
        if (defect instanceof Defect.PoorContact poor) {
            defect = new Defect.PoorContact(poor.wire(), poor.pin(), poor.ohm() * factor);
        } else if (defect instanceof Defect.SourceSags sags) {
            defect = new Defect.SourceSags(sags.source(), sags.part() * factor);
        }
        return new Candidate(
                one.id() + " x " + factor,
                one.kind(),
                defect,
                one.title(),
                one.rows(),
                one.repair(),
                one.opening(),
                one.weight(),
                one.because(),
                changes);
    }

    /** What the modules show. */
    Signature signature(Candidate fault) {
        return Predictions.of(circuit).signature(fault);
    }

    /**
     * What a point really shows with a fault. Without misreading: what the model keeps for that is taken out. Where a reading may fall into
     * more than one class because units differ, it falls by chance, and whether the eye sees a loose plug is by chance too.
     */
    int shown(Candidate fault, TestCard card, Random random) {
        Map<String, Double> chances =
                Predictions.of(circuit).of(fault, card.test()).outcomes();
        double least =
                chances.values().stream().mapToDouble(Double::doubleValue).min().orElse(0);
        // a loose plug that is seen as often as not is no misreading
        double stray = card.test() instanceof FieldTest.Look && least > MISREAD ? 0 : least;
        double at = random.nextDouble() * (1 - stray * chances.size());
        int last = 0;
        for (int o = 0; o < card.outcomes().size(); o++) {
            double chance = chances.getOrDefault(card.outcomes().get(o), 0.0) - stray;
            if (chance > 1e-12) {
                last = o;
                at -= chance;
                if (at < 0) {
                    return o;
                }
            }
        }
        return last;
    }
}
