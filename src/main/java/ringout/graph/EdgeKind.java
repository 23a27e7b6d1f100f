package ringout.graph;

/** What an edge of the typed graph is. */
public enum EdgeKind {
    /** A conductor of a lead between its two ends. */
    CONDUCTOR,
    /** A mated contact: pin of a unit and end of a conductor. */
    CONTACT,
    /** A join inside a unit: a pin and the point inside it belongs to. */
    JOIN,
    /** A two-terminal part: source, regulator, fuse, diode, switch, sense resistor, link, terminator. */
    PART
}
