package ringout.sheet.harness;

import java.util.List;
import ringout.graph.Wire;

/**
 * One line of a ring-out: two contacts that must be joined by the harness alone.
 *
 * @param from contact the meter starts at
 * @param to contact it ends at
 * @param wires the conductors between, more than one where a joint lies between
 */
public record Continuity(int from, int to, List<Wire> wires) {
    /** Keeps its own copy. */
    public Continuity {
        wires = List.copyOf(wires);
    }
}
