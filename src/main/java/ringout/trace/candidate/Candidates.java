package ringout.trace.candidate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.graph.Circuit;

/**
 * Every single fault that an aircraft in one state can have, each at each place it can sit: conductors, contacts, plugs,
 * look-alike sockets, terminators, settings, sources, parts and units.
 *
 * <p>Does not list faults of two things at once, nor of what the list does not name: frame, antennas without a lead, software
 * beyond a port's settings.
 */
public final class Candidates {
    private final List<Candidate> all;
    private final PriorTable priors;
    private final Map<String, Candidate> byId = new LinkedHashMap<>();

    private Candidates(List<Candidate> all, PriorTable priors) {
        this.all = all;
        this.priors = priors;
        all.forEach(candidate -> byId.put(candidate.id(), candidate));
    }

    /** All candidates with the standard weights and what the record tells of recent work. */
    public static Candidates of(Circuit circuit) {
        return circuit.know(
                Candidates.class,
                one -> of(one, PriorTable.standard(), Recency.of(one.wiring().aircraft())));
    }

    /** All candidates with weights and recent work as given. */
    public static Candidates of(Circuit circuit, PriorTable priors, Recency recency) {
        Bench bench = new Bench(circuit, priors, recency);
        WireCandidates.addTo(bench);
        PlugCandidates.addTo(bench);
        TouchCandidates.addTo(bench);
        BusCandidates.addTo(bench);
        UnitCandidates.addTo(bench);
        return new Candidates(bench.all(), priors);
    }

    /** All of them, by sort of fault and then in the order of the rows. */
    public List<Candidate> all() {
        return all;
    }

    /** One by its identity. */
    public Optional<Candidate> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** The table of weights used. */
    public PriorTable priors() {
        return priors;
    }

    /** Candidates that one repair clears, by identity of the repair, in the order they are first met. */
    public static Map<String, List<Candidate>> byRepair(List<Candidate> some) {
        Map<String, List<Candidate>> found = new LinkedHashMap<>();
        some.forEach(candidate -> found.computeIfAbsent(candidate.repair().id(), key -> new ArrayList<>())
                .add(candidate));
        return Collections.unmodifiableMap(found);
    }

    /** Candidates whose repair lies behind the same lids, by the names of the lids; "" for what is open to the hand. */
    public static Map<String, List<Candidate>> byOpening(List<Candidate> some) {
        Map<String, List<Candidate>> found = new LinkedHashMap<>();
        some.forEach(candidate -> found.computeIfAbsent(
                        String.join(", ", candidate.opening().covers()), key -> new ArrayList<>())
                .add(candidate));
        return Collections.unmodifiableMap(found);
    }
}
