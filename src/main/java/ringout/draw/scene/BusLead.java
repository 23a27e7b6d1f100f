package ringout.draw.scene;

import java.util.OptionalDouble;

/**
 * A lead of a bus: a pair of conductors.
 *
 * @param id identifier, such as {@code W65}
 * @param label as printed
 * @param lengthM its length, m; empty when it is not known
 * @param legs which of its conductors are there
 * @param presence whether the lead is there
 */
public record BusLead(String id, String label, OptionalDouble lengthM, Legs legs, Presence presence) {
    /** Which conductors of a pair are there. */
    public enum Legs {
        /** Both. */
        BOTH,
        /** The high leg only. */
        HIGH_ONLY,
        /** The low leg only. */
        LOW_ONLY
    }

    /** A lead that is there with both conductors. */
    public BusLead(String id, String label, double lengthM) {
        this(id, label, OptionalDouble.of(lengthM), Legs.BOTH, Presence.FITTED);
    }

    /** Refuses a length that is not a positive number. */
    public BusLead {
        if (lengthM.isPresent() && !(lengthM.getAsDouble() > 0 && Double.isFinite(lengthM.getAsDouble()))) {
            throw new IllegalArgumentException("lead " + id + " has length " + lengthM.getAsDouble() + " m");
        }
    }
}
