package ringout.graph.bus;

import ringout.graph.Wire;
import ringout.model.Datum;
import ringout.model.Lead;

/**
 * What one lead joins between two hubs.
 *
 * @param index number among all links of the circuit
 * @param lead the row
 * @param from hub at one end
 * @param to hub at the other end
 * @param legs which legs are intact
 * @param crossed whether H of one end goes to L of the other
 * @param wire a conductor of the link: the one at H of the from hub where there is one
 */
public record BusLink(int index, Lead lead, int from, int to, Legs legs, boolean crossed, Wire wire) {
    /** Which legs of a pair a lead joins. */
    public enum Legs {
        /** Both conductors. */
        BOTH,
        /** Only one, at the H leg of the from hub. */
        HIGH_ONLY,
        /** Only one, at the L leg of the from hub. */
        LOW_ONLY
    }

    /** Length of the lead in mm. */
    public Datum<Double> lengthMm() {
        return wire.lengthMm();
    }

    /** Whether it is a pair. */
    public boolean pair() {
        return legs == Legs.BOTH;
    }

    /** The hub at the other end. */
    public int other(int hub) {
        return hub == from ? to : from;
    }
}
