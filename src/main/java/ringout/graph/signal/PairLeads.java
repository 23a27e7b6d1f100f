package ringout.graph.signal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Lead;
import ringout.model.PinRole;

/**
 * Leads that carry the pairs of point-to-point ports (Ethernet, digital video, USB): which pair of one end meets which of the
 * other. Pairs of a declared bus port (RS-485) are not among them.
 */
public final class PairLeads {
    /**
     * A pair of one plug.
     *
     * @param unit number of its unit
     * @param plug number of the plug in its type
     * @param name name of the pair, as its pins say in "inside"; may be empty
     */
    public record Pair(int unit, int plug, String name) {}

    /**
     * What the two conductors of a pair do.
     *
     * @param from the pair at the from end of the lead
     * @param plus conductor at its plus contact, if there is one
     * @param minus conductor at its minus contact, if there is one
     */
    public record Run(Pair from, Optional<Wire> plus, Optional<Wire> minus) {}

    /**
     * A lead with its pairs.
     *
     * @param lead the row
     * @param runs its pairs, by the first conductor of each
     */
    public record PairLead(Lead lead, List<Run> runs) {}

    private final Wiring wiring;
    private final Map<String, Map<Pair, Run>> byLead = new LinkedHashMap<>();
    private final Map<String, Lead> rows = new LinkedHashMap<>();

    private PairLeads(Circuit circuit) {
        this.wiring = circuit.wiring();
        for (Wire wire : wiring.wires()) {
            Optional<Pair> from = pairOf(wiring, wire.fromPin());
            if (from.isPresent() && pairOf(wiring, wire.toPin()).isPresent() && circuit.mated(wire)) {
                add(wire, from.get());
            }
        }
    }

    /** The leads of a circuit with pairs, found once, in the order of the rows. */
    public static List<PairLead> of(Circuit circuit) {
        PairLeads all = circuit.know(PairLeads.class, PairLeads::new);
        List<PairLead> found = new ArrayList<>();
        all.byLead.forEach((id, runs) ->
                found.add(new PairLead(Objects.requireNonNull(all.rows.get(id)), List.copyOf(runs.values()))));
        return Collections.unmodifiableList(found);
    }

    private void add(Wire wire, Pair pair) {
        rows.putIfAbsent(wire.lead().id(), wire.lead());
        Map<Pair, Run> runs = byLead.computeIfAbsent(wire.lead().id(), key -> new LinkedHashMap<>());
        Run known = runs.getOrDefault(pair, new Run(pair, Optional.empty(), Optional.empty()));
        boolean plus = wiring.is(wire.fromPin(), PinRole.PAIR_P);
        runs.put(
                pair,
                plus
                        ? new Run(pair, Optional.of(wire), known.minus())
                        : new Run(pair, known.plus(), Optional.of(wire)));
    }

    /** The pair a contact belongs to; nothing when it is none of a point-to-point port. */
    public static Optional<Pair> pairOf(Wiring wiring, int pin) {
        if (!wiring.is(pin, PinRole.PAIR_P) && !wiring.is(pin, PinRole.PAIR_N)) {
            return Optional.empty();
        }
        int unit = wiring.unitOf(pin);
        String name = wiring.pin(pin).inside().or("");
        boolean bus =
                !name.isEmpty() && wiring.directory().layout(unit).port(name).isPresent();
        return bus ? Optional.empty() : Optional.of(new Pair(unit, wiring.plugIndex(pin), name));
    }
}
