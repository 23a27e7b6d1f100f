package ringout.solve.power;

import java.util.List;
import java.util.Optional;
import ringout.graph.Circuit;

/**
 * The answer to "what flows" for one state and one case of loads: a {@link PowerFlow} with every voltage and current, or
 * why there is none. A case of a circuit is solved once and kept while there is room.
 */
public sealed interface OperatingPoint permits PowerFlow, OperatingPoint.Collapse, OperatingPoint.Unsettled {
    /** {@return the operating point of a circuit in a case of loads} */
    static OperatingPoint of(Circuit circuit, LoadCase of) {
        return circuit.know(OperatingPoints.class, OperatingPoints::new).at(of);
    }

    /**
     * By what factor the loads of a case could grow together before the voltage collapses.
     *
     * @return the largest factor on all currents and powers with which an operating point exists, to seven digits (fewer when regulators follow a low input);
     *     infinity when they never collapse it, below 1 when they do as they are
     */
    static double margin(Circuit circuit, LoadCase of) {
        return circuit.know(OperatingPoints.class, OperatingPoints::new).margin(of);
    }

    /** {@return the case of loads it was asked for} */
    LoadCase loadCase();

    /** {@return what the list does not give and was assumed or left out} */
    List<Assumption> assumed();

    /**
     * The loads ask for more than packs and conductors can carry: the voltage collapses. No voltage is given.
     *
     * @param loadCase the case of loads
     * @param assumed what was assumed or left out
     * @param limiting what gives way first, as the user names it: the unit and its rail
     * @param unit number of its unit
     * @param margin the part of all currents and powers, scaled together, that can be carried; below 1
     * @param last what flows when they are scaled down to just that part, if anything can be carried
     */
    record Collapse(
            LoadCase loadCase,
            List<Assumption> assumed,
            String limiting,
            int unit,
            double margin,
            Optional<PowerFlow> last)
            implements OperatingPoint {}

    /**
     * Diodes and regulators did not come to rest; nothing is claimed.
     *
     * @param loadCase the case of loads
     * @param assumed what was assumed or left out
     */
    record Unsettled(LoadCase loadCase, List<Assumption> assumed) implements OperatingPoint {}
}
