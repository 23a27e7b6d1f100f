package ringout.solve.dc;

import java.util.Optional;

/** The answer to "what flows": a solution, or why there is none. */
public sealed interface DcOutcome
        permits SolvedPoint, DcOutcome.VoltageCollapse, DcOutcome.Overload, DcOutcome.Unsettled {

    /**
     * The loads ask for more than sources and conductors can carry: the voltage collapses.
     *
     * @param element number of the load or regulator whose voltage gives way first
     * @param margin the part of all constant-current and constant-power loads, scaled together, that can be carried:
     *     below 1; 0 if none can
     * @param last the operating point just before the collapse, if any load can be carried
     */
    record VoltageCollapse(int element, double margin, Optional<SolvedPoint> last) implements DcOutcome {}

    /**
     * A regulator is asked for more than its current limit, and lowering its voltage does not relieve it.
     *
     * @param element number of the regulator
     * @param amps output current that is asked for; infinity if its loads collapse even without the limit
     * @param limitAmps its current limit
     * @param unlimited the operating point as if regulators had no limits, if there is one
     */
    record Overload(int element, double amps, double limitAmps, Optional<SolvedPoint> unlimited) implements DcOutcome {}

    /** Diodes, regulators or limits did not come to rest; nothing is claimed about the circuit. */
    record Unsettled() implements DcOutcome {}
}
