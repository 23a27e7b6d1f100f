package ringout.solve.meter;

import java.util.List;
import ringout.model.Lead;

/**
 * One thing that may be wrong, as a change of the network.
 *
 * @param kind what is wrong
 * @param object what it is wrong with, by its name in the list: a lead, a plug, a unit or a part
 * @param details where exactly: pins, or the other object concerned
 * @param rows the rows of the list concerned
 * @param changes what it does to the network
 */
public record Fault(Kind kind, String object, List<String> details, List<Lead> rows, List<Change> changes) {
    /** What may be wrong. */
    public enum Kind {
        /** A conductor of a lead is broken, or one of its contacts: lead; pin at its from end. */
        OPEN_CONDUCTOR,
        /** A contact beside the meter's point is open: lead; pin. */
        OPEN_CONTACT,
        /** Both legs of a bus are broken between two places: lead; the places. */
        OPEN_PAIR,
        /** A plug is not seated: plug. */
        UNSEATED,
        /** A fuse is blown, or a switch, a link or a resistor is open: part. */
        OPEN_PART,
        /** A switch or isolator is closed that should be open: part. */
        CLOSED_SWITCH,
        /** A plug that should be pulled is mated: plug. */
        STILL_MATED,
        /** A terminator that should be on is not: unit. */
        TERMINATOR_MISSING,
        /** A terminator that should be off is on: unit. */
        TERMINATOR_EXTRA,
        /** A terminator is on at one unit instead of another: the unit it is at; the unit it belongs to. */
        TERMINATOR_MOVED,
        /** All terminators of the bus are missing: the first unit; all units. */
        TERMINATORS_ALL_MISSING,
        /** Two conductors of a lead touch: lead; their pins. */
        SHORT,
        /** Two conductors of a lead are crossed at one end: lead; their pins. */
        CROSSED,
        /** A source is off or dead: unit. */
        SOURCE_OFF,
        /** A lead is in a look-alike socket: lead; the socket it belongs in, the one it is in. */
        WRONG_SOCKET
    }
}
