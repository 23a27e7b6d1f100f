package ringout.graph.bus;

import ringout.graph.Part;
import ringout.graph.Terminators;

/**
 * A terminator at its place on a bus.
 *
 * @param hub the hub it sits at
 * @param part the part
 * @param port the port it belongs to
 * @param seen whether it is in the circuit
 */
public record TerminatorAt(int hub, Part part, Part.Terminator port, Terminators.Seen seen) {
    /** Whether it is known to be in the circuit. */
    public boolean on() {
        return seen == Terminators.Seen.ON;
    }

    /** Whether it is not known. */
    public boolean unknown() {
        return seen == Terminators.Seen.UNKNOWN;
    }
}
