package ringout.graph.bus;

import java.util.List;
import ringout.graph.Wire;
import ringout.model.Datum;
import ringout.model.Lead;

/**
 * What joins two hubs: the pair of one lead, half of it, or one conductor each of two leads.
 *
 * @param index number among all links of the circuit
 * @param from hub at one end
 * @param to hub at the other end
 * @param legs which legs are intact
 * @param crossed whether H of one end goes to L of the other
 * @param wires its conductors, first the one at H of the from hub where there is one
 */
public record BusLink(int index, int from, int to, Legs legs, boolean crossed, List<Wire> wires) {
    /** Which legs of a pair are joined. */
    public enum Legs {
        /** Both conductors, in one lead. */
        BOTH,
        /** Both conductors, each in a lead of its own. */
        SPLIT,
        /** Only one, at the H leg of the from hub. */
        HIGH_ONLY,
        /** Only one, at the L leg of the from hub. */
        LOW_ONLY
    }

    /** The row of its first conductor. */
    public Lead lead() {
        return wires.get(0).lead();
    }

    /** All rows it is made of: one, or two when the legs run in two leads or in a list with one row a conductor. */
    public List<Lead> leads() {
        return wires.stream().map(Wire::lead).distinct().toList();
    }

    /** Length of the lead in mm, of the longer one when there are two. */
    public Datum<Double> lengthMm() {
        Datum<Double> longest = wires.get(0).lengthMm();
        for (Wire wire : wires) {
            Datum<Double> length = wire.lengthMm();
            if (!length.isKnown()) {
                return length;
            }
            longest = length.or(0.0) > longest.or(0.0) ? length : longest;
        }
        return longest;
    }

    /** Whether both legs are joined. */
    public boolean pair() {
        return legs == Legs.BOTH || legs == Legs.SPLIT;
    }

    /** The hub at the other end. */
    public int other(int hub) {
        return hub == from ? to : from;
    }
}
