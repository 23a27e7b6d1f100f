package ringout.trace.session;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import ringout.graph.Circuit;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Defect;
import ringout.trace.candidate.FaultKind;
import ringout.trace.candidate.Opening;
import ringout.trace.candidate.Repair;
import ringout.trace.predict.Prediction;
import ringout.trace.predict.Predictions;
import ringout.trace.predict.TestCard;

/** What tests show with candidates, each looked up once a circuit. */
final class Chances {
    /**
     * Something not in the model leaves most readings as on a sound aircraft; the rest may be anything. Judgement, no source.
     */
    private static final double AS_SOUND = 0.5;

    /** An aircraft in which nothing is wrong, in the form of a candidate. */
    private static final Candidate SOUND = new Candidate(
            "sound",
            FaultKind.INTERFERENCE,
            new Defect.Inside(-1, Defect.Inside.How.MUTE),
            "nothing wrong",
            List.of(),
            new Repair(Repair.Sort.SETTING, "", "", 0),
            Opening.NONE,
            0,
            new java.util.TreeSet<>(),
            List.of());

    private final Circuit circuit;
    private final Map<String, Map<String, Prediction>> known = new ConcurrentHashMap<>();

    private Chances(Circuit circuit) {
        this.circuit = circuit;
    }

    static Chances of(Circuit circuit) {
        return circuit.know(Chances.class, Chances::new);
    }

    /** What a test shows with a candidate. */
    Prediction shows(TestCard card, Candidate candidate) {
        Map<String, Prediction> row = known.computeIfAbsent(card.id(), key -> new ConcurrentHashMap<>());
        Prediction before = row.get(candidate.id());
        if (before != null) {
            return before;
        }
        Prediction fresh = Predictions.of(circuit).of(candidate, card.test());
        row.put(candidate.id(), fresh);
        return fresh;
    }

    /** What a test shows on the sound aircraft. */
    Prediction sound(TestCard card) {
        return shows(card, SOUND);
    }

    /** The chances of the outcomes of a test in their order, with a candidate. */
    double[] row(TestCard card, Candidate candidate) {
        return inOrder(card, shows(card, candidate));
    }

    /** The chances of the outcomes of a test with something that is not in the model. */
    double[] unknown(TestCard card) {
        double[] row = inOrder(card, sound(card));
        for (int o = 0; o < row.length; o++) {
            row[o] = AS_SOUND * row[o] + (1 - AS_SOUND) / row.length;
        }
        return row;
    }

    private static double[] inOrder(TestCard card, Prediction shown) {
        return card.outcomes().stream()
                .mapToDouble(outcome -> shown.outcomes().getOrDefault(outcome, 0.0))
                .toArray();
    }
}
