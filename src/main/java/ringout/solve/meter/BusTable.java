package ringout.solve.meter;

import java.util.List;
import java.util.Optional;
import ringout.model.Lead;

/**
 * What an ohmmeter shows between the legs of a bus at every plug, mated and pulled, healthy and with each single fault of
 * the chain; power off.
 *
 * @param bus name of the bus
 * @param state name of the state of the aircraft
 * @param spots where and how the meter is put on, along the trunk
 * @param rows the true states of the bus, healthy first
 */
public record BusTable(String bus, String state, List<Spot> spots, List<Row> rows) {
    /** How the meter is put on at a plug. */
    public enum Side {
        /** Everything mated, from behind the plug. */
        MATED,
        /** Plug pulled, into the lead. */
        INTO_LEAD,
        /** Plug pulled, into the unit. */
        INTO_UNIT
    }

    /**
     * Where the meter is put on.
     *
     * @param plug UNIT-PLUG
     * @param lead the lead mated there
     * @param side how
     */
    public record Spot(String plug, Lead lead, Side side) {}

    /**
     * The readings in one true state of the bus.
     *
     * @param fault what is wrong; nothing when the bus is as listed
     * @param readings one a spot, in the same order
     */
    public record Row(Optional<Fault> fault, List<Reading> readings) {}
}
