package ringout.trace.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Candidates;
import ringout.trace.candidate.FaultKind;
import ringout.trace.candidate.PriorTable;
import ringout.trace.candidate.Recency;
import ringout.trace.predict.Behaviour;
import ringout.trace.predict.Predictions;
import ringout.trace.predict.TestCard;
import ringout.trace.predict.TestDeck;

/**
 * What a search starts from: the candidates that can explain what is seen, weighed by it.
 *
 * @param circuit the aircraft in the state it is searched in
 * @param scene what is seen
 * @param priors weights before anything is known
 * @param suspects candidates that can explain it, by falling weight
 * @param weights how likely each is after what is seen, not normalised, in the same order
 * @param single whether each suspect explains all that is seen; else each explains a part, and two must be present
 * @param rare the part that the suspects have of all weight: how likely beforehand that one of them comes up
 * @param fit how what is seen speaks for a fault
 * @param behind what is commanded through the silent units
 */
record CaseFile(
        Circuit circuit,
        Scene scene,
        PriorTable priors,
        List<Candidate> suspects,
        List<Double> weights,
        boolean single,
        double rare,
        SceneFit fit,
        Set<String> behind) {
    /** A suspect this much less likely than the likeliest is left out: it would never come to be looked at. */
    private static final double FORGOTTEN = 1e-5;

    /** Keeps its own copies. */
    CaseFile {
        suspects = List.copyOf(suspects);
        weights = List.copyOf(weights);
        behind = Names.copy(behind);
    }

    static CaseFile of(Circuit circuit, Scene scene, PriorTable priors) {
        Candidates candidates = candidates(circuit, scene, priors);
        Predictions predictions = Predictions.of(circuit);
        Map<String, Set<String>> behind = behind(circuit, scene);
        SceneFit fit = new SceneFit(scene, Behaviour.of(circuit).modules(), behind);
        Map<Candidate, Double> whole = new HashMap<>();
        Map<Candidate, Double> part = new HashMap<>();
        SocketShares shares = new SocketShares(candidates.all());
        for (Candidate candidate : candidates.all()) {
            double weight = shares.weight(candidate);
            double likelihood = fit.of(predictions.signature(candidate));
            if (weight > 0 && likelihood > SceneFit.EXPLAINS) {
                whole.put(candidate, weight * likelihood);
            } else if (weight > 0 && fit.part(predictions.signature(candidate))) {
                part.put(candidate, weight);
            }
        }
        Map<Candidate, Double> kept = whole.isEmpty() ? part : whole;
        double most = kept.values().stream().mapToDouble(w -> w).max().orElse(0);
        List<Candidate> suspects = candidates.all().stream()
                .filter(one -> kept.getOrDefault(one, 0.0) > most * FORGOTTEN)
                .sorted((a, b) -> Double.compare(kept.getOrDefault(b, 0.0), kept.getOrDefault(a, 0.0)))
                .toList();
        List<Double> weights =
                suspects.stream().map(one -> kept.getOrDefault(one, 0.0)).toList();
        Set<String> all = new TreeSet<>();
        behind.values().forEach(all::addAll);
        all.removeAll(scene.silent());
        double total = candidates.all().stream().mapToDouble(shares::weight).sum();
        double rare = weights.stream().mapToDouble(w -> w).sum() / total;
        return new CaseFile(circuit, scene, priors, suspects, weights, !whole.isEmpty(), rare, fit, all);
    }

    private static Candidates candidates(Circuit circuit, Scene scene, PriorTable priors) {
        boolean usual = priors.equals(PriorTable.standard()) && !scene.tellsOfChange();
        return usual
                ? Candidates.of(circuit)
                : Candidates.of(
                        circuit,
                        priors,
                        Recency.of(circuit.wiring().aircraft(), scene.touched(), scene.crash(), scene.update()));
    }

    private static Map<String, Set<String>> behind(Circuit circuit, Scene scene) {
        Behaviour behaviour = Behaviour.of(circuit);
        Map<String, Set<String>> behind = new TreeMap<>();
        for (String unit : scene.silent()) {
            Optional<Candidate> dead = Candidates.of(circuit).find(FaultKind.DEAD_UNIT.words() + ": " + unit);
            dead.ifPresent(one -> behind.put(
                    unit, SceneFit.behind(behaviour, Predictions.of(circuit).signature(one))));
        }
        return behind;
    }

    /** The tests that are made where the suspects are, and those asked for besides, in the order of the deck. */
    List<TestCard> cards(Set<String> besides) {
        Concern concern = new Concern(circuit, scene, suspects);
        Chances chances = Chances.of(circuit);
        List<TestCard> cards = new ArrayList<>();
        for (TestCard card : TestDeck.of(circuit)) {
            boolean telling = concern.has(card) && !answered(card) && differs(chances, card);
            if (telling || besides.contains(card.id())) {
                cards.add(card);
            }
        }
        return cards;
    }

    /**
     * What was seen without a tool is not asked again; nor unit by unit who else is silent: that is one glance, asked for as one. Whether a unit
     * behind a silent one still does something is worth a look.
     */
    private boolean answered(TestCard card) {
        String unit = card.id().substring(card.id().indexOf(' ') + 1);
        return (card.id().startsWith("answers ")
                        && (!behind.contains(unit)
                                || scene.silent().contains(unit)
                                || fit.alive().contains(unit)))
                || (card.id().startsWith("light ")
                        && (scene.lit().contains(unit) || scene.dark().contains(unit)));
    }

    private boolean differs(Chances chances, TestCard card) {
        String first =
                suspects.isEmpty() ? "" : chances.shows(card, suspects.get(0)).likeliest();
        return suspects.stream()
                .anyMatch(one -> !chances.shows(card, one).likeliest().equals(first));
    }
}
