package ringout.trace.candidate;

/**
 * Kinds of fault, with the weight one place of it has before anything is known of the place. The weights are judgement from
 * practice, no source; {@link PriorTable} lets an operator put his own in their stead.
 */
public enum FaultKind {
    /** A conductor is broken, or a contact of it came out or was crimped badly. */
    OPEN_CONDUCTOR("open conductor", 1),
    /** All conductors of a bus pair in one lead are broken: the lead was cut, pinched or torn. */
    OPEN_PAIR("open pair", 1),
    /** A plug is not fully home. */
    NOT_SEATED("plug not seated", 3),
    /** A contact has too much resistance. */
    POOR_CONTACT("high-resistance contact", 1),
    /** A conductor touches 0V. */
    SHORT_TO_ZERO("short to 0V", 0.4),
    /** A conductor touches a supply. */
    SHORT_TO_RAIL("short to a rail", 0.4),
    /** A conductor touches another signal, or the legs of a pair touch. */
    SHORT_TO_NEIGHBOUR("short to the neighbour", 0.4),
    /** The legs of a pair are exchanged. */
    SWAPPED_PAIR("swapped pair", 0.02),
    /** Two neighbouring conductors are exchanged. */
    SWAPPED_PINS("swapped pins", 0.02),
    /** A plug is in a look-alike socket. */
    WRONG_PORT("wrong port", 0.05),
    /** A terminator that should be on is off. */
    TERMINATOR_MISSING("missing terminator", 1),
    /** A terminator that should be off is on. */
    TERMINATOR_EXTRA("extra terminator", 1),
    /** A terminator is on at one unit instead of another. */
    TERMINATOR_MISPLACED("misplaced terminator", 1),
    /** Two units have one address. */
    SAME_ADDRESS("duplicate address", 0.7),
    /** A bus port is set to another bit rate. */
    WRONG_RATE("wrong bit rate", 0.7),
    /** A serial port is set to another function. */
    WRONG_FUNCTION("wrong port function", 0.7),
    /** A source gives nothing. */
    RAIL_DOWN("rail unpowered", 1),
    /** A source gives too little under load. */
    RAIL_SAGS("rail sagging", 1),
    /** A fuse is blown, or a switch, a link or an isolator does not conduct. */
    OPEN_PART("open fuse or switch", 1),
    /** A return conductor is broken. */
    RETURN_OPEN("return open", 0.5),
    /** A return has too much resistance. */
    RETURN_THIN("return thin", 0.5),
    /** A unit is dead and draws nothing. */
    DEAD_UNIT("dead unit", 1),
    /** A unit is lit and draws, but its bus or serial front end is dead. */
    DEAD_TRANSCEIVER("dead transceiver", 1),
    /** A unit starts over and over. */
    RESTART_LOOP("restart loop", 0.5),
    /** The front end of a unit joins the legs of the bus. */
    HOLDS_BUS("unit holds the bus", 0.1),
    /** The copper between two bus sockets of a unit is open inside. */
    PASS_THROUGH_OPEN("pass-through open inside", 0.5),
    /** A power pair beside a signal disturbs it. */
    INTERFERENCE("interference", 0.2);

    private final String words;
    private final double base;

    FaultKind(String words, double base) {
        this.words = words;
        this.base = base;
    }

    /** What it is called, in the trade's words; also the key of its row in the table of priors. */
    public String words() {
        return words;
    }

    /** The weight of one place by judgement. */
    public double base() {
        return base;
    }
}
