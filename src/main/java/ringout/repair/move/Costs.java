package ringout.repair.move;

/** What changes cost: a setting is turned in a minute, a lead is made in an hour. Common practice, no source. */
final class Costs {
    /** A setting of a unit: terminator, address, flag. */
    static final int SETTING = 10;
    /** A setting to a value that is a guess among several. */
    static final int GUESSED = 12;
    /** A pair tied to a third of its spacing. */
    static final int TIED = 12;
    /** A mast made three times as high. */
    static final int RAISED = 60;
    /** Two contacts of a plug exchanged. */
    static final int CONTACTS = 20;
    /** A contact put in or taken out. */
    static final int CONTACT = 22;
    /** A plug put into another socket. */
    static final int SOCKET = 24;
    /** A fuse of another size. */
    static final int FUSE = 26;
    /** A part of another type. */
    static final int TYPE = 40;
    /** Wire of another size. */
    static final int WIRE = 50;
    /** A lead left out. */
    static final int LEAD_OUT = 60;
    /** A lead made anew. */
    static final int LEAD_NEW = 70;

    /** All leads of one kind at two like units exchanged: they go together, and nothing is made anew. */
    static final int PLACES = 22;

    private Costs() {}
}
