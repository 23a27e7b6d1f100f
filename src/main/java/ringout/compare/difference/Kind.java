package ringout.compare.difference;

import ringout.finding.Severity;

/** Kinds of differences, by the meaning of the connection. Each has its usual fate and the consequence if nothing more is known. */
public enum Kind {
    /** A lead that the base does not have. */
    LEAD_NEW("lead not in the base", Fate.TRACE, Severity.S3),
    /** A lead that only the base has. */
    LEAD_GONE("lead gone", Fate.PUT_BACK, Severity.S3),
    /** One end, or both, at another plug. */
    END_MOVED("end moved", Fate.CONFIGURE, Severity.S3),
    /** Two leads that took each other's place. */
    ENDS_EXCHANGED("ends exchanged", Fate.PUT_BACK, Severity.S3),
    /** Conductors of one lead that changed places. */
    CROSSED("conductors crossed", Fate.PUT_BACK, Severity.S3),
    /** Conductors on other contacts of the same plugs. */
    REWIRED("conductors on other contacts", Fate.TRACE, Severity.S3),
    /** A conductor more in a lead. */
    CONDUCTOR_NEW("conductor not in the base", Fate.TRACE, Severity.S3),
    /** A conductor less in a lead. */
    CONDUCTOR_GONE("conductor gone", Fate.PUT_BACK, Severity.S3),
    /** Another name on the same lead. */
    LABEL("label", Fate.KEEP, Severity.S5),
    /** Longer or shorter. */
    LENGTH("length", Fate.KEEP, Severity.S5),
    /** Another size of wire. */
    SIZE("wire size", Fate.ENGINEERING, Severity.S4),
    /** Another colour. */
    COLOUR("colour", Fate.CHANGE_RECORD, Severity.S4),
    /** Fuse in a lead. */
    FUSE("fuse", Fate.ENGINEERING, Severity.S3),
    /** Another plug family, key, plating or half. */
    CONNECTOR("connector", Fate.ENGINEERING, Severity.S4),
    /** Anything else a lead is made of. */
    MAKE("make of the lead", Fate.KEEP, Severity.S5),
    /** A unit that the base does not have. */
    UNIT_NEW("unit not in the base", Fate.TRACE, Severity.S3),
    /** A unit that only the base has. */
    UNIT_GONE("unit gone", Fate.STATE, Severity.S3),
    /** Another reference for the same box. */
    UNIT_NAME("reference of the unit", Fate.KEEP, Severity.S5),
    /** A box of another type in its place. */
    UNIT_TYPE("unit of another type", Fate.ENGINEERING, Severity.S3),
    /** Another box of the same type. */
    SERIAL("serial number", Fate.RECORD, Severity.S5),
    /** Other firmware. */
    FIRMWARE("firmware", Fate.CHANGE_RECORD, Severity.S4),
    /** Node or device address. */
    ADDRESS("address", Fate.PUT_BACK, Severity.S3),
    /** Bit rate, baud rate, protocol. */
    RATE("rate or protocol", Fate.PUT_BACK, Severity.S3),
    /** Terminator on or off. */
    TERMINATOR("terminator", Fate.PUT_BACK, Severity.S3),
    /** Where a unit sits. */
    POSITION("place of the unit", Fate.CONFIGURE, Severity.S4),
    /** How a unit is turned, as built and as set. */
    ORIENTATION("orientation", Fate.PUT_BACK, Severity.S3),
    /** Any other setting of a unit. */
    SETTING("setting", Fate.CHANGE_RECORD, Severity.S4),
    /** What a unit says of itself, or was measured of it. */
    READ_OF_UNIT("reading of the unit", Fate.RECORD, Severity.S5),
    /** Contacts of a unit type. */
    PINOUT("contacts of the type", Fate.ENGINEERING, Severity.S3),
    /** Ratings of a unit type. */
    RATING("rating of the type", Fate.ENGINEERING, Severity.S4),
    /** Anything else of a unit type. */
    TYPE("data of the type", Fate.CHANGE_RECORD, Severity.S5),
    /** Splice, clamp or stud. */
    JOINT("joint", Fate.ENGINEERING, Severity.S4),
    /** Declaration of a bus or of its messages. */
    BUS("bus", Fate.CHANGE_RECORD, Severity.S4),
    /** Frame table, covers, weights, loops. */
    AIRFRAME("airframe", Fate.ENGINEERING, Severity.S4),
    /** Declared state or event. */
    STATE("state or event", Fate.STATE, Severity.S5),
    /** What the aircraft must be able to do. */
    FUNCTION("function", Fate.CHANGE_RECORD, Severity.S4),
    /** Rule set, limits and colours. */
    RULES("rules of the project", Fate.ENGINEERING, Severity.S4),
    /** A finding accepted. */
    WAIVER("waiver", Fate.CHANGE_RECORD, Severity.S4),
    /** What a meter said. */
    READING("reading", Fate.RECORD, Severity.S5),
    /** Steps, signatures, photos and the rest of the record. */
    RECORD("record", Fate.RECORD, Severity.S5);

    private final String word;
    private final Fate fate;
    private final Severity severity;

    Kind(String word, Fate fate, Severity severity) {
        this.word = word;
        this.fate = fate;
        this.severity = severity;
    }

    /** The kind in words. */
    public String word() {
        return word;
    }

    /** What is usually decided about it. */
    public Fate fate() {
        return fate;
    }

    /** The consequence as long as no check says more. */
    public Severity severity() {
        return severity;
    }

    /** Whether it changes what is joined to what. */
    public boolean ofConnections() {
        return switch (this) {
            case LEAD_NEW, LEAD_GONE, END_MOVED, ENDS_EXCHANGED, CROSSED, REWIRED, CONDUCTOR_NEW, CONDUCTOR_GONE ->
                true;
            default -> false;
        };
    }

    /** Whether it is of the papers only, not of the aircraft. */
    public boolean ofRecord() {
        return this == READING || this == RECORD || this == READ_OF_UNIT || this == SERIAL;
    }
}
