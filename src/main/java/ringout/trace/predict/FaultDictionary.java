package ringout.trace.predict;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Candidates;

/**
 * Every single fault of a circuit with what the modules show of it. Faults with one signature cannot be told apart without a
 * meter; faults with none are latent: no module shows them.
 */
public final class FaultDictionary {
    private final Map<Candidate, Signature> entries = new LinkedHashMap<>();
    private final Map<Signature, List<Candidate>> classes = new LinkedHashMap<>();

    private FaultDictionary(Circuit circuit, List<Candidate> candidates) {
        Predictions predictions = Predictions.of(circuit);
        for (Candidate candidate : candidates) {
            Signature seen = predictions.signature(candidate);
            entries.put(candidate, seen);
            classes.computeIfAbsent(seen, key -> new ArrayList<>()).add(candidate);
        }
    }

    /** The dictionary of a circuit, made once. */
    public static FaultDictionary of(Circuit circuit) {
        return circuit.know(
                FaultDictionary.class,
                one -> new FaultDictionary(one, Candidates.of(one).all()));
    }

    /** Every candidate with its signature, in the order of the candidates. */
    public Map<Candidate, Signature> entries() {
        return Collections.unmodifiableMap(entries);
    }

    /** Candidates that look alike at the modules, by signature, in the order they are first met. */
    public Map<Signature, List<Candidate>> classes() {
        return Collections.unmodifiableMap(classes);
    }

    /** Candidates that no module shows. */
    public List<Candidate> latent() {
        return entries.entrySet().stream()
                .filter(entry -> entry.getValue().latent())
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The share of all candidates that no module shows, 0 to 1. */
    public double latentShare() {
        return entries.isEmpty() ? 0 : (double) latent().size() / entries.size();
    }

    /** The share of all weight that no module shows, 0 to 1: what is likely counts more. */
    public double latentWeight() {
        double all = entries.keySet().stream().mapToDouble(Candidate::weight).sum();
        double hidden = latent().stream().mapToDouble(Candidate::weight).sum();
        return all == 0 ? 0 : hidden / all;
    }

    /** Candidates with which just these units are silent, whoever else comes and goes, the likeliest first. */
    public List<Candidate> silencing(Set<String> units) {
        return entries.entrySet().stream()
                .filter(entry -> entry.getValue().silent().equals(units))
                .map(Map.Entry::getKey)
                .sorted((a, b) -> Double.compare(b.weight(), a.weight()))
                .toList();
    }
}
