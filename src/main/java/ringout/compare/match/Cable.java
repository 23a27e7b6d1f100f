package ringout.compare.match;

import java.util.List;
import ringout.graph.Wire;
import ringout.model.Lead;

/**
 * A lead with all its rows: one row for the whole lead, or a row for each wire.
 *
 * @param id as on its label
 * @param rows the rows of the list, in its order; at least one
 * @param wires its conductors; none where an end points to nothing aboard
 */
public record Cable(String id, List<Lead> rows, List<Wire> wires) {
    /** Keeps its own copies. */
    public Cable {
        rows = List.copyOf(rows);
        wires = List.copyOf(wires);
    }

    /** The first row. */
    public Lead row() {
        return rows.get(0);
    }
}
