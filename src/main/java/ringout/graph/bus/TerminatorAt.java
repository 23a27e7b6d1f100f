package ringout.graph.bus;

import ringout.graph.Terminators;

/**
 * A terminator at its place on a bus: of a port, or made of resistors inside a unit.
 *
 * @param hub the hub it sits at
 * @param unit number of the unit it belongs to
 * @param seen whether it is in the circuit
 * @param how how it is fitted
 */
public record TerminatorAt(int hub, int unit, Terminators.Seen seen, How how) {
    /** How a terminator is fitted. */
    public enum How {
        /** By a switch, a jumper or a parameter. */
        SWITCH,
        /** A plug of its own. */
        PLUG,
        /** Built in for good. */
        BUILT_IN
    }

    /** Whether it is known to be in the circuit. */
    public boolean on() {
        return seen == Terminators.Seen.ON;
    }

    /** Whether it is not known. */
    public boolean unknown() {
        return seen == Terminators.Seen.UNKNOWN;
    }
}
